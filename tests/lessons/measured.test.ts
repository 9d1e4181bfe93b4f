// A water may be given by what a table shows of it.
import { describe, expect, test } from 'vitest';
import { equilibrate } from '../../src/model/equilibrium/equilibrate';
import { asMeasured } from '../../src/lessons/measured';
import { problemText } from '../../src/words/problemWords';
import { readPlan } from '../../src/lessons/readPlan';

const at = { T_C: 24 };

describe('a water given by what a table shows', () => {
  test('carbon dioxide and alkalinity fix the pH: more of it, more acid', () => {
    const pH = (CO2_mg_L: number): number => asMeasured({ alkalinity_meq_L: 2, CO2_mg_L }, at).pH ?? Number.NaN;
    expect(pH(20)).toBeLessThan(pH(5));
    expect(equilibrate({ T_C: 24, known: { alkalinity: 2, pH: pH(10) } }).CO2 * 44.009).toBeCloseTo(10, 6);
  });

  test('carbon dioxide and pH fix the alkalinity, and so does inorganic carbon', () => {
    const byGas = asMeasured({ pH: 7, CO2_mg_L: 10 }, at);
    const water = equilibrate({ T_C: 24, known: { alkalinity: byGas.alkalinity_meq_L ?? Number.NaN, pH: 7 } });
    expect(water.CO2 * 44.009).toBeCloseTo(10, 6);
    const byCarbon = asMeasured({ pH: 7, DIC_mmol_L: water.carbon }, at);
    expect(byCarbon.alkalinity_meq_L).toBeCloseTo(byGas.alkalinity_meq_L ?? Number.NaN, 6);
  });

  test('un-ionised ammonia and hydrogen sulfide give their totals at the pH, which a rig may hold', () => {
    const water = asMeasured({ NH3_mgN_L: 0.05, H2S_ug_L: 10 }, { T_C: 24, pH: 7 });
    const share = equilibrate({ T_C: 24, known: { carbon: 0, pH: 7 } });
    expect((water.TAN_mgN_L ?? 0) * share.NH3Fraction).toBeCloseTo(0.05, 9);
    expect((water.sulfide_mgS_L ?? 0) * share.H2SFraction * (34.08 / 32.06)).toBeCloseTo(0.01, 5);
  });

  test('methane by mass counts by its oxygen demand, two O2 each', () => {
    expect(asMeasured({ CH4_mg_L: 16.043 }, at).CH4_mgCOD_L).toBeCloseTo(64, 1);
  });

  test('a printed row can be given back: what follows from the rest is passed over', () => {
    const row = { pH: 7.1, alkalinity_meq_L: 1.5, CO2_mg_L: 99, TAN_mgN_L: 2, NH3_mgN_L: 99 };
    expect(asMeasured(row, at)).toEqual({ pH: 7.1, alkalinity_meq_L: 1.5, TAN_mgN_L: 2 });
  });

  test('without what it takes, the place is named', () => {
    const plan = {
      format: 'loopwright.plan/2',
      loop: [{ id: 'one', kind: 'sump' }],
      start: { water: { H2S_ug_L: 3 } },
      rig: { inflow: { NH3_mgN_L: 1 }, flow_m3_d: 1 },
    };
    const read = readPlan(JSON.stringify({ ...plan, source: { CO2_mg_L: 4 } }));
    expect('problems' in read && read.problems.map(problemText)).toEqual([
      'source.CO2_mg_L: got 4; expected pH or alkalinity_meq_L beside it',
      'start.water.H2S_ug_L: got 3; expected pH beside it, or sulfide_mgS_L',
      'rig.inflow.NH3_mgN_L: got 1; expected pH beside it, or TAN_mgN_L',
    ]);
    expect(readPlan(JSON.stringify({ ...plan, rig: { ...plan.rig, hold: { pH: 7 } } }))).toHaveProperty('plan');
  });
});
