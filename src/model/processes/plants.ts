// What a crop does to the water by the hour: roots fill the plant's stores, leaves grow from them.
// Uptake = kinetics × room left in the store × root health; growth stops where a store is empty (Droop's idea of an internal quota).
import { AIR_CO2, AIR_O2, ALK, CA, FE, K, LEAF, MG, NO3, P, QCA, QFE, QK, QN, QP, ROOT, ROT, SO4, TAN } from '../components';
import { ID, KEPT } from './catalogue';
import type { Definition } from './definition';
import type { RateNumbers, Workspace } from './workspace';

export const plantDefinitions: readonly Definition[] = [
  {
    id: 'uptakeNitrate',
    unit: 'g N',
    fixed: () => [
      [NO3, -1],
      [QN, 1],
    ],
    unknowns: [AIR_O2, ALK],
    fast: [NO3],
    where: 'crop',
    undone: [[NO3, 3]],
  },
  {
    id: 'uptakeAmmonium',
    unit: 'g N',
    fixed: () => [
      [TAN, -1],
      [QN, 1],
    ],
    unknowns: [ALK],
    fast: [TAN],
    where: 'crop',
    undone: [[TAN, 3]],
  },
  {
    id: 'uptakePhosphate',
    unit: 'g P',
    fixed: () => [
      [P, -1],
      [QP, 1],
    ],
    unknowns: [ALK],
    alone: P,
    where: 'crop',
    undone: [[P, 1]],
  },
  {
    id: 'uptakePotassium',
    unit: 'g K',
    fixed: () => [
      [K, -1],
      [QK, 1],
    ],
    unknowns: [ALK],
    alone: K,
    where: 'crop',
    undone: [[K, 1]],
  },
  {
    id: 'uptakeCalcium',
    unit: 'g Ca',
    fixed: () => [
      [CA, -1],
      [QCA, 1],
    ],
    unknowns: [ALK],
    alone: CA,
    where: 'crop',
    undone: [[CA, 1]],
  },
  {
    id: 'uptakeIron',
    unit: 'g Fe',
    fixed: () => [
      [FE, -1],
      [QFE, 1],
    ],
    unknowns: [],
    alone: FE,
    where: 'crop',
    undone: [[FE, 1]],
  },
  {
    id: 'leafGrowth',
    unit: 'g dry',
    fixed: () => [[LEAF, 1]],
    unknowns: [QN, QP, QK, QCA, QFE, MG, SO4, AIR_CO2, AIR_O2, ALK],
    where: 'crop',
  },
];

export function plantRates(w: Workspace, { kinetics: k }: RateNumbers): void {
  const { y, o, r, ro, g, go, cell, perVolume: v } = w;
  const c = cell.cropAt;
  const leaf = y[o + LEAF] > 0 ? y[o + LEAF] : 0;
  // roots that rot take up less
  const works = y[o + ROOT] * (1 - k.rotHarm * y[o + ROT]);
  const pull = leaf * c.fill * works;
  const full = leaf > 1e-9 ? 1 / leaf : 0;
  const sN = (y[o + QN] * full) / c.roomN,
    sP = (y[o + QP] * full) / c.roomP,
    sK = (y[o + QK] * full) / c.roomK,
    sCa = (y[o + QCA] * full) / c.roomCa,
    sFe = (y[o + QFE] * full) / c.roomFe;

  // Nitrogen as nitrate and ammonium, in proportion.
  const no3 = y[o + NO3] > 0 ? y[o + NO3] * v : 0;
  const tan = y[o + TAN] > 0 ? y[o + TAN] * v : 0;
  const needN = sN < 1 ? pull * c.roomN * (1 - sN) : 0;
  const perHalf = 1 / (c.halfN + no3 + tan);
  r[ro + ID.uptakeNitrate] = needN * no3 * perHalf;
  r[ro + ID.uptakeAmmonium] = needN * tan * perHalf;
  g[go + KEPT.uptakeNitrate_NO3] = needN * (c.halfN + tan) * perHalf * perHalf * v;
  g[go + KEPT.uptakeAmmonium_TAN] = needN * (c.halfN + no3) * perHalf * perHalf * v;
  lone(w, ID.uptakePhosphate, KEPT.uptakePhosphate_P, P, sP < 1 ? pull * c.roomP * (1 - sP) : 0, c.halfP);
  lone(w, ID.uptakePotassium, KEPT.uptakePotassium_K, K, sK < 1 ? pull * c.roomK * (1 - sK) : 0, c.halfK);
  lone(w, ID.uptakeCalcium, KEPT.uptakeCalcium_CA, CA, sCa < 1 ? pull * c.roomCa * (1 - sCa) : 0, c.halfCa);
  // At high pH iron leaves its chelate and serves less.
  lone(w, ID.uptakeIron, KEPT.uptakeIron_FE, FE, sFe < 1 ? pull * c.roomFe * (1 - sFe) : 0, c.halfFe * (1 + c.ironH / w.h));

  // Growth from the scarcest store; magnesium and sulfur are taken as they are built in.
  let scarce = sN < sP ? sN : sP;
  if (sK < scarce) scarce = sK;
  if (sCa < scarce) scarce = sCa;
  if (sFe < scarce) scarce = sFe;
  if (scarce > 1) scarce = 1;
  let left = scarce > 0 ? (scarce * (1 + k.storeShort)) / (scarce + k.storeShort) : 0;
  const magnesium = y[o + MG] > 0 ? y[o + MG] * v : 0,
    sulfate = y[o + SO4] > 0 ? y[o + SO4] * v : 0;
  left *= Math.min(magnesium / (c.halfMg + magnesium), sulfate / (c.halfS + sulfate));
  r[ro + ID.leafGrowth] = cell.growth * w.light * works * left;
}

/** Uptake of a component that is solved by itself. */
function lone(w: Workspace, p: number, kept: number, component: number, need: number, half: number): void {
  const c = w.y[w.o + component] > 0 ? w.y[w.o + component] * w.perVolume : 0;
  const perHalf = 1 / (half + c);
  w.r[w.ro + p] = need * c * perHalf;
  w.g[w.go + kept] = need * half * perHalf * perHalf * w.perVolume;
}
