// Solids on the move: they settle, are caught by mats, media and roots, are broken by air, stirred up and let go.
// First order in the moving solid at constants that the stage sets at every cut.
import { CAUGHT, CLOG, FF, FI, FS, MF, SF, SLUDGE, SOLIDS, UF, UI, US } from '../components';
import type { Values } from '../parameters/values';
import { ID } from './catalogue';
import type { ProcessName } from './catalogue';
import type { Definition } from './definition';
import type { Kinetics } from './kineticsAt';
import type { Workspace } from './workspace';

const SIZES = ['Coarse', 'Fine', 'Superfine'] as const;
const PARTS = ['Fast', 'Slow', 'Inert'] as const;
const FINES = [[FF, UF], [FS, US], [FI, UI]] as const;
const dry = (v: Values, part: number): number => (part === 2 ? v.matter.inertDry : v.matter.organicDry);

const moving = SIZES.flatMap((size, s) => PARTS.map((part, p) => ({ size, part, s, p })));
export const solidsDefinitions: readonly Definition[] = [
  ...moving.map(({ size, part, s, p }): Definition => ({
    id: `settle${size}${part}` as ProcessName, unit: 'g COD', fixed: () => [[SOLIDS[s][p], -1], [SLUDGE[p], 1]], unknowns: [], alone: SOLIDS[s][p],
  })),
  ...moving.map(({ size, part, s, p }): Definition => ({
    id: `catch${size}${part}` as ProcessName, unit: 'g COD',
    fixed: (v) => [[SOLIDS[s][p], -1], [CAUGHT[p], 1], [CLOG, dry(v, p) * (s === 0 ? v.kinetics.coarseClogs : 1)]],
    unknowns: [], alone: SOLIDS[s][p],
  })),
  ...PARTS.map((part, p): Definition => ({
    id: `shear${part}` as ProcessName, unit: 'g COD', fixed: (v) => [[SOLIDS[0][p], -1], [FINES[p][0], 1 - v.stages.airSuperfine], [FINES[p][1], v.stages.airSuperfine]], unknowns: [], alone: SOLIDS[0][p],
  })),
  ...PARTS.map((part, p): Definition => ({
    id: `stir${part}` as ProcessName, unit: 'g COD',
    fixed: (v) => [[SLUDGE[p], -1], [SOLIDS[0][p], v.kinetics.stirCoarse], [SOLIDS[1][p], 1 - v.kinetics.stirCoarse]], unknowns: [],
  })),
  ...PARTS.map((part, p): Definition => ({ id: `release${part}` as ProcessName, unit: 'g COD', fixed: () => [[CAUGHT[p], -1], [SOLIDS[1][p], 1]], unknowns: [] })),
  { id: 'filterUnclogging', unit: 'g dry', fixed: () => [[CLOG, -1]], unknowns: [] },
];

/** Rates of stirring, letting go and unclogging; the moves of suspended solids are in network/solidsMoves.ts. */
export function solidsRates(w: Workspace, k: Kinetics): void {
  const { y, o, r, ro, cell } = w;
  if (cell.stir > 0 && cell.sludgeRoom > 0) for (let part = 0; part < 3; part++) r[ro + ID.stirFast + part] = cell.stir * y[o + SF + part];
  if (cell.release > 0) for (let part = 0; part < 3; part++) r[ro + ID.releaseFast + part] = cell.release * y[o + MF + part];
  if (cell.filter) r[ro + ID.filterUnclogging] = k.unclog * y[o + CLOG];
}
