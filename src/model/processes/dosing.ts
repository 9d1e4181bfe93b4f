// Bases trickled into a tank: what a gram brings, by its formula. Alkalinity follows from charge.
import { ALK, ATOM, CA, IC, K, NA } from '../components';
import type { ProcessName } from './catalogue';
import type { Definition } from './definition';
import type { Workspace } from './workspace';

/** Bases by their formula, as plans name them. */
export const BASES = ['Ca(OH)2', 'KOH', 'CaCO3', 'K2CO3', 'NaHCO3', 'KHCO3'] as const;
export type Base = (typeof BASES)[number];

const { C, Ca, H, K: potassium, Na, O } = ATOM;
const molar = {
  'Ca(OH)2': Ca + 2 * (O + H),
  KOH: potassium + O + H,
  CaCO3: Ca + C + 3 * O,
  K2CO3: 2 * potassium + C + 3 * O,
  NaHCO3: Na + H + C + 3 * O,
  KHCO3: potassium + H + C + 3 * O,
} as const;

export const DOSE_OF: Readonly<Record<Base, ProcessName>> = {
  'Ca(OH)2': 'doseCalciumHydroxide',
  KOH: 'dosePotassiumHydroxide',
  CaCO3: 'doseCalciumCarbonate',
  K2CO3: 'dosePotassiumCarbonate',
  NaHCO3: 'doseSodiumBicarbonate',
  KHCO3: 'dosePotassiumBicarbonate',
};

const dose = (base: Base, brings: readonly (readonly [component: number, perMole: number])[]): Definition => ({
  id: DOSE_OF[base],
  unit: 'g',
  fixed: () => brings.map(([component, amount]) => [component, amount / molar[base]] as const),
  unknowns: [ALK],
  where: 'dosed',
  fromOutside: true,
});

export const dosingDefinitions: readonly Definition[] = [
  dose('Ca(OH)2', [[CA, Ca]]),
  dose('KOH', [[K, potassium]]),
  dose('CaCO3', [
    [CA, Ca],
    [IC, 1],
  ]),
  dose('K2CO3', [
    [K, 2 * potassium],
    [IC, 1],
  ]),
  dose('NaHCO3', [
    [NA, Na],
    [IC, 1],
  ]),
  dose('KHCO3', [
    [K, potassium],
    [IC, 1],
  ]),
];

export function doseRates(w: Workspace): void {
  w.r[w.ro + w.cell.doseProcess] = w.cell.doseRate;
}
