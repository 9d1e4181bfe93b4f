// Films: ammonia and nitrite oxidisers, heterotrophs, and what they oxidise beside: sulfide, methane.
// Growth at full yield and conversion; film beyond a guild's capacity leaves as fine solids (Zhu & Chen 1999; Ling & Chen 2005).
import { ALK, BA, BH, BN, CH4, FF, FS, IC, MF, MI, MS, N2, NO2, NO3, O2, P, S2, SO4, SS, TAN } from '../components';
import type { Values } from '../parameters/values';
import { ID, KEPT } from './catalogue';
import type { Definition } from './definition';
import type { RateNumbers, Workspace } from './workspace';

/** Guilds, their films, and the growth that what they let go follows. */
const guilds = [
  ['AmmoniaOxidisers', BA, ['nitritation']],
  ['NitriteOxidisers', BN, ['nitriteOxidation']],
  ['Heterotrophs', BH, ['heterotrophsAerobic', 'heterotrophsAnoxic']],
] as const;

/** g COD of film from a g COD of organics that nitrate burns */
const anoxicYield = (v: Values): number => v.kinetics.hetYield * v.kinetics.anoxicYield;

export const filmDefinitions: readonly Definition[] = [
  {
    id: 'nitritation',
    unit: 'g N',
    fixed: (v) => [
      [NO2, 1],
      [BA, v.kinetics.aobYield],
    ],
    unknowns: [TAN, O2, IC, ALK],
    fast: [TAN, O2],
    undone: [
      [TAN, 1],
      [O2, 3],
    ],
  },
  {
    id: 'nitriteOxidation',
    unit: 'g N',
    fixed: (v) => [
      [NO3, 1],
      [BN, v.kinetics.nobYield],
    ],
    unknowns: [NO2, O2, IC, ALK],
    fast: [NO2, O2],
    undone: [[NO2, 1]],
  },
  {
    id: 'heterotrophsAerobic',
    unit: 'g COD',
    fixed: (v) => [
      [SS, -1],
      [BH, v.kinetics.hetYield],
    ],
    unknowns: [TAN, O2, IC, ALK],
    fast: [SS, O2, TAN],
    undone: [
      [SS, 1],
      [TAN, 2],
      [O2, 1],
    ],
  },
  {
    id: 'heterotrophsAnoxic',
    unit: 'g COD',
    fixed: (v) => [
      [SS, -1],
      [BH, anoxicYield(v)],
      [TAN, -anoxicYield(v) * v.matter.filmN],
    ],
    unknowns: [NO3, N2, IC, ALK],
    fast: [SS, NO3, TAN],
    undone: [
      [SS, 2],
      [NO3, 1],
    ],
  },
  // What a film lets go leaves as solids; without phosphorus, sulfate or oxygen to build those, as dissolved organics.
  ...guilds.map(([name, film, follows]): Definition => ({
    id: `slough${name}`,
    unit: 'g COD',
    unknowns: [TAN, P, SO4, O2, IC, ALK],
    fixed: (v) => [
      [film, -1],
      [FF, 1 - v.kinetics.sloughSlow],
      [FS, v.kinetics.sloughSlow],
    ],
    alone: P,
    fast: [O2],
    follows,
  })),
  ...guilds.map(([name, film, follows]): Definition => ({
    id: `lysis${name}`,
    unit: 'g COD',
    fixed: () => [
      [film, -1],
      [SS, 1],
    ],
    unknowns: [TAN, IC, ALK],
    opposes: `slough${name}`,
    follows,
  })),
  { id: 'sulfideOxidation', unit: 'g S', fixed: () => [[S2, -1]], unknowns: [SO4, O2, ALK], fast: [S2, O2], undone: [[S2, 1]] },
  { id: 'methaneOxidation', unit: 'g COD', fixed: () => [[CH4, -1]], unknowns: [O2, IC], alone: CH4, undone: [[CH4, 2]] },
];

/**
 * Saturation of a rate by its reactant. Below zero, where a trial step may stand for a moment, it runs backwards, as smoothly and at most a
 * third as fast: without that, or as fast as forwards, steps come to swing round zero.
 */
export const saturation = (x: number, half: number): number => x / (half + (x > 0 ? x : -3 * x));

/** Product of three such; with more than one below zero nothing runs, lest two wants look like plenty. */
const together = (a: number, b: number, c: number): number => ((a < 0 ? b < 0 || c < 0 : b < 0 && c < 0) ? 0 : a * b * c);

/**
 * Derivative of that saturation, kept. Well below `scarce` it is the chord down to nothing, not the tangent: a step that trusts the
 * tangent there flies past zero, back, and past again, as the rate bends away on the way down.
 */
const steepness = (x: number, half: number, scarce: number): number => {
  const share = x / scarce;
  return (half + x / (1 + share * share)) / ((half + x) * (half + x));
};
/**
 * What warmth leaves of a nitrifying film's room, against one that its own reactant limits: where oxygen does, cold thins it less.
 * @param own saturation by the reactant @param oxygen by oxygen: the lesser limits; eighth powers, for in a film one limit gives way to the
 *   other sharply
 * @param oxygenRoom the room of a film that oxygen limits, at this warmth
 */
