// What the living do to the water by the hour: fish burn and build from their gut, leaves grow, roots brown and heal; and base dosing.
import { AIR_CO2, AIR_O2, ALK, CA, CF, CI, CS, FE, FF, FI, FISH, FS, GUT, IC, K, LEAF, MF, MI, MS, NO3, O2, P, ROOT, S2, SO4, SS, TAN, UF, UI, US } from '../components';
import type { Values } from '../parameters/values';
import { ID, SLOTS } from './catalogue';
import type { Definition } from './definition';
import type { Kinetics } from './kineticsAt';
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

export const lifeDefinitions: readonly Definition[] = [
  { id: 'fishMetabolism', unit: 'g feed', fixed: (v) => [[GUT, -1], [FISH, v.tilapia.gain], ...faeces(v)], unknowns: [TAN, P, K, CA, FE, SO4, O2, IC, ALK], fast: [O2] },
  { id: 'fishBasal', unit: 'g wet', fixed: () => [[FISH, -1]], unknowns: [TAN, P, K, CA, SO4, O2, IC, ALK], fast: [O2] },
  { id: 'leafGrowthNitrate', unit: 'g dry', fixed: () => [[LEAF, 1]], unknowns: [NO3, P, K, CA, FE, SO4, AIR_CO2, AIR_O2, ALK], fast: [NO3] },
  { id: 'leafGrowthAmmonium', unit: 'g dry', fixed: () => [[LEAF, 1]], unknowns: [TAN, P, K, CA, FE, SO4, AIR_CO2, AIR_O2, ALK], fast: [TAN] },
  { id: 'rootRelaxation', unit: '–', fixed: () => [[ROOT, 1]], unknowns: [] },
  { id: 'doseCalciumHydroxide', unit: 'g', fixed: () => [[CA, 0.54092]], unknowns: [ALK], fromOutside: true },
  { id: 'dosePotassiumBicarbonate', unit: 'g', fixed: () => [[K, 0.39053], [IC, 0.0099885]], unknowns: [ALK], fromOutside: true },
];

export function fishRates(w: Workspace, k: Kinetics): void {
  const { y, o, r, ro, g, go, perVolume: v } = w;
  const o2 = y[o + O2] > 0 ? y[o + O2] * v : 0;
  const keeps = o2 / (o2 + k.respirationO2);
  const slope = k.respirationO2 / ((o2 + k.respirationO2) * (o2 + k.respirationO2)) * v;
  const eating = k.digestion * y[o + GUT];
  const basal = k.basal * y[o + FISH];
  r[ro + ID.fishMetabolism] = eating * keeps;
  g[go + ID.fishMetabolism * SLOTS] = eating * slope;
  r[ro + ID.fishBasal] = basal * keeps;
  g[go + ID.fishBasal * SLOTS] = basal * slope;
}

/** g dry solids on the roots of the cell */
export const rootMat = (y: Float64Array, o: number, k: Kinetics): number => k.organicDry * (y[o + MF] + y[o + MS]) + k.inertDry * y[o + MI];

export function plantRates(w: Workspace, k: Kinetics): void {
  const { y, o, r, ro, g, go, cell, perVolume: v } = w;
  const no3 = y[o + NO3] > 0 ? y[o + NO3] * v : 0;
  const tan = y[o + TAN] > 0 ? y[o + TAN] * v : 0;
  const p = Math.max(y[o + P] * v, 0), potassium = Math.max(y[o + K] * v, 0), calcium = Math.max(y[o + CA] * v, 0), iron = Math.max(y[o + FE] * v, 0), sulfate = Math.max(y[o + SO4] * v, 0);
  let scarcest = p / (k.halfP + p);
  scarcest = Math.min(scarcest, potassium / (k.halfK + potassium), calcium / (k.halfCa + calcium), iron / (k.halfFe + iron), sulfate / (k.halfS + sulfate));
  const possible = cell.growth * w.light * y[o + ROOT] * scarcest;
  const nitrogen = no3 + tan;
  const perHalf = 1 / (k.halfN + nitrogen);
  r[ro + ID.leafGrowthNitrate] = possible * no3 * perHalf;
  r[ro + ID.leafGrowthAmmonium] = possible * tan * perHalf;
  g[go + ID.leafGrowthNitrate * SLOTS] = possible * (k.halfN + tan) * perHalf * perHalf * v;
  g[go + ID.leafGrowthAmmonium * SLOTS] = possible * (k.halfN + no3) * perHalf * perHalf * v;

  const o2 = y[o + O2] > 0 ? y[o + O2] * v : 0;
  const cube = o2 * o2 * o2;
  const mat = rootMat(y, o, k) / (cell.floor * k.rootHalf);
  const sulfide = y[o + S2] * v * w.h2s / k.rootSulfide;
  const target = cell.rootTarget * (cube / (cube + k.rootO2)) / ((1 + mat * mat) * (1 + sulfide * sulfide));
  r[ro + ID.rootRelaxation] = (target - y[o + ROOT]) * k.rootRelax;
}

export function doseRates(w: Workspace): void {
  w.r[w.ro + ID.doseCalciumHydroxide] = w.cell.doseCa;
  w.r[w.ro + ID.dosePotassiumBicarbonate] = w.cell.doseK;
}
