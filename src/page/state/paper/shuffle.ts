// Cards in an order fixed by a seed: the same paper for the same seed, on every machine. Pure.

/** A stream of numbers 0…1 from a text: FNV-1a makes the seed, xorshift32 the stream. */
export function streamOf(seed: string): () => number {
  let state = 0x811c9dc5;
  for (let i = 0; i < seed.length; i += 1) state = Math.imul(state ^ seed.charCodeAt(i), 0x01000193);
  state = state === 0 ? 1 : state;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 0x1_0000_0000;
  };
}

/**
 * Right cards out of their order, strays among them.
 * @param right cards in the right order; where any two differ, they never come out in it
 * @param strays cards that belong to no place
 * @param nameOf cards of one name are as good as each other
 */
export function shuffled<T>(right: readonly T[], strays: readonly T[], seed: string, nameOf: (card: T) => string): T[] {
  const next = streamOf(seed);
  const cards = [...right];
  for (let i = cards.length - 1; i > 0; i -= 1) {
    const j = Math.floor(next() * (i + 1));
    [cards[i], cards[j]] = [cards[j], cards[i]];
  }
  // a turn by one place changes every row of names but one of all the same
  if (cards.every((card, index) => nameOf(card) === nameOf(right[index])) && cards.length > 0) cards.push(...cards.splice(0, 1));
  for (const stray of strays) cards.splice(Math.floor(next() * (cards.length + 1)), 0, stray);
  return cards;
}
