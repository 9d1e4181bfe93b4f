// Separators and settled sludge on the bench: what they keep of fresh faeces, what leaches, what nitrate holds back.
import { NO3, P, S2, SF, SL, SO4, SS, TAN } from '../../src/model/components';
import { stageType } from '../../src/catalogue/stageTypes';
import type { Action, StageKind } from '../../src/season/plan';
import { runSeason } from '../../src/season/season';
import { course } from '../season/courses';
import { RECORDED } from '../../src/catalogue/values';
import { benchPlan, did, liveThrough } from './bench';

/** m³/m²/d */
export const SURFACE_LOAD = 0.0031 * 86400;
/** what fresh faeces are made of, mg/L of 20 in all: coarse, fine, superfine */
const FRESH = { solidsCoarse_mg_L: 15.2, solidsFine_mg_L: 3.2, solidsSuperfine_mg_L: 1.6 };
const SOLIDS = ['solidsCoarse_mg_L', 'solidsFine_mg_L'] as const;

/** Share of suspended solids kept over the second day, drained each day. */
export function kept(kind: StageKind, load = SURFACE_LOAD, solids: typeof FRESH = FRESH): number {
  const stage = { id: 'one', kind, volume_m3: 0.19, count: 1 };
  const floor = stageType(kind).cell(stage, RECORDED).floor;
  const plan = benchPlan({
    stage,
    days: 2,
    rig: {
      inflow: { pH: 7.3, alkalinity_meq_L: 3, O2_mg_L: 8, PO4_mgP_L: 1, SO4_mgS_L: 10, Ca_mg_L: 50, K_mg_L: 5, ...solids },
      flow_m3_d: load * floor,
      hold: { T_C: 14 },
    },
    change: { start: { water: 'source', biofilm: 'bare' }, actions: [{ every_d: 1, from: 1, do: 'drain', stage: 'one' }] },
  });
  const t = runSeason(plan);
  const total = solids.solidsCoarse_mg_L + solids.solidsFine_mg_L + solids.solidsSuperfine_mg_L;
  const out = SOLIDS.reduce((sum, name) => sum + (course(t, 'one', name).at(-1) ?? NaN), 0);
  return 1 - out / total;
}

/** Cuts of the day at which the bed's shape is taken anew: the first an hour after the solids went in. */
const looks: Action[] = [
  { day: 0, hour: 1, do: 'air', stage: 'jar', L_min: 0 },
  { every_d: 1, hour: 12, do: 'air', stage: 'jar', L_min: 0 },
];

/** 2 g/L of coarse fish solids left to settle in still water for a week: what has got out of them each midnight. */
export function week(T_C: number): { phosphorus: number[]; ammonia: number[]; organics: number[]; setFree: number[]; left: number } {
  const plan = benchPlan({
    stage: { id: 'jar', kind: 'radialFlowSettler', volume_m3: 0.19 },
    days: 7,
    rig: {
      inflow: { pH: 7.5, alkalinity_meq_L: 2, O2_mg_L: 8, Ca_mg_L: 50, SO4_mgS_L: 5, solidsCoarse_mg_L: 2000 },
      flow_m3_d: 0,
      hold: { T_C },
    },
    change: { start: { water: 'source', biofilm: 'bare' }, actions: looks },
  });
  const out = { phosphorus: [] as number[], ammonia: [] as number[], organics: [] as number[], setFree: [] as number[], left: 0 };
  let free = 0;
  const season = liveThrough(plan, ({ state: { y } }, extents) => {
    free += did(extents, 'hydrolysisSludgeFast') + did(extents, 'hydrolysisSludgeSlow');
    out.phosphorus.push(y[P]);
    out.ammonia.push(y[TAN]);
    out.organics.push(y[SS]);
    out.setFree.push(free);
  });
  out.left = season.state.y[SF] + season.state.y[SL];
  return out;
}

const VOLUME = 0.19; // m³

export interface JarDay {
  nitrate: number;
  sulfide: number;
  sulfate: number;
  crossed: number;
  carried: number;
  made: number;
}

/** 1 g/L of fish solids on the floor of still water without oxygen, 24 °C; mg/L, and g S of each day. */
export function jar(NO3_mgN_L: number): JarDay[] {
  const days: JarDay[] = [];
  liveThrough(
    benchPlan({
      stage: { id: 'jar', kind: 'radialFlowSettler', volume_m3: VOLUME },
      days: 20,
      rig: {
        inflow: { pH: 7.5, alkalinity_meq_L: 3, O2_mg_L: 0, Ca_mg_L: 50, SO4_mgS_L: 15, NO3_mgN_L, solidsCoarse_mg_L: 1000 },
        flow_m3_d: 0,
        hold: { T_C: 24, O2_mg_L: 0 },
      },
      change: { start: { water: 'source', biofilm: 'bare' }, actions: looks },
    }),
    ({ state: { y } }, extents) => {
      days.push({
        nitrate: y[NO3] / VOLUME,
        sulfide: y[S2] / VOLUME,
        sulfate: y[SO4] / VOLUME,
        crossed: did(extents, 'poreSulfideDiffusion'),
        carried: did(extents, 'poreSulfideGas'),
        made: did(extents, 'sludgeSulfate'),
      });
    },
  );
  return days;
}
