// Elementary functions with the same bits on every JavaScript engine.
// The built-in exp, log, pow and sin differ between engines in the last bits, and a season then drifts apart;
// the @stdlib versions are built from + − × ÷ alone. Everything that computes a season takes them from here.
import stdExp from '@stdlib/math-base-special-exp';
import stdLn from '@stdlib/math-base-special-ln';
import stdPow from '@stdlib/math-base-special-pow';
import stdSin from '@stdlib/math-base-special-sin';

/** ln 10. */
export const LN10 = 2.302585092994046;

/** e to the x. */
export const exp = (x: number): number => stdExp(x);

/** Natural logarithm; NaN below 0, −Infinity at 0. */
export const ln = (x: number): number => stdLn(x);

/** x to the y. */
export const pow = (x: number, y: number): number => stdPow(x, y);

/** Sine, x in radians. */
export const sin = (x: number): number => stdSin(x);

/** Decimal logarithm; NaN below 0, −Infinity at 0. */
export const log10 = (x: number): number => stdLn(x) / LN10;

/** 10 to the x. */
export const exp10 = (x: number): number => stdPow(10, x);
