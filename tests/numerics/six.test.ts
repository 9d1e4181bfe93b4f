// Six by six, written out, against the solver for any size.
import { describe, expect, it } from 'vitest';
import { factoriseSix } from '../../src/numerics/six';
import { stream } from '../../src/numerics/streams';
import { factorise } from './dense';

const draw = stream('six', 'test');
const matrix = (): Float64Array => Float64Array.from({ length: 40 }, (_, i) => draw() - 0.5 + (i >= 2 && (i - 2) % 7 === 0 ? 5 : 0));

describe('six by six', () => {
  it('has the factors of the solver for any size, and touches nothing beside them', () => {
    for (let run = 0; run < 50; run++) {
      const a = matrix();
      if (run % 3 === 0) for (let i = 2; i < 38; i++) if ((i - 2) % 7 !== 0 && draw() < 0.5) a[i] = 0;
      const other = a.slice();
      expect(factoriseSix(a, 2)).toBe(true);
      expect(factorise(other, 2, 6)).toBe(true);
      a.forEach((value, i) => expect(Math.abs(value - other[i]), `entry ${i}`).toBeLessThan(1e-15));
    }
  });

  it('says so where a pivot vanishes, whichever it is', () => {
    for (let pivot = 0; pivot < 6; pivot++) {
      const a = new Float64Array(36);
      for (let i = 0; i < 6; i++) a[7 * i] = i === pivot ? 0 : 1;
      expect(factoriseSix(a, 0), `pivot ${pivot}`).toBe(false);
      a[7 * pivot] = Number.NaN;
      expect(factoriseSix(a, 0), `pivot ${pivot}`).toBe(false);
    }
  });
});