function roomFor(own: number, oxygen: number, oxygenRoom: number): number {
  const a2 = own * own,
    o2 = oxygen * oxygen;
  const a4 = a2 * a2,
    o4 = o2 * o2;
  const a8 = a4 * a4;
  return 1 + (oxygenRoom - 1) * (a8 / (a8 + o4 * o4 + 1e-30));
}

/**
 * g/m³ under which oxygen, organics, nitrate and ammonia count as scarce in `steepness`: numbers of the method, which no season's answer
 * rests on.
 */
const SCARCE_O2 = 1,
  SCARCE_SS = 6,
  SCARCE_NO3 = 0.7,
  SCARCE_TAN = 0.1;

/** Rates of every film process in the cell, and of sulfide in the open water; per day. */
export function filmRates(w: Workspace, { kinetics: k }: RateNumbers): void {
  const { y, o, r, ro, g, go, cell, perVolume: v } = w;
  const area = cell.film;
  const o2 = y[o + O2] > 0 ? y[o + O2] * v : 0;
  const tan = y[o + TAN] > 0 ? y[o + TAN] * v : 0;
  const no2 = y[o + NO2] > 0 ? y[o + NO2] * v : 0;
  const no3 = y[o + NO3] > 0 ? y[o + NO3] * v : 0;
  const ss = y[o + SS] > 0 ? y[o + SS] * v : 0;
  const aob = y[o + BA] > 0 ? y[o + BA] : 0;
  const nob = y[o + BN] > 0 ? y[o + BN] : 0;
  const het = y[o + BH] > 0 ? y[o + BH] : 0;
  const perArea = area > 0 ? 1 / area : 0;

  // What solids and heterotrophs leave of a nitrifying film.
  const caught = (k.organicDry * (y[o + MF] + y[o + MS]) + k.inertDry * y[o + MI]) * perArea;
  const crowding = 1 / ((1 + (het * perArea) / k.hetShading) * (1 + caught / k.smothering));

  // Heterotrophs first: they take their oxygen at the film's outside.
  const tanKeeps = saturation(y[o + TAN] * v, k.hetTAN);
  const tanSlope = steepness(tan, k.hetTAN, SCARCE_TAN) * v;
  const fSS = saturation(y[o + SS] * v, k.hetSubstrate);
  const fO = saturation(y[o + O2] * v, k.hetO2);
  const hetFull = (k.hetGrowth / k.hetYield) * het;
  const hetMax = hetFull * tanKeeps;
  const aerobic = hetFull * together(fSS, fO, tanKeeps);
  r[ro + ID.heterotrophsAerobic] = aerobic;
  const hetDemand = (aerobic > 0 ? aerobic : 0) * (1 - k.hetYield) * perArea; // g O2/m²/d
  const seen = o2 - hetDemand / k.filmTransfer;
  const filmO2 = seen > 0 ? seen : 0;
  const anoxia = k.hetO2 / (k.hetO2 + filmO2);
  const fN = saturation(y[o + NO3] * v, k.hetNO3);
  const anoxicShare = k.hetAnoxic * anoxia;
  const anoxicMax = hetMax * anoxicShare;
  const anoxic = hetFull * anoxicShare * together(fSS, fN, tanKeeps);
  r[ro + ID.heterotrophsAnoxic] = anoxic;

  // Nitrifiers.
  const fA = saturation(y[o + TAN] * v, k.aobTAN);
  const fAO = filmO2 / (k.aobO2 + filmO2);
  const aobFull = (k.aobGrowth / k.aobYield) * aob;
  const aobMax = aobFull * w.nitrifying;
  const ammonia = aobFull * together(fA, fAO, w.nitrifying);
  r[ro + ID.nitritation] = ammonia;
  const fN2 = saturation(y[o + NO2] * v, k.nobNO2);
  const fNO = filmO2 / (k.nobO2 + filmO2);
  const nobFull = (k.nobGrowth / k.nobYield) * nob * (k.nobFreeAmmonia / (k.nobFreeAmmonia + tan * w.nh3));
  const nobMax = nobFull * w.nitrifying;
  const nitrite = nobFull * together(fN2, fNO, w.nitrifying);
  r[ro + ID.nitriteOxidation] = nitrite;

  // Film beyond capacity, and decay, leave as fine solids; without phosphorus or sulfate to build those, as dissolved organics.
  const phosphate = y[o + P] > 0 ? y[o + P] * v : 0;
  const sulfate = y[o + SO4] > 0 ? y[o + SO4] * v : 0;
  const byP = phosphate / (phosphate + k.sloughP),
    byS = sulfate / (sulfate + k.sloughS),
    byO = o2 / (o2 + k.sloughO2);
  const builds = byP * byS * byO;
  // A full film lets go what it grows: shares of growth, by its fullness.
  const fullA = aob > 0 ? (k.aobYield * aob) / (k.aobCapacity * roomFor(fA, fAO, k.oxygenRoom) * area * crowding) : 0;
  const fullN = nob > 0 ? (k.nobYield * nob) / (k.nobCapacity * roomFor(fN2, fNO, k.oxygenRoom) * area * crowding) : 0;
  const fullH = het > 0 ? (k.hetYield * het) / (k.hetCapacity * area) : 0;
  const sloughA = ammonia * fullA + k.aobDecay * aob;
  const sloughN = nitrite * fullN + k.nobDecay * nob;
  const sloughH = (aerobic + anoxic) * fullH + k.hetDecay * het;
  r[ro + ID.sloughAmmoniaOxidisers] = sloughA * builds;
  r[ro + ID.lysisAmmoniaOxidisers] = sloughA * (1 - builds);
  r[ro + ID.sloughNitriteOxidisers] = sloughN * builds;
  r[ro + ID.lysisNitriteOxidisers] = sloughN * (1 - builds);
  r[ro + ID.sloughHeterotrophs] = sloughH * builds;
  r[ro + ID.lysisHeterotrophs] = sloughH * (1 - builds);

  const sulfide = y[o + S2] > 0 ? y[o + S2] * v : 0;
  const fS = o2 / (o2 + k.oxidationO2);
  const reach = k.sulfideFilm * area + k.sulfideWater * cell.volume; // m³/d
  r[ro + ID.sulfideOxidation] = reach * sulfide * fS;
  const methane = k.methaneFilm * area * fS;
  r[ro + ID.methaneOxidation] = methane * y[o + CH4] * v;

  if (!w.keeps) return;
  const steepSS = steepness(ss, k.hetSubstrate, SCARCE_SS) * v;
  g[go + KEPT.heterotrophsAerobic_SS] = hetMax * fO * steepSS;
  g[go + KEPT.heterotrophsAerobic_O2] = hetMax * fSS * steepness(o2, k.hetO2, SCARCE_O2) * v;
  g[go + KEPT.heterotrophsAerobic_TAN] = hetFull * fSS * fO * tanSlope;
  g[go + KEPT.heterotrophsAnoxic_SS] = anoxicMax * fN * steepSS;
  g[go + KEPT.heterotrophsAnoxic_NO3] = anoxicMax * fSS * steepness(no3, k.hetNO3, SCARCE_NO3) * v;
  g[go + KEPT.heterotrophsAnoxic_TAN] = hetFull * anoxicShare * fSS * fN * tanSlope;
  g[go + KEPT.nitritation_TAN] = ((aobMax * fAO * k.aobTAN) / ((k.aobTAN + tan) * (k.aobTAN + tan))) * v;
  g[go + KEPT.nitritation_O2] = seen > 0 ? ((aobMax * fA * k.aobO2) / ((k.aobO2 + filmO2) * (k.aobO2 + filmO2))) * v : 0;
  g[go + KEPT.nitriteOxidation_NO2] = ((nobMax * fNO * k.nobNO2) / ((k.nobNO2 + no2) * (k.nobNO2 + no2))) * v;
  g[go + KEPT.nitriteOxidation_O2] = seen > 0 ? ((nobMax * fN2 * k.nobO2) / ((k.nobO2 + filmO2) * (k.nobO2 + filmO2))) * v : 0;
  g[go + KEPT.sulfideOxidation_S2] = reach * fS * v;
  g[go + KEPT.sulfideOxidation_O2] = reach * sulfide * steepness(o2, k.oxidationO2, SCARCE_O2) * v;
  g[go + KEPT.methaneOxidation_CH4] = methane * v;
  // Where phosphorus or oxygen is scarce it decides what leaves as solids and what dissolves; the rest of it follows growth.
  const scarcity = (k.sloughP / ((phosphate + k.sloughP) * (phosphate + k.sloughP))) * byS * byO * v;
  const stifled = ((byP * byS * k.sloughO2) / ((o2 + k.sloughO2) * (o2 + k.sloughO2))) * v;
  // What leaves as solids; what dissolves opposes it.
  g[go + KEPT.sloughAmmoniaOxidisers_P] = sloughA * scarcity;
  g[go + KEPT.sloughAmmoniaOxidisers_O2] = sloughA * stifled;
  g[go + KEPT.sloughAmmoniaOxidisers_share] = fullA * builds;
  g[go + KEPT.lysisAmmoniaOxidisers_share] = fullA * (1 - builds);
  g[go + KEPT.sloughNitriteOxidisers_P] = sloughN * scarcity;
  g[go + KEPT.sloughNitriteOxidisers_O2] = sloughN * stifled;
  g[go + KEPT.sloughNitriteOxidisers_share] = fullN * builds;
  g[go + KEPT.lysisNitriteOxidisers_share] = fullN * (1 - builds);
  g[go + KEPT.sloughHeterotrophs_P] = sloughH * scarcity;
  g[go + KEPT.sloughHeterotrophs_O2] = sloughH * stifled;
  g[go + KEPT.sloughHeterotrophs_share] = fullH * builds;
  g[go + KEPT.lysisHeterotrophs_share] = fullH * (1 - builds);
}
