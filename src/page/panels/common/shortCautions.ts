// Which cautions concern a set of stages, in short: for paper and for the first start. Pure.
import type { CatalogueEntry } from '../../state/common/contract';
import { isWord, type WordKey } from '../../../words/say';

/** What concerns everyone who keeps fish and plants in water, whatever the stages. */
const ALWAYS = ['mains', 'weight', 'openWater', 'hydrogenSulfide', 'caustic', 'produce', 'fishWelfare', 'permits', 'discharge'] as const;
const FEWEST = ['mains', 'fishWelfare', 'permits'] as const;

const wordsOf = (names: Iterable<string>): WordKey[] => [...names].map((name) => `shortCaution.${name}`).filter(isWord);

/** All of them, as they are shown at the first start. */
export const FIRST_CAUTIONS: readonly WordKey[] = wordsOf(ALWAYS);

/** Those of the stages of one loop, in the order in which all are told, then what only these stages add. */
export function cautionsOf(catalogue: readonly Pick<CatalogueEntry, 'kind' | 'cautions'>[], kinds: readonly string[]): WordKey[] {
  const concerned = new Set<string>(FEWEST);
  for (const entry of catalogue) if (kinds.includes(entry.kind)) for (const name of entry.cautions) concerned.add(name);
  const known = new Set<string>(ALWAYS);
  return wordsOf([...ALWAYS.filter((name) => concerned.has(name)), ...[...concerned].filter((name) => !known.has(name))]);
}
