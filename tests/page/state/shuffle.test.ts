// Cards out of their order: the same for a seed, never in the right one, nothing lost.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shuffled, streamOf } from '../../../src/page/state/paper/shuffle';

const self = (name: string): string => name;

describe('a shuffle', () => {
  it('is the same for the same seed and another for another', () => {
    const cards = ['a', 'b', 'c', 'd', 'e', 'f'];
    expect(shuffled(cards, [], 'orchard 1', self)).toEqual(shuffled(cards, [], 'orchard 1', self));
    const orders = new Set(Array.from({ length: 20 }, (_, n) => shuffled(cards, [], `orchard ${n}`, self).join('')));
    expect(orders.size).toBeGreaterThan(10);
  });

  it('keeps every card and never leaves those with a place in their order', () => {
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom('a', 'b', 'c', 'd'), { maxLength: 7 }),
        fc.array(fc.constantFrom('x', 'y'), { maxLength: 3 }),
        fc.string(),
        (right, strays, seed) => {
          const cards = shuffled(right, strays, seed, self);
          expect([...cards].sort()).toEqual([...right, ...strays].sort());
          const placed = cards.filter((card) => card !== 'x' && card !== 'y');
          if (new Set(right).size > 1) expect(placed).not.toEqual(right);
        },
      ),
    );
  });

  it('is fed by numbers that spread over 0 to 1', () => {
    const next = streamOf('seed');
    const drawn = Array.from({ length: 1000 }, next);
    expect(Math.min(...drawn)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...drawn)).toBeLessThan(1);
    for (const tenth of [0, 1, 2, 3, 4, 5, 6, 7, 8, 9])
      expect(drawn.filter((number) => Math.floor(10 * number) === tenth).length).toBeGreaterThan(60);
  });
});
