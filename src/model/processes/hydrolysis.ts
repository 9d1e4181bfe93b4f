// Hydrolysis: solids come apart. Suspended and caught solids give dissolved organics to the water; sludge gives them to its pore water.
// Sulfur leaves suspended solids as sulfate, packed and settled ones as sulfide.
import { ALK, CF, CS, FF, FS, IC, MF, MS, O2, P, PO, PS, S2, SF, SL, SO4, SS, TAN, UF, US } from '../components';
import { ID } from './catalogue';
import type { ProcessName } from './catalogue';
import type { Definition } from './definition';
import type { Kinetics } from './kineticsAt';
import type { Workspace } from './workspace';

const suspended: readonly (readonly [ProcessName, number])[] = [
  ['hydrolysisCoarseFast', CF], ['hydrolysisCoarseSlow', CS], ['hydrolysisFineFast', FF], ['hydrolysisFineSlow', FS],
  ['hydrolysisSuperfineFast', UF], ['hydrolysisSuperfineSlow', US], ['hydrolysisCaughtFast', MF], ['hydrolysisCaughtSlow', MS],
];

export const hydrolysisDefinitions: readonly Definition[] = [
  ...suspended.map(([id, solid]): Definition => ({ id, unit: 'g COD', fixed: () => [[solid, -1]], unknowns: [SS, TAN, P, solid === MF || solid === MS ? S2 : SO4, IC, ALK] })),
  { id: 'hydrolysisSludgeFast', unit: 'g COD', fixed: () => [[SF, -1]], unknowns: [PO, TAN, P, PS, IC, ALK] },
  { id: 'hydrolysisSludgeSlow', unit: 'g COD', fixed: () => [[SL, -1]], unknowns: [PO, TAN, P, PS, IC, ALK] },
];

export function hydrolysisRates(w: Workspace, k: Kinetics): void {
  const { y, o, r, ro, perVolume: v } = w;
  const o2 = y[o + O2] > 0 ? y[o + O2] * v : 0;
  const pace = k.hydrolysisAnaerobic + (1 - k.hydrolysisAnaerobic) * (o2 / (o2 + 0.2));
  const fast = k.hydrolysisFast * pace;
  const slow = k.hydrolysisSlow * pace;
  r[ro + ID.hydrolysisCoarseFast] = fast * y[o + CF];
  r[ro + ID.hydrolysisCoarseSlow] = slow * y[o + CS];
  r[ro + ID.hydrolysisFineFast] = fast * y[o + FF];
  r[ro + ID.hydrolysisFineSlow] = slow * y[o + FS];
  r[ro + ID.hydrolysisSuperfineFast] = fast * y[o + UF];
  r[ro + ID.hydrolysisSuperfineSlow] = slow * y[o + US];
  r[ro + ID.hydrolysisCaughtFast] = fast * y[o + MF];
  r[ro + ID.hydrolysisCaughtSlow] = slow * y[o + MS];
  // A resting bed is anaerobic but for a skin.
  r[ro + ID.hydrolysisSludgeFast] = k.hydrolysisFast * k.hydrolysisAnaerobic * y[o + SF];
  r[ro + ID.hydrolysisSludgeSlow] = k.hydrolysisSlow * k.hydrolysisAnaerobic * y[o + SL];
}
