// Roots breathe, and so does what coats them: oxygen at the roots' surface decides their health, and with warmth and coat how they rot.
import { AIR_CO2, AIR_O2, ALK, IC, LEAF, MF, MI, MS, O2, OP, P, ROOT, ROT, S2, SO4, TAN } from '../components';
import { ATOM } from '../elements';
import { ID, KEPT } from './catalogue';
import type { Definition } from './definition';
import type { Kinetics } from './kineticsAt';
import type { RateNumbers, Workspace } from './workspace';

const MOL_PER_G_O2 = 1 / (2 * ATOM.O);

export const rootDefinitions: readonly Definition[] = [
  {
    // what roots burn, leaves have made of the air's carbon dioxide: a mole of it for a mole of oxygen
    id: 'rootRespiration',
    unit: 'g O2',
    fixed: () => [
      [O2, -1],
      [AIR_O2, 1],
      [IC, MOL_PER_G_O2],
      [AIR_CO2, -MOL_PER_G_O2],
    ],
    unknowns: [],
    fast: [O2],
    where: 'crop',
  },
  ...([MF, MS] as const).map((solid): Definition => ({
    id: solid === MF ? 'coatRespirationFast' : 'coatRespirationSlow',
    unit: 'g COD',
    fixed: () => [[solid, -1]],
    unknowns: [O2, TAN, P, SO4, IC, ALK],
    fast: [O2],
    where: 'crop',
  })),
  { id: 'rootRelaxation', unit: '–', fixed: () => [[ROOT, 1]], unknowns: [], where: 'crop' },
  { id: 'rootRot', unit: '–', fixed: () => [[ROT, 1]], unknowns: [], where: 'crop' },
];

/** g dry solids on the roots of the cell */
export const rootMat = (y: Float64Array, o: number, k: Kinetics): number => k.organicDry * (y[o + MF] + y[o + MS]) + k.inertDry * y[o + MI];

/** How roots get their oxygen. All per m² of root surface but the coat. */
export interface RootBreath {
  /** g/m³ at the surface of the roots, under their coat */
  surface: number;
  /** share of full breath, 0–1, and its rise with the water's oxygen, m³/g */
  share: number;
  rise: number;
  /** m² of root in the cell; g dry of coat a m² of bed */
  area: number;
  coat: number;
}

/**
 * Oxygen at the roots' surface: what comes through still water and coat is what roots and coat breathe there.
 * @param into is overwritten; nothing is allocated
 */
export function breathOf(
  y: Float64Array,
  o: number,
  k: Kinetics,
  cell: { floor: number; mediaArea: number; rootTransfer: number },
  oxygen: number,
  into: RootBreath,
): RootBreath {
  const leaf = y[o + LEAF] > 0 ? y[o + LEAF] / cell.floor : 0;
  const perBed = k.rootArea * leaf > k.rootAreaLeast ? k.rootArea * leaf : k.rootAreaLeast;
  // In a bed of gravel most of what is caught sits on the stones.
  const on = 1 / (cell.floor + cell.mediaArea);
  into.coat = rootMat(y, o, k) * on;
  into.area = perBed * cell.floor;
  const still = 1 / cell.rootTransfer;
  const through = (into.coat / perBed) * k.coatResistance;
  const reaches = 1 / (still + through);
  const roots = (k.rootRespiration * leaf) / perBed;
  const coat = ((k.hydrolysisFast * y[o + MF] + k.hydrolysisSlow * y[o + MS]) * on) / perBed;
  // the coat breathes along its depth, in the mean halfway through it
  const wants = (roots + (coat > 0 ? coat : 0) * reaches * (still + through / 2)) / reaches;
  const b = k.rootO2 + wants - oxygen;
  const surface = 0.5 * (Math.sqrt(b * b + 4 * oxygen * k.rootO2) - b);
  const over = 1 / (k.rootO2 + surface);
  const steep = k.rootO2 * over * over;
  into.surface = surface;
  into.share = surface * over;
  into.rise = steep / (1 + wants * steep);
  return into;
}

/** Health that so much breath leaves: full from a share of full breath, below it by the square; the corner is rounded. */
export function breathHealth(share: number, k: Kinetics): number {
  const x = (share + k.rootAired * (1 - share)) / k.rootBreathes;
  if (x <= 0.9) return x * x;
  if (x >= 1.1) return 1;
  const t = (x - 0.9) / 0.2;
  // cubic from 0.81, as steep as the square there, to 1, level
  return 0.81 + t * (0.36 + t * (-0.15 + t * -0.02));
}

const breath: RootBreath = { surface: 0, share: 0, rise: 0, area: 0, coat: 0 };

export function rootRates(w: Workspace, { kinetics: k }: RateNumbers): void {
  const { y, o, r, ro, g, go, cell, perVolume: v } = w;
  const oxygen = y[o + O2] > 0 ? y[o + O2] * v : 0;
  breathOf(y, o, k, cell, oxygen, breath);
  const leaf = y[o + LEAF] > 0 ? y[o + LEAF] : 0;
  const onRoots = cell.floor / (cell.floor + cell.mediaArea);
  const roots = k.rootRespiration * leaf;
  const fast = y[o + MF] > 0 ? onRoots * k.hydrolysisFast * y[o + MF] : 0;
  const slow = y[o + MS] > 0 ? onRoots * k.hydrolysisSlow * y[o + MS] : 0;
  r[ro + ID.rootRespiration] = roots * breath.share;
  r[ro + ID.coatRespirationFast] = fast * breath.share;
  r[ro + ID.coatRespirationSlow] = slow * breath.share;
  const rise = breath.rise * v;
  g[go + KEPT.rootRespiration_O2] = roots * rise;
  g[go + KEPT.coatRespirationFast_O2] = fast * rise;
  g[go + KEPT.coatRespirationSlow_O2] = slow * rise;

  const sulfide = (y[o + S2] * v * w.h2s) / k.rootSulfide;
  const target = (cell.rootTarget * breathHealth(breath.share, k)) / (1 + sulfide * sulfide);
  r[ro + ID.rootRelaxation] = (target - y[o + ROOT]) * k.rootRelax;

  const coated = breath.coat / k.rotCoat;
  const open = 1 - breath.share / (1 + coated * coated);
  const rot = y[o + ROT];
  const spreads = k.rotGrowth * (k.rotClean + (1 - k.rotClean) * open) * rot;
  const seeded = k.rotGrowth > 0 ? k.rotSeed * y[o + OP] * v : 0;
  r[ro + ID.rootRot] = (spreads + seeded) * (1 - rot) - k.rotHealing * rot;
}
