// Crops on the bench in full nutrient solution, as published trials kept them: what they grow and what they take up.
import { LEAF, ROOT, STATES } from '../../src/model/components';
import { lightGrowth } from '../../src/model/organisms/plants/growth';
import { RECORDED, valuesWith } from '../../src/catalogue/values';
import type { ProcessName } from '../../src/model/processes/catalogue';
import type { Composition, CropKind } from '../../src/season/plan';
import type { Season } from '../../src/season/season';
import { benchPlan, did, liveThrough } from './bench';

const AREA = 3; // m²
const FULL: Composition = {
  alkalinity_meq_L: 1,
  NO3_mgN_L: 100,
  PO4_mgP_L: 30,
  K_mg_L: 150,
  Ca_mg_L: 80,
  Mg_mg_L: 40,
  SO4_mgS_L: 20,
  Fe_mg_L: 2,
};

/** g dry/m² of lettuce that lacks nothing, by light alone at 22 °C. @param dli mol/m²/d; @param start g dry/m², van Henten's */
export function lettuceByLight(dli: number, start = 2.72, days = 35): number {
  const { lettuce } = valuesWith().crops;
  let x = start;
  for (let hour = 0; hour < 24 * days; hour++) x += lightGrowth(lettuce, x, dli, 22, RECORDED.heat.photonsPerJoule) / 24;
  return x;
}

export interface BedBench {
  kind: CropKind;
  plants_m2: number;
  days: number;
  pH: number;
  O2_mg_L: number;
  T_C: number;
  light_mol_m2_d?: number;
  /** gas bubbled through the solution; left out: none, still water */
  air_L_min?: number;
}

/** A raft bed of one crop, planted once and cut when ripe where it comes again. */
export function bedPlan({
  kind,
  plants_m2,
  days,
  pH,
  O2_mg_L,
  T_C,
  light_mol_m2_d = 17,
  air_L_min = 0,
}: BedBench): Parameters<typeof liveThrough>[0] {
  const plan = benchPlan({
    stage: {
      id: 'bed',
      kind: 'raftBed',
      area_m2: AREA,
      depth_m: 0.3,
      air_L_min,
      crop: { kind, plants_m2, plantedDay: 0, replant: kind !== 'lettuce' },
    },
    days,
    rig: { inflow: { ...FULL, pH, O2_mg_L }, flow_m3_d: 10, hold: { T_C, pH, O2_mg_L } },
    change: { start: { water: 'source', biofilm: 'bare' } },
  });
  return { ...plan, climate: { ...plan.climate, light_mol_m2_d, weather: 0 } };
}

const leafOf = (season: Season): number => [0, 1, 2].reduce((sum, cell) => sum + season.state.y[cell * STATES + LEAF], 0) / AREA;

/** Leaf mass g dry/m² and root health of lettuce after some days. */
export function lettuceGrown(change: Partial<BedBench>): { leaf: number; root: number } {
  const season = liveThrough(bedPlan({ kind: 'lettuce', plants_m2: 24, days: 24, pH: 6, O2_mg_L: 8.4, T_C: 24, ...change }));
  return { leaf: leafOf(season), root: season.state.y[ROOT] };
}

/** What a crop takes up, g/m²/d, from a day on. */
export function uptake(bench: BedBench, fromDay: number): { N: number; P: number; K: number; Ca: number; dry: number } {
  const out = { N: 0, P: 0, K: 0, Ca: 0, dry: 0 };
  const parts: [keyof typeof out, ProcessName][] = [
    ['N', 'uptakeNitrate'],
    ['N', 'uptakeAmmonium'],
    ['P', 'uptakePhosphate'],
    ['K', 'uptakePotassium'],
    ['Ca', 'uptakeCalcium'],
    ['dry', 'leafGrowth'],
  ];
  liveThrough(bedPlan(bench), (season, extents) => {
    if (season.day <= fromDay) return;
    for (const [key, process] of parts)
      for (let cell = 0; cell < 3; cell++) out[key] += did(extents, process, cell) / AREA / (bench.days - fromDay);
  });
  return out;
}
