// What fish do to the water by the hour: they burn and build from their gut, and burn themselves a little.
// Of what is digested a share goes through the growth column, the rest is spent: the share sets a species' own gain.
import { ALK, CA, CF, CI, CS, FE, FF, FI, FISH, FS, GUT, IC, K, MG, O2, P, SO4, SS, TAN, UF, UI, US } from '../components';
import type { Values } from '../parameters/values';
import { ID, KEPT, TABLE } from './catalogue';
import type { Definition } from './definition';
import type { RateNumbers, Workspace } from './workspace';

/** Where the faeces of a gram eaten go: sizes × parts, g COD, and what leaches at once. */
export function faeces(v: Values): [number, number][] {
  const m = v.matter;
  const leach = m.faecesCOD * m.faecesLeachCOD;
  const inert = m.faecesCOD * m.faecesInert;
  const degradable = m.faecesCOD - leach - inert;
  const parts = [degradable * m.faecesFast, degradable * (1 - m.faecesFast), inert];
  const sizes = [m.faecesCoarse, m.faecesFine, 1 - m.faecesCoarse - m.faecesFine];
  const rows = [
    [CF, CS, CI],
    [FF, FS, FI],
    [UF, US, UI],
  ];
  return [...rows.flatMap((row, s) => row.map((component, p): [number, number] => [component, sizes[s] * parts[p]])), [SS, leach]];
}

const RELEASED = [TAN, P, K, CA, MG, FE, SO4, O2, IC, ALK];

export const fishDefinitions: readonly Definition[] = [
  {
    id: 'fishGrowth',
    unit: 'g feed',
    fixed: (v) => [[GUT, -1], [FISH, v.matter.fishGainFull], ...faeces(v)],
    unknowns: RELEASED,
    alone: GUT,
    where: 'fish',
    undone: [[O2, 5]],
  },
  { id: 'fishExpenditure', unit: 'g feed', fixed: (v) => [[GUT, -1], ...faeces(v)], unknowns: RELEASED, alone: GUT, where: 'fish' },
  {
    id: 'fishBasal',
    unit: 'g wet',
    fixed: () => [[FISH, -1]],
    unknowns: [TAN, P, K, CA, MG, SO4, O2, IC, ALK],
    where: 'fish',
    undone: [[O2, 4]],
  },
];

export function fishRates(w: Workspace, { matrix: { table: m } }: RateNumbers): void {
  const { y, o, r, ro, g, go, perVolume: v } = w;
  const k = w.cell.fishAt;
  const o2 = y[o + O2] > 0 ? y[o + O2] * v : 0;
  const keeps = o2 / (o2 + k.respirationO2);
  const slope = (-k.respirationO2 / ((o2 + k.respirationO2) * (o2 + k.respirationO2))) * v;
  const each = k.digestion * keeps;
  const eating = each * y[o + GUT];
  r[ro + ID.fishGrowth] = eating * k.growing;
  r[ro + ID.fishExpenditure] = eating * (1 - k.growing);
  r[ro + ID.fishBasal] = k.basal * y[o + FISH] * keeps;
  // What they take of the oxygen answers to it, and is kept where the sludge bed's pull is (see gas.ts).
  w.pull +=
    slope
    * (k.digestion * y[o + GUT] * (k.growing * m[TABLE.fishGrowth_O2] + (1 - k.growing) * m[TABLE.fishExpenditure_O2])
      + k.basal * y[o + FISH] * m[TABLE.fishBasal_O2]);
  g[go + KEPT.fishGrowth_GUT] = each * k.growing;
  g[go + KEPT.fishExpenditure_GUT] = each * (1 - k.growing);
}
