// Named random streams: the same seed tells the same story, and one stream never moves another.
import { describe, expect, it } from 'vitest';
import { stream } from '../../src/numerics/streams';

const take = (draw: () => number, n: number): number[] => Array.from({ length: n }, draw);

describe('random streams', () => {
  it('are the same for the same seed and name', () => {
    expect(take(stream('orchard-7', 'weather'), 100)).toEqual(take(stream('orchard-7', 'weather'), 100));
  });

  it('differ by seed and by name', () => {
    const one = take(stream('orchard-7', 'weather'), 20);
    expect(take(stream('orchard-8', 'weather'), 20)).not.toEqual(one);
    expect(take(stream('orchard-7', 'inoculum'), 20)).not.toEqual(one);
  });

  it('do not move one another, in whatever order they are drawn from', () => {
    const alone = take(stream('seed', 'inoculum'), 10);
    const weather = stream('seed', 'weather');
    const inoculum = stream('seed', 'inoculum');
    expect(
      alone.map(() => {
        weather();
        weather();
        return inoculum();
      }),
    ).toEqual(alone);
  });

  it('are spread evenly over 0 to 1, and two of them have nothing to do with each other', () => {
    const a = take(stream('even', 'a'), 20_000);
    const b = take(stream('even', 'b'), 20_000);
    expect(Math.min(...a)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...a)).toBeLessThan(1);
    const mean = (x: number[]): number => x.reduce((sum, v) => sum + v, 0) / x.length;
    expect(mean(a)).toBeCloseTo(0.5, 1);
    const [ma, mb] = [mean(a), mean(b)];
    const correlation = 12 * mean(a.map((v, i) => (v - ma) * (b[i] - mb)));
    expect(Math.abs(correlation)).toBeLessThan(0.03);
  });
});
