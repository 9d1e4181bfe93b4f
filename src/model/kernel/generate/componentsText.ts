// Writes components.ts: the place of every component in a cell's state, and the lists that some belong to, from the list of components.
import { COMPONENTS } from '../../componentList';
import type { ComponentEntry, ComponentKind } from '../../componentList';
import { broken, fileOf, opening } from './lines';

const ORDER: readonly ComponentKind[] = ['fast', 'dissolved', 'index', 'solid', 'resident', 'outside'];
const TITLES: Readonly<Record<ComponentKind, string>> = {
  fast: 'flowing, dissolved, solved together in one dense block',
  dissolved: 'flowing, dissolved',
  index: 'flowing without mass',
  solid: 'flowing solids',
  resident: 'resident: they stay in their cell',
  outside: 'outside the water: booked, not simulated',
};

/** @throws Error where a component stands before one of a kind that must come first, or has a name twice */
function check(components: readonly ComponentEntry[]): void {
  components.forEach(({ name, kind }, i) => {
    const before = components[i - 1]?.kind ?? 'fast';
    if (ORDER.indexOf(kind) < ORDER.indexOf(before)) throw new Error(`component ${name}: ${kind} ones stand before ${before} ones`);
    if (components.findIndex((other) => other.name === name) !== i) throw new Error(`component ${name} stands in the list twice`);
  });
}

export function componentsText(components: readonly ComponentEntry[] = COMPONENTS): string {
  check(components);
  const named = components.map((component, place) => ({ ...component, place }));
  const from = (kind: ComponentKind): number => named.filter((component) => ORDER.indexOf(component.kind) < ORDER.indexOf(kind)).length;
  const among = (list: ComponentEntry['among']): string =>
    named
      .filter((component) => component.among === list)
      .map(({ name }) => name)
      .join(', ');
  const sizes = ['COARSE', 'FINE', 'SUPERFINE'] as const;
  const lists = (['SLUDGE', 'CAUGHT', 'STORES'] as const).flatMap((list) =>
    broken(`export const ${list}: readonly number[] = [${among(list)}];`),
  );
  return fileOf([
    ...opening("What flows and what resides: the places of the components in a cell's state. What each is stands in componentList.ts."),
    "export { ATOM, ELEMENTS } from './elements';",
    "export type { Element } from './elements';",
    ...ORDER.flatMap((kind) => {
      const all = named.filter((component) => component.kind === kind);
      return all.length === 0
        ? []
        : ['', `// --- ${TITLES[kind]}`, ...broken(`export const ${all.map(({ name, place }) => `${name} = ${place}`).join(', ')};`)];
    }),
    '',
    `export const FAST = ${from('dissolved')}, FLOWING = ${from('resident')}, STATES = ${from('outside')}, ALL = ${named.length};`,
    '',
    ...broken(`export const NAMES: readonly string[] = [${named.map(({ name }) => `'${name}'`).join(', ')}];`),
    '',
    '/** Solids by size and part: row of size (0 coarse, 1 fine, 2 superfine), column of part (0 fast, 1 slow, 2 inert). */',
    ...broken(`export const SOLIDS: readonly (readonly number[])[] = [${sizes.map((size) => `[${among(size)}]`).join(', ')}];`),
    "/** At rest and caught, by part; a crop's stores, g. */",
    ...lists,
    '/** What lasts on its way round the loop, neither a fast reactant nor a solid that settles. */',
    ...broken(
      `export const LASTING: readonly number[] = [${named
        .filter(({ lasts }) => lasts)
        .map(({ name }) => name)
        .join(', ')}];`,
    ),
  ]);
}
