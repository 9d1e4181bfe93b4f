// Solids on the move: they settle, are caught by mats, media and roots, are broken by air, stirred up and let go.
// First order in the moving solid at constants that the stage sets at every cut.
import { CAUGHT, CLOG, SLUDGE, SOLIDS } from '../components';
import type { Values } from '../parameters/values';
import { ID } from './catalogue';
import type { ProcessName } from './catalogue';
import type { Definition, Move } from './definition';
import type { RateNumbers, Workspace } from './workspace';

const SIZES = ['Coarse', 'Fine', 'Superfine'] as const;
const PARTS = ['Fast', 'Slow', 'Inert'] as const;
const [COARSE, FINE, SUPERFINE] = SOLIDS;
const dry = (v: Values, part: number): number => (part === 2 ? v.matter.inertDry : v.matter.organicDry);

/** A move that the solver keeps: what stands still at its end is solved after what moves. */
const kept = (of: number, at: Move['at'], clears?: true): Pick<Definition, 'moves' | 'where'> => ({
  moves: { of, at, clears, kept: true },
  where: at,
});

const moving = SIZES.flatMap((size, s) => PARTS.map((part, p) => ({ size, part, s: s as 0 | 1 | 2, p })));
export const solidsDefinitions: readonly Definition[] = [
  ...moving.map(({ size, part, s, p }): Definition => ({
    id: `settle${size}${part}` as ProcessName,
    unit: 'g COD',
    fixed: () => [
      [SOLIDS[s][p], -1],
      [SLUDGE[p], 1],
    ],
    unknowns: [],
    ...kept(SOLIDS[s][p], `settle${s}`, true),
    undone: [[SOLIDS[s][p], 1]],
  })),
  ...moving.map(({ size, part, s, p }): Definition => ({
    id: `catch${size}${part}` as ProcessName,
    unit: 'g COD',
    unknowns: [],
    fixed: (v) => [
      [SOLIDS[s][p], -1],
      [CAUGHT[p], 1],
      [CLOG, dry(v, p) * (s === 0 ? v.kinetics.coarseClogs : 1)],
    ],
    ...kept(SOLIDS[s][p], `catch${s}`, true),
    undone: [[SOLIDS[s][p], 2]],
  })),
  ...PARTS.map((part, p): Definition => ({
    id: `shear${part}` as ProcessName,
    unit: 'g COD',
    unknowns: [],
    fixed: (v) => [
      [COARSE[p], -1],
      [FINE[p], 1 - v.stages.airSuperfine],
      [SUPERFINE[p], v.stages.airSuperfine],
    ],
    ...kept(COARSE[p], 'shear'),
  })),
  ...PARTS.map((part, p): Definition => ({
    id: `stir${part}` as ProcessName,
    unit: 'g COD',
    unknowns: [],
    fixed: (v) => [
      [SLUDGE[p], -1],
      [COARSE[p], v.kinetics.stirCoarse],
      [FINE[p], 1 - v.kinetics.stirCoarse],
    ],
    moves: { of: SLUDGE[p], at: 'stir' },
    where: 'stir',
  })),
  ...PARTS.map((part, p): Definition => ({
    id: `release${part}` as ProcessName,
    unit: 'g COD',
    fixed: () => [
      [CAUGHT[p], -1],
      [FINE[p], 1],
    ],
    unknowns: [],
    moves: { of: CAUGHT[p], at: 'release' },
    where: 'release',
  })),
  { id: 'filterUnclogging', unit: 'g dry', fixed: () => [[CLOG, -1]], unknowns: [], where: 'filter' },
];

/** Caught solids rot down and open a filter again. */
export function solidsRates({ y, o, r, ro }: Workspace, { kinetics: k }: RateNumbers): void {
  r[ro + ID.filterUnclogging] = k.unclog * y[o + CLOG];
}
