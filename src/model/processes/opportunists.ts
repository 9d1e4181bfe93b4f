// Free-floating opportunists, an index without mass: 1 in a clean loop, more where organics and fines abound. Calibrated, no publication claimed.
// They raise the hazard of stressed fish and hurt roots; ultraviolet light kills them. Iron that leaves its chelate falls out.
import { FE, FF, FI, FS, OP, RUST, SS, UF, UI, US } from '../components';
import { ID, KEPT } from './catalogue';
import type { Definition } from './definition';
import type { RateNumbers, Workspace } from './workspace';

export const opportunistDefinitions: readonly Definition[] = [
  { id: 'opportunistGrowth', unit: 'index m³', fixed: () => [[OP, 1]], unknowns: [] },
  { id: 'opportunistDecay', unit: 'index m³', fixed: () => [[OP, -1]], unknowns: [], alone: OP },
  { id: 'opportunistKill', unit: 'index m³', fixed: () => [[OP, -1]], unknowns: [], alone: OP, where: 'lamp' },
  { id: 'ironLoss', unit: 'g Fe', fixed: () => [[FE, -1], [RUST, 1]], unknowns: [] },
];

/** Most that high pH speeds up the loss of iron, times. */
const MOST_LOOSE = 300;

export function opportunistRates(w: Workspace, { kinetics: k }: RateNumbers): void {
  const { y, o, r, ro, g, go, cell, perVolume: v } = w;
  const fines = (k.organicDry * (y[o + FF] + y[o + FS] + y[o + UF] + y[o + US]) + k.inertDry * (y[o + FI] + y[o + UI])) * v;
  const organics = y[o + SS] * v;
  const food = (organics > 0 ? organics / k.opportunistOrganics : 0) + (fines > 0 ? fines / k.opportunistFines : 0);
  r[ro + ID.opportunistGrowth] = k.opportunistTurnover * cell.volume * 5 * food / (4 + food);
  r[ro + ID.opportunistDecay] = k.opportunistTurnover * y[o + OP];
  g[go + KEPT.opportunistDecay_OP] = k.opportunistTurnover;
  const kill = cell.kill * v;
  r[ro + ID.opportunistKill] = kill * y[o + OP];
  g[go + KEPT.opportunistKill_OP] = kill;
  // Above about pH 7.5 the chelate lets go, as fast as it can within the day.
  const loose = k.ironHighH / w.h;
  r[ro + ID.ironLoss] = k.ironLoss * (1 + MOST_LOOSE * loose / (MOST_LOOSE + loose)) * y[o + FE];
}
