// Davidson & Summerfelt 2005, Aquac. Eng. 33:47–61: at 0.0031 m³/s per m² of surface a radial-flow settler kept 77.9 ± 1.6 % of the solids of a trout
// tank and a swirl separator 37.1 ± 3.3 %. The settler's class speeds and the two efficiencies are calibrated to it: this holds them there.
import { describe, expect, it } from 'vitest';
import { stageType } from '../../src/model/stages/catalogue';
import type { StageKind } from '../../src/season/plan';
import { course } from '../season/courses';
import { runSeason } from '../../src/season/season';
import { benchPlan } from './bench';

/** m³/m²/d */
const SURFACE_LOAD = 0.0031 * 86400;
/** what fresh faeces are made of, mg/L of 20 in all: coarse, fine, superfine */
const FRESH = { solidsCoarse_mg_L: 15.2, solidsFine_mg_L: 3.2, solidsSuperfine_mg_L: 1.6 };
const SOLIDS = ['solidsCoarse_mg_L', 'solidsFine_mg_L'] as const;

/** Share of suspended solids kept over the second day, drained each day. */
function kept(kind: StageKind, load = SURFACE_LOAD, solids: typeof FRESH = FRESH): number {
  const stage = { id: 'one', kind, volume_m3: 0.19, count: 1 };
  const floor = stageType(kind).cell(stage).floor;
  const plan = benchPlan({
    stage, days: 2, rig: { inflow: { pH: 7.3, alkalinity_meq_L: 3, O2_mg_L: 8, PO4_mgP_L: 1, SO4_mgS_L: 10, Ca_mg_L: 50, K_mg_L: 5, ...solids }, flow_m3_d: load * floor, hold: { T_C: 14 } },
    change: { start: { water: 'source', biofilm: 'bare' }, actions: [{ every_d: 1, from: 1, do: 'drain', stage: 'one' }] },
  });
  const t = runSeason(plan);
  const total = solids.solidsCoarse_mg_L + solids.solidsFine_mg_L + solids.solidsSuperfine_mg_L;
  const out = SOLIDS.reduce((sum, name) => sum + (course(t, 'one', name).at(-1) ?? NaN), 0);
  return 1 - out / total;
}

describe('separators at 268 m³/m²/d', () => {
  it('a radial-flow settler keeps 78 %', () => {
    expect(Math.abs(kept('radialFlowSettler') - 0.779)).toBeLessThan(0.05);
  });

  it('a swirl separator keeps 37 %', () => {
    expect(Math.abs(kept('swirlSeparator') - 0.371)).toBeLessThan(0.05);
  });

  it('a plain cone stands between them', () => {
    const cone = kept('coneSettler');
    expect(cone).toBeGreaterThan(kept('swirlSeparator') + 0.05);
    expect(cone).toBeLessThan(kept('radialFlowSettler') - 0.05);
  });

  it('what is kept does not hang on how much comes, and falls with the load on the surface', () => {
    const twice = { solidsCoarse_mg_L: 30.4, solidsFine_mg_L: 6.4, solidsSuperfine_mg_L: 3.2 };
    expect(Math.abs(kept('radialFlowSettler', SURFACE_LOAD, twice) - kept('radialFlowSettler'))).toBeLessThan(0.02);
    expect(kept('radialFlowSettler', 4 * SURFACE_LOAD)).toBeLessThan(kept('radialFlowSettler') - 0.02);
  });
});
