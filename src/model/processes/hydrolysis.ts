// Hydrolysis: solids come apart. Suspended and caught solids give dissolved organics to the water; sludge gives them to its pore water.
// Sulfur leaves suspended solids as sulfate, packed and settled ones as sulfide.
import { ALK, CF, CS, FF, FS, IC, MF, MI, MS, N2, NO3, O2, P, PO, PS, S2, SF, SL, SO4, SS, TAN, UF, US } from '../components';
import { ID } from './catalogue';
import type { ProcessName } from './catalogue';
import type { Definition } from './definition';
import type { RateNumbers, Workspace } from './workspace';

const suspended: readonly (readonly [ProcessName, number])[] = [
  ['hydrolysisCoarseFast', CF],
  ['hydrolysisCoarseSlow', CS],
  ['hydrolysisFineFast', FF],
  ['hydrolysisFineSlow', FS],
  ['hydrolysisSuperfineFast', UF],
  ['hydrolysisSuperfineSlow', US],
  ['hydrolysisCaughtFast', MF],
  ['hydrolysisCaughtSlow', MS],
];

const isCaught = (solid: number): boolean => solid === MF || solid === MS;

/** Clumps of caught solids have no oxygen inside: there nitrate burns part of what comes apart. */
const clumps: readonly (readonly [ProcessName, number])[] = [
  ['clumpDenitrificationFast', MF],
  ['clumpDenitrificationSlow', MS],
];

export const hydrolysisDefinitions: readonly Definition[] = [
  ...clumps.map(([id, solid]): Definition => ({
    id,
    unit: 'g COD',
    fixed: (v) => [
      [solid, -1],
      [TAN, solid === MF ? v.matter.fastN : v.matter.slowN],
    ],
    unknowns: [NO3, N2, P, S2, IC, ALK],
    where: 'caught',
  })),
  ...suspended.map(([id, solid]): Definition => ({
    id,
    unit: 'g COD',
    fixed: () => [[solid, -1]],
    unknowns: [SS, TAN, P, isCaught(solid) ? S2 : SO4, IC, ALK],
    where: isCaught(solid) ? 'caught' : 'everywhere',
  })),
  { id: 'hydrolysisSludgeFast', unit: 'g COD', fixed: () => [[SF, -1]], unknowns: [PO, TAN, P, PS, IC, ALK], where: 'sludge' },
  { id: 'hydrolysisSludgeSlow', unit: 'g COD', fixed: () => [[SL, -1]], unknowns: [PO, TAN, P, PS, IC, ALK], where: 'sludge' },
];

/** What is left of a rate when so much was burnt; one that runs backwards in a trial step goes on doing so. */
const lessBurnt = (rate: number, burnt: number): number => (rate > burnt ? rate - burnt : Math.min(rate, 0));

export function hydrolysisRates(w: Workspace, { kinetics: k }: RateNumbers): void {
  const { y, o, r, ro, cell, perVolume: v } = w;
  const o2 = y[o + O2] > 0 ? y[o + O2] * v : 0;
  const pace = k.hydrolysisAnaerobic + (1 - k.hydrolysisAnaerobic) * (o2 / (o2 + k.hydrolysisO2));
  const fast = k.hydrolysisFast * pace;
  const slow = k.hydrolysisSlow * pace;
  r[ro + ID.hydrolysisCoarseFast] = fast * y[o + CF];
  r[ro + ID.hydrolysisCoarseSlow] = slow * y[o + CS];
  r[ro + ID.hydrolysisFineFast] = fast * y[o + FF];
  r[ro + ID.hydrolysisFineSlow] = slow * y[o + FS];
  r[ro + ID.hydrolysisSuperfineFast] = fast * y[o + UF];
  r[ro + ID.hydrolysisSuperfineSlow] = slow * y[o + US];
  const holds = cell.holds ? 1 : 0;
  // What the coat of roots burns where it sits no longer comes apart.
  const caughtFast = lessBurnt(holds * fast * y[o + MF], cell.bed ? r[ro + ID.coatRespirationFast] : 0);
  const caughtSlow = lessBurnt(holds * slow * y[o + MS], cell.bed ? r[ro + ID.coatRespirationSlow] : 0);
  const clumped = (k.organicDry * (y[o + MF] + y[o + MS]) + k.inertDry * y[o + MI]) * v;
  const inside = (holds * k.clumpAnoxic * clumped) / (clumped + k.clumpHalf);
  const no3 = y[o + NO3] > 0 ? y[o + NO3] * v : 0;
  const share = (inside * no3) / (no3 + k.clumpNO3);
  r[ro + ID.hydrolysisCaughtFast] = caughtFast * (1 - share);
  r[ro + ID.hydrolysisCaughtSlow] = caughtSlow * (1 - share);
  r[ro + ID.clumpDenitrificationFast] = caughtFast * share;
  r[ro + ID.clumpDenitrificationSlow] = caughtSlow * share;
  // A resting bed is anaerobic but for a skin.
  const rests = cell.bedThickness > 0 ? k.hydrolysisAnaerobic : 0;
  r[ro + ID.hydrolysisSludgeFast] = k.hydrolysisFast * rests * y[o + SF];
  r[ro + ID.hydrolysisSludgeSlow] = k.hydrolysisSlow * rests * y[o + SL];
}
