// What fish do to the water by the hour: they burn and build from their gut, and burn themselves a little.
// Of what is digested a share goes through the growth column, the rest is spent: the share sets a species' own gain.
import { ALK, CA, CF, CI, CS, FE, FF, FI, FISH, FS, GUT, IC, K, MG, O2, P, SO4, SS, TAN, UF, UI, US } from '../components';
import type { Values } from '../parameters/values';
import { ID, SLOTS } from './catalogue';
import type { Definition } from './definition';
import type { Workspace } from './workspace';

/** Where the faeces of a gram eaten go: sizes × parts, g COD, and what leaches at once. */
export function faeces(v: Values): [number, number][] {
  const m = v.matter;
  const leach = m.faecesCOD * m.faecesLeachCOD;
  const inert = m.faecesCOD * m.faecesInert;
  const degradable = m.faecesCOD - leach - inert;
  const parts = [degradable * m.faecesFast, degradable * (1 - m.faecesFast), inert];
  const sizes = [m.faecesCoarse, m.faecesFine, 1 - m.faecesCoarse - m.faecesFine];
  const rows = [[CF, CS, CI], [FF, FS, FI], [UF, US, UI]];
  return [...rows.flatMap((row, s) => row.map((component, p): [number, number] => [component, sizes[s] * parts[p]])), [SS, leach]];
}

const RELEASED = [TAN, P, K, CA, MG, FE, SO4, O2, IC, ALK];

export const fishDefinitions: readonly Definition[] = [
  { id: 'fishGrowth', unit: 'g feed', fixed: (v) => [[GUT, -1], [FISH, v.matter.fishGainFull], ...faeces(v)], unknowns: RELEASED, fast: [O2] },
  { id: 'fishExpenditure', unit: 'g feed', fixed: (v) => [[GUT, -1], ...faeces(v)], unknowns: RELEASED, fast: [O2] },
  { id: 'fishBasal', unit: 'g wet', fixed: () => [[FISH, -1]], unknowns: [TAN, P, K, CA, MG, SO4, O2, IC, ALK], fast: [O2] },
];

export function fishRates(w: Workspace): void {
  const { y, o, r, ro, g, go, perVolume: v } = w;
  const k = w.cell.fishAt;
  const o2 = y[o + O2] > 0 ? y[o + O2] * v : 0;
  const keeps = o2 / (o2 + k.respirationO2);
  const slope = k.respirationO2 / ((o2 + k.respirationO2) * (o2 + k.respirationO2)) * v;
  const eating = k.digestion * y[o + GUT];
  const growing = eating * k.growing;
  const spending = eating - growing;
  const basal = k.basal * y[o + FISH];
  r[ro + ID.fishGrowth] = growing * keeps;
  g[go + ID.fishGrowth * SLOTS] = growing * slope;
  r[ro + ID.fishExpenditure] = spending * keeps;
  g[go + ID.fishExpenditure * SLOTS] = spending * slope;
  r[ro + ID.fishBasal] = basal * keeps;
  g[go + ID.fishBasal * SLOTS] = basal * slope;
}
