// A fluidised-sand biofilter: nothing kept while its bed is lifted, a price in head that does not grow with flow, much nitrified in little
// room.
import { describe, expect, it } from 'vitest';
import { RECORDED } from '../../src/catalogue/values';
import { stageType } from '../../src/catalogue/stageTypes';
import { setSolidsForcing } from '../../src/model/forcing/solidsForcing';
import { makeCell } from '../../src/model/cell';
import { STATES } from '../../src/model/components';
import { readPlan } from '../../src/lessons/readPlan';
import { runSeason } from '../../src/season/season';

const type = stageType('fluidisedSandBiofilter');
const sizes = { media_m3: 0.03, count: 1 };
const usual_m3_d = 1.8 * 24;

const caught = (flow_m3_d: number): number => {
  const cell = makeCell(0, 'sand', type.kind, type.cell(sizes, RECORDED));
  cell.flow = flow_m3_d;
  setSolidsForcing(cell, type, new Float64Array(STATES), 0, RECORDED, 0, { outlet: 'surface', lamp_W: 0, mesh_um: 0 });
  return cell.catch1;
};

describe('a fluidised-sand biofilter', () => {
  it('keeps no solids at its usual flow, and catches like sand where the pump is throttled', () => {
    expect(caught(usual_m3_d)).toBe(0);
    expect(caught(usual_m3_d / 6)).toBeGreaterThan(0.1 * usual_m3_d);
  });

  it('costs the weight of its bed in head, the same at twice the flow', () => {
    const loss = (flow: number): number => type.loss?.(sizes, flow, 0, RECORDED) ?? 0;
    expect(loss(usual_m3_d)).toBeCloseTo(0.45, 2);
    expect(loss(2 * usual_m3_d)).toBe(loss(usual_m3_d));
    expect(loss(usual_m3_d / 10)).toBeLessThan(loss(usual_m3_d));
  });

  it('nitrifies about a kilogram of ammonia nitrogen in a cubic metre of sand a day in warm water (Timmons & Ebeling, from memory)', () => {
    const inflow = { TAN_mgN_L: 3, NO2_mgN_L: 0.1, O2_mg_L: 8, pH: 7.5, alkalinity_meq_L: 4, organics_mgCOD_L: 5 };
    const plan = {
      format: 'loopwright.plan/2',
      days: 60,
      start: { biofilm: 'mature' },
      loop: [{ id: 'sand', kind: type.kind, media_m3: 0.03 }],
      rig: { inflow, flow_m3_d: usual_m3_d, hold: { T_C: 24, O2_mg_L: 7 } },
    };
    const read = readPlan(JSON.stringify(plan));
    if ('problems' in read) throw new Error(JSON.stringify(read.problems));
    const season = runSeason(read.plan);
    const process = season.processNames.indexOf('nitritation');
    const kg_m3 = season.days[59].extents[process] / 1000 / 0.03;
    expect(kg_m3).toBeGreaterThan(0.7);
    expect(kg_m3).toBeLessThan(1.3);
  });
});
