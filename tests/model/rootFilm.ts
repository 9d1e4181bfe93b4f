// A state that the model does not have, as somebody would add it: a film of bacteria on roots, whose oxygen is not the water's but that
// at its surface, found each time from what comes through the still water against what the film breathes.
import { cpSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** What is written anew: one file of a family of processes. */
const FILE = `// A film on roots that breathes the oxygen of its own surface.
import { ALK, IC, O2, RF, SS, TAN } from '../components';
import { ID, KEPT } from './catalogue';
import type { Definition } from './definition';
import type { Workspace } from './workspace';

export const rootFilmDefinitions: readonly Definition[] = [
  { id: 'rootFilmGrowth', unit: 'g COD', fixed: () => [[SS, -1], [RF, 0.4]], unknowns: [TAN, O2, IC, ALK], where: 'crop', fast: [SS, O2] },
  { id: 'rootFilmDecay', unit: 'g COD', fixed: () => [[RF, -1], [SS, 1]], unknowns: [TAN, IC, ALK], where: 'crop' },
];

/** m/d through still water; g/g/d at most; half-saturations, g/m³; 1/d */
const THROUGH = 0.8, MOST = 4, HALF_O2 = 0.3, HALF_SS = 4, DECAY = 0.1;

export function rootFilmRates(w: Workspace): void {
  const { y, o, r, ro, g, go, cell, perVolume: v } = w;
  const film = y[o + RF] > 0 ? y[o + RF] : 0;
  const oxygen = y[o + O2] > 0 ? y[o + O2] * v : 0;
  const organics = y[o + SS] > 0 ? y[o + SS] * v : 0;
  const a = THROUGH * cell.floor;
  const eats = MOST * film * organics / (organics + HALF_SS);
  // a (oxygen − s) = 0.6 eats s / (s + HALF_O2): what arrives is what is breathed.
  const b = 0.6 * eats;
  const p = HALF_O2 + b / a - oxygen;
  const s = 0.5 * (Math.sqrt(p * p + 4 * oxygen * HALF_O2) - p);
  const share = s / (s + HALF_O2);
  r[ro + ID.rootFilmGrowth] = eats * share;
  r[ro + ID.rootFilmDecay] = DECAY * film;
  const steep = HALF_O2 / ((s + HALF_O2) * (s + HALF_O2));
  const byOxygen = a / (a + b * steep);
  g[go + KEPT.rootFilmGrowth_O2] = eats * steep * byOxygen * v;
  g[go + KEPT.rootFilmGrowth_SS] = MOST * film * HALF_SS / ((organics + HALF_SS) * (organics + HALF_SS)) * share * v;
}
`;

/** What is written in files that are there: the line before it, and the line. */
const LINES: readonly (readonly [file: string, after: RegExp, line: string])[] = [
  [
    'model/componentList.ts',
    /^.*name: 'CLOG'.*$/m,
    "  { name: 'RF', kind: 'resident', content: film, dry: 'organicDry', tolerance: onFilm(1e-4) },",
  ],
  ['model/processes/families.ts', /^import .* from '.\/plants';$/m, "import { rootFilmDefinitions, rootFilmRates } from './rootFilm';"],
  [
    'model/processes/families.ts',
    /^.*file: 'plants'.*$/m,
    "  { file: 'rootFilm', rates: rootFilmRates, definitions: rootFilmDefinitions },",
  ],
];

/** Copies the sources to a folder and adds the state to them, as by hand: nothing generated is touched. */
export function addRootFilm(sources: string, to: string): void {
  for (const part of ['numerics', 'model', 'catalogue', 'season']) cpSync(join(sources, part), join(to, part), { recursive: true });
  writeFileSync(join(to, 'model/processes/rootFilm.ts'), FILE);
  for (const [file, after, line] of LINES) {
    const text = readFileSync(join(to, file), 'utf8');
    const found = after.exec(text)?.[0];
    if (found === undefined) throw new Error(`${file}: no line ${after.source}`);
    writeFileSync(
      join(to, file),
      text.replace(found, () => `${found}\n${line}`),
    );
  }
}

/** Lines that were written into files there are. */
export const LINES_TOUCHED = LINES.length;
