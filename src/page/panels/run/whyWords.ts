// Puts why into sentences: the numbers are marked so that they can be set in bold.
import type { Why } from '../../state/run/why';
import type { TintId } from '../../state/common/state';
import { say } from '../../../words/say';
import { figure, massOf, withUnit } from '../../../words/units';

/** Stands on both sides of a number in a sentence; never in the words themselves. */
const EDGE = '\u0001';
const bold = (text: string): string => `${EDGE}${text}${EDGE}`;

/** One sentence as pieces: every second piece is a number. */
export type Sentence = readonly string[];

function amountWords(name: string, amount: number, water_m3: number): string {
  if (name === 'alkalinity') return figure(amount / water_m3, 2);
  if (name === 'gas') return withUnit('gas_L', amount);
  if (name === 'share') return `${figure(100 * amount, 0)}\u00a0%`;
  return massOf(Math.max(0, amount));
}

function nitrifiersKey(tint: TintId): 'why.nitrifiers' | 'why.nitrifiersOxygen' | 'why.nitrifiersAlkalinity' {
  if (tint === 'pH') return 'why.nitrifiersAlkalinity';
  return tint === 'oxygen' || tint === 'carbonDioxide' ? 'why.nitrifiersOxygen' : 'why.nitrifiers';
}

/**
 * @param water_m3 water of the whole loop, over which alkalinity is spread
 * @param tint the quantity a person looks at: nitrifiers are told with their oxygen or their acid
 */
export function whySentence(why: Why, tint: TintId, water_m3: number): Sentence {
  const values: Record<string, string> = {};
  for (const [name, amount] of Object.entries(why.amounts)) values[name] = bold(amountWords(name, amount, water_m3));
  const what = say(why.topic === 'nitrifiers' ? nitrifiersKey(tint) : `why.${why.topic}`, values);
  if (why.heldBack === null) return what.split(EDGE);
  const held = say(`held.${why.heldBack.by}`, { reading: bold(withUnit(why.heldBack.variable, why.heldBack.reading)) });
  return say('why.andHeld', { what, held }).split(EDGE);
}
