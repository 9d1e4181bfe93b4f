// Gas transfer with the air: kLa × volume of each gas (set at cuts) times its distance from saturation.
import { AIR_CH4, AIR_CO2, AIR_H2S, AIR_N2, AIR_NH3, AIR_O2, ALK, CH4, IC, N2, O2, S2, TAN } from '../components';
import { ID, SLOTS } from './catalogue';
import type { Definition } from './definition';
import type { Workspace } from './workspace';

export const gasDefinitions: readonly Definition[] = [
  { id: 'oxygenTransfer', unit: 'g O2', fixed: () => [[O2, 1], [AIR_O2, -1]], unknowns: [], fast: [O2] },
  { id: 'carbonDioxideTransfer', unit: 'mol C', fixed: () => [[IC, -1], [AIR_CO2, 1]], unknowns: [], fast: [IC, ALK] },
  { id: 'hydrogenSulfideTransfer', unit: 'g S', fixed: () => [[S2, -1], [AIR_H2S, 1]], unknowns: [], fast: [S2] },
  { id: 'methaneTransfer', unit: 'g COD', fixed: () => [[CH4, -1], [AIR_CH4, 1]], unknowns: [], alone: CH4 },
  { id: 'ammoniaTransfer', unit: 'g N', fixed: () => [[TAN, -1], [AIR_NH3, 1]], unknowns: [ALK], fast: [TAN] },
  { id: 'nitrogenTransfer', unit: 'g N', fixed: () => [[N2, -1], [AIR_N2, 1]], unknowns: [], alone: N2 },
];

/** Saturation with air at the water's temperature: O2 g/m³, CO2 mol/m³, N2 g N/m³. */
export interface Saturation { O2: number; CO2: number; N2: number }

export function gasRates(w: Workspace, saturation: Saturation): void {
  const { y, o, r, ro, g, go, cell, perVolume: v } = w;
  r[ro + ID.oxygenTransfer] = cell.kO2 * (saturation.O2 - y[o + O2] * v);
  // The sludge bed's pull is kept here: the method bears any W that is made of whole columns, and this one touches oxygen alone.
  g[go + ID.oxygenTransfer * SLOTS] = -cell.kO2 * v - w.pull;
  r[ro + ID.carbonDioxideTransfer] = cell.kCO2 * (w.co2 - saturation.CO2);
  g[go + ID.carbonDioxideTransfer * SLOTS] = cell.kCO2 * w.co2IC * v;
  g[go + ID.carbonDioxideTransfer * SLOTS + 1] = cell.kCO2 * w.co2ALK * v;
  const sulfide = cell.kH2S * w.h2s * v;
  r[ro + ID.hydrogenSulfideTransfer] = sulfide * y[o + S2];
  g[go + ID.hydrogenSulfideTransfer * SLOTS] = sulfide;
  const methane = cell.kCH4 * v;
  r[ro + ID.methaneTransfer] = methane * y[o + CH4];
  g[go + ID.methaneTransfer * SLOTS] = methane;
  const ammonia = cell.kNH3 * w.nh3 * v;
  r[ro + ID.ammoniaTransfer] = ammonia * y[o + TAN];
  g[go + ID.ammoniaTransfer * SLOTS] = ammonia;
  r[ro + ID.nitrogenTransfer] = cell.kN2 * (y[o + N2] * v - saturation.N2);
  g[go + ID.nitrogenTransfer * SLOTS] = cell.kN2 * v;
}
