// Gas transfer with the air: kLa × volume of each gas (set at cuts) times its distance from saturation.
import { AIR_CH4, AIR_CO2, AIR_H2S, AIR_N2, AIR_NH3, AIR_O2, ALK, CH4, IC, N2, O2, S2, TAN } from '../components';
import { ID, KEPT, TABLE } from './catalogue';
import type { Definition } from './definition';
import type { RateNumbers, Workspace } from './workspace';

export const gasDefinitions: readonly Definition[] = [
  {
    id: 'oxygenTransfer',
    unit: 'g O2',
    fixed: () => [
      [O2, 1],
      [AIR_O2, -1],
    ],
    unknowns: [],
    fast: [O2],
  },
  {
    id: 'carbonDioxideTransfer',
    unit: 'mol C',
    fixed: () => [
      [IC, -1],
      [AIR_CO2, 1],
    ],
    unknowns: [],
    fast: [IC, ALK],
  },
  {
    id: 'hydrogenSulfideTransfer',
    unit: 'g S',
    fixed: () => [
      [S2, -1],
      [AIR_H2S, 1],
    ],
    unknowns: [],
    fast: [S2],
    undone: [[S2, 2]],
  },
  {
    id: 'methaneTransfer',
    unit: 'g COD',
    fixed: () => [
      [CH4, -1],
      [AIR_CH4, 1],
    ],
    unknowns: [],
    alone: CH4,
    undone: [[CH4, 1]],
  },
  {
    id: 'ammoniaTransfer',
    unit: 'g N',
    fixed: () => [
      [TAN, -1],
      [AIR_NH3, 1],
    ],
    unknowns: [ALK],
    fast: [TAN],
  },
  {
    id: 'nitrogenTransfer',
    unit: 'g N',
    fixed: () => [
      [N2, -1],
      [AIR_N2, 1],
    ],
    unknowns: [],
    alone: N2,
  },
];

/**
 * How much steeper than here free CO2 climbs, in the mean, on its way to saturation. Below it the water holds carbonate, and CO2
 * hardly answers to carbon until that is used up: a step that trusts the slope here flies past, back, and past again.
 */
function steepening(w: Workspace, saturated: number): number {
  // At saturation x of bicarbonate satisfies x + 2 (k12/k1²) x²/CO2 = the alkalinity that carbon makes up.
  const a = (2 * w.k12) / (w.k1 * w.k1 * saturated);
  const bicarbonate = a > 0 ? (Math.sqrt(1 + 4 * a * Math.max(0, w.carbonate)) - 1) / (2 * a) : w.carbonate;
  const there = saturated + bicarbonate + 0.5 * a * bicarbonate * bicarbonate;
  const gap = there - w.carbon;
  const chord = gap > 1e-9 ? (saturated - w.co2) / gap : 0;
  return chord > w.co2IC && w.co2IC > 0 ? chord / w.co2IC : 1;
}

export function gasRates(w: Workspace, { kinetics: k, saturation, matrix: { table: m } }: RateNumbers): void {
  const { y, o, r, ro, g, go, cell, perVolume: v } = w;
  r[ro + ID.oxygenTransfer] = cell.kO2 * (saturation.O2 - y[o + O2] * v);
  // The sludge bed's pull is kept here: the method bears any W that is made of whole columns, and this one touches oxygen alone.
  g[go + KEPT.oxygenTransfer_O2] = -cell.kO2 * v - w.pull;
  r[ro + ID.carbonDioxideTransfer] = cell.kCO2 * (w.co2 - saturation.CO2);
  const steeper = w.keeps && w.co2 < saturation.CO2 ? steepening(w, saturation.CO2) : 1;
  // Nitrifiers' own want of carbon is kept here too, where little is left.
  const want =
    w.carbon > 0
      ? (-(m[TABLE.nitritation_IC] * r[ro + ID.nitritation] + m[TABLE.nitriteOxidation_IC] * r[ro + ID.nitriteOxidation])
          * k.nitrifierCarbon)
        / (w.carbon * (w.carbon + k.nitrifierCarbon))
      : 0;
  g[go + KEPT.carbonDioxideTransfer_IC] = (cell.kCO2 * w.co2IC * steeper + want) * v;
  g[go + KEPT.carbonDioxideTransfer_ALK] = cell.kCO2 * w.co2ALK * steeper * v;
  const sulfide = cell.kH2S * w.h2s * v;
  r[ro + ID.hydrogenSulfideTransfer] = sulfide * y[o + S2];
  g[go + KEPT.hydrogenSulfideTransfer_S2] = sulfide;
  const methane = cell.kCH4 * v;
  r[ro + ID.methaneTransfer] = methane * y[o + CH4];
  g[go + KEPT.methaneTransfer_CH4] = methane;
  const ammonia = cell.kNH3 * w.nh3 * v;
  r[ro + ID.ammoniaTransfer] = ammonia * y[o + TAN];
  g[go + KEPT.ammoniaTransfer_TAN] = ammonia;
  r[ro + ID.nitrogenTransfer] = cell.kN2 * (y[o + N2] * v - saturation.N2);
  g[go + KEPT.nitrogenTransfer_N2] = cell.kN2 * v;
}
