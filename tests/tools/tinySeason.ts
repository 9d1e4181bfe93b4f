// A made-up trajectory small enough to check by eye: two days, a fish tank (cell 0) and a bed of three cells (1–3).
import { VARIABLES } from '../../src/season/trajectory';
import type { DayChunk, Scores, StageCells, Trajectory } from '../../src/season/trajectory';

export function scoresOf(some: Partial<Scores>): Scores {
  return {
    fishHealth: 0,
    survival: 1,
    meanWelfare: 1,
    harvest: 0,
    plants_kg: 0,
    plantsIdeal_kg: 0,
    gain_kg: 0,
    gainIdeal_kg: 0,
    stewardship: 0,
    waterUsed_L: 0,
    nitrogenDischarged_g: 0,
    solidsDischarged_g: 0,
    energy_kWh: 0,
    work_h: 0,
    ...some,
  };
}

const stages: StageCells[] = [
  { id: 'rafts', kind: 'raftBed', first: 1, cells: 3, volume_m3: 0.9 },
  { id: 'fish', kind: 'fishTank', first: 0, cells: 1, volume_m3: 1 },
  { id: 'pump', kind: 'returnPump', first: 0, cells: 0, volume_m3: 0 },
];
/** In flow order, which a trajectory need not keep. */
export const tinyLoop = {
  loop: [
    { id: 'fish', kind: 'fishTank' as const },
    { id: 'rafts', kind: 'raftBed' as const },
    { id: 'pump', kind: 'returnPump' as const },
  ],
  side: [{ id: 'base', kind: 'baseDosing' as const, into: 'fish', base: 'KHCO3' as const, g_d: 0, targetPH: 7 }],
};
const CELLS = 4;

/** Every variable of cell c at the end of hour h (counted from 1 over all days) shows times × h × (c + 1); at the start, zero. */
export function tinySeason(times = 1): Trajectory {
  const days: DayChunk[] = [0, 1].map((day) => ({
    day,
    hourly: Float32Array.from({ length: 24 * CELLS * VARIABLES.length }, (_, index) => {
      const hour = 24 * day + Math.floor(index / (CELLS * VARIABLES.length)) + 1;
      const cell = Math.floor(index / VARIABLES.length) % CELLS;
      return times * hour * (cell + 1);
    }),
    extents: new Float64Array(0),
    scores: scoresOf({ fishHealth: 90 + day, harvest: 10 * (day + 1), stewardship: 70 }),
    events: [],
  }));
  const line = (element: 'N' | 'water', closure: number) => ({ element, start: 1, inflow: 1, outflow: 1, end: 1, closure });
  return {
    stages,
    cells: CELLS,
    variables: VARIABLES,
    processNames: [],
    initial: new Float32Array(CELLS * VARIABLES.length),
    days,
    summary: { days: 2, scores: days[1].scores, ledger: [line('N', 1.5e-13), line('water', 0)], clipped: 2e-9, steps: 10, rejections: 1 },
  };
}
