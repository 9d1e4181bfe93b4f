// Free-floating free bacteria, an index without mass: 1 in a clean loop, more where organics and fines abound. Calibrated, no publication
// claimed. They raise the hazard of stressed fish and hurt roots; ultraviolet light kills them. Iron that leaves its chelate falls out.
import { FE, FF, FI, FS, OP, RUST, SS, UF, UI, US } from '../components';
import { ID, KEPT } from './catalogue';
import type { Definition } from './definition';
import type { RateNumbers, Workspace } from './workspace';

export const freeBacteriaDefinitions: readonly Definition[] = [
  { id: 'freeBacteriaGrowth', unit: 'index m³', fixed: () => [[OP, 1]], unknowns: [] },
  { id: 'freeBacteriaDecay', unit: 'index m³', fixed: () => [[OP, -1]], unknowns: [], alone: OP },
  { id: 'freeBacteriaKill', unit: 'index m³', fixed: () => [[OP, -1]], unknowns: [], alone: OP, where: 'lamp' },
  {
    id: 'ironLoss',
    unit: 'g Fe',
    fixed: () => [
      [FE, -1],
      [RUST, 1],
    ],
    unknowns: [],
  },
];

export function freeBacteriaRates(w: Workspace, { kinetics: k }: RateNumbers): void {
  const { y, o, r, ro, g, go, cell, perVolume: v } = w;
  const fines = (k.organicDry * (y[o + FF] + y[o + FS] + y[o + UF] + y[o + US]) + k.inertDry * (y[o + FI] + y[o + UI])) * v;
  const organics = y[o + SS] * v;
  const food = (organics > 0 ? organics / k.freeBacteriaOrganics : 0) + (fines > 0 ? fines / k.freeBacteriaFines : 0);
  r[ro + ID.freeBacteriaGrowth] = (k.freeBacteriaTurnover * cell.volume * k.freeBacteriaMost * food) / (k.freeBacteriaFood + food);
  r[ro + ID.freeBacteriaDecay] = k.freeBacteriaTurnover * y[o + OP];
  g[go + KEPT.freeBacteriaDecay_OP] = k.freeBacteriaTurnover;
  const kill = cell.kill * v;
  r[ro + ID.freeBacteriaKill] = kill * y[o + OP];
  g[go + KEPT.freeBacteriaKill_OP] = kill;
  // Above about pH 7.5 the chelate lets go, as fast as it can within the day.
  const loose = k.ironHighH / w.h;
  r[ro + ID.ironLoss] = k.ironLoss * (1 + (k.ironLoosest * loose) / (k.ironLoosest + loose)) * y[o + FE];
}
