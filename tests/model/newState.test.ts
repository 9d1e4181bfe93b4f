// A new resident state with processes of its own, one of them with a quantity found implicitly each time, costs its line in the list of
// components, its file and its family's line: the generator does the rest. It is lived with, and where it is empty nothing changes.
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import * as components from '../../src/model/components';
import type * as Components from '../../src/model/components';
import type * as ComponentsText from '../../src/model/kernel/generate/componentsText';
import type * as KernelTexts from '../../src/model/kernel/generate/kernelTexts';
import type * as Sizes from '../../src/model/kernel/sizes';
import type * as Ids from '../../src/model/kernel/ids';
import { Season } from '../../src/season/season';
import type * as SeasonModule from '../../src/season/season';
import { referencePlan } from '../season/plans';
import { addRootFilm, LINES_TOUCHED } from './rootFilm';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
/** Kept by nobody; inside the project, so that packages are found from there. */
const SCRATCH = join(ROOT, '.scratch', `newState-${process.pid}`);
const written = join(SCRATCH, 'written'),
  lived = join(SCRATCH, 'lived');
const load = async <T>(path: string): Promise<T> => (await import(/* @vite-ignore */ path)) as T;

const DAYS = 5;
const plan = referencePlan({ days: DAYS });

describe('a new resident state', () => {
  let names: typeof Components;
  let ids: Record<string, number>;
  let sizes: typeof Sizes;
  let season: typeof SeasonModule.Season;

  beforeAll(async () => {
    for (const folder of [written, lived]) {
      mkdirSync(folder, { recursive: true });
      addRootFilm(join(ROOT, 'src'), folder);
    }
    // As `npm run kernels` does: the places of components first, then the kernels; written beside, since what is loaded stays loaded.
    const { componentsText } = await load<typeof ComponentsText>(join(written, 'model/kernel/generate/componentsText.ts'));
    for (const folder of [written, lived]) writeFileSync(join(folder, 'model/components.ts'), componentsText());
    const generated = (await load<typeof KernelTexts>(join(written, 'model/kernel/generate/kernelTexts.ts'))).kernelTexts();
    for (const [path, text] of Object.entries(generated)) writeFileSync(join(lived, 'model', path), text);
    names = await load(join(lived, 'model/components.ts'));
    ids = { ...(await load<typeof Ids>(join(lived, 'model/kernel/ids.ts'))) };
    sizes = await load(join(lived, 'model/kernel/sizes.ts'));
    ({ Season: season } = await load<typeof SeasonModule>(join(lived, 'season/season.ts')));
  }, 120_000);

  afterAll(() => {
    rmSync(SCRATCH, { recursive: true, force: true });
  });

  /** Lives some days with so much film on the roots of each bed, g COD. */
  function live(film: number): { season: Season; film: number } {
    const one = new season(plan);
    const at = names.NAMES.indexOf('RF');
    const beds = one.runtime.assembly.cells.filter(({ bed }) => bed).map(({ index }) => index * names.STATES + at);
    for (const i of beds) {
      one.state.y[i] += film;
      one.state.put[at] += film;
    }
    while (one.day < DAYS) one.liveDay();
    return { season: one as unknown as Season, film: beds.reduce((sum, i) => sum + one.state.y[i], 0) };
  }

  /** Mean oxygen of the beds, g. */
  const oxygenOf = (one: Season): number =>
    one.runtime.assembly.cells.filter(({ bed }) => bed).reduce((sum, { index }) => sum + one.state.y[index * names.STATES + names.O2], 0);

  it("is one line of the list, one file, and its family's two lines", () => {
    expect(LINES_TOUCHED).toBe(3);
    expect(names.STATES).toBe(components.STATES + 1);
    expect(ids['rootFilmGrowth']).toBeGreaterThan(0);
  });

  it('changes no bit of a season in which it is empty', () => {
    const plain = new Season(plan);
    while (plain.day < DAYS) plain.liveDay();
    const { season: other } = live(0);
    plain.state.y.forEach((value, i) => {
      const component = i % components.STATES;
      const place = ((i - component) / components.STATES) * names.STATES + names.NAMES.indexOf(components.NAMES[component]);
      expect(Object.is(other.state.y[place], value), `${components.NAMES[component]}: ${other.state.y[place]} for ${value}`).toBe(true);
    });
    expect(other.state.steps).toBe(plain.state.steps);
  });

  it('is lived with: the film grows on what the water brings, takes its oxygen, and every element closes', () => {
    const { season: bare } = live(0);
    const { season: grown, film } = live(8);
    expect(grown.state.y.every(Number.isFinite)).toBe(true);
    expect(film).not.toBe(0);
    expect(oxygenOf(grown)).toBeLessThan(oxygenOf(bare));
    const books = (id: string): number => grown.state.extents[ids[id]];
    const beds = grown.runtime.assembly.cells.filter(({ bed }) => bed).length;
    expect(books('rootFilmGrowth')).toBeGreaterThan(0);
    expect(film).toBeCloseTo(8 * beds + 0.4 * books('rootFilmGrowth') - books('rootFilmDecay'), 8);
    for (const { element, closure } of grown.summary().ledger) expect(Math.abs(closure), element).toBeLessThan(1e-9);
    expect(sizes.PROCESSES).toBe(grown.state.extents.length);
  });
});
