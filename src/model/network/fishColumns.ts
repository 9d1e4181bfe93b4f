// What fish do, without lists: whole columns added over all that flows, since feed comes to nearly all of it. Their gut is solved
// alone, before all that it feeds. A test holds this code to the table.
import { FISH, FLOWING, GUT } from '../components';
import { addStretch } from '../../numerics/vectors';
import { ID } from '../processes/catalogue';
import { BURN, EAT, GUT_EAT, GUT_SPEND, SPEND } from './places';

/** Adds what a tank's fish do at their rates. @param m the matrix's table */
export function applyFish(m: Float64Array, r: Float64Array, ro: number, out: Float64Array, o: number): void {
  const eat = r[ro + ID.fishGrowth], spend = r[ro + ID.fishExpenditure], burn = r[ro + ID.fishBasal];
  addStretch(out, o, m, EAT, eat, FLOWING);
  addStretch(out, o, m, SPEND, spend, FLOWING);
  addStretch(out, o, m, BURN, burn, FLOWING);
  out[o + GUT] -= eat + spend;
  out[o + FISH] += m[EAT + FISH] * eat - burn;
}

/** What digestion takes of the gut, on its diagonal. */
export function gutDiagonal(g: Float64Array, go: number, own: Float64Array, o: number): void {
  own[o + GUT] += g[go + GUT_EAT] + g[go + GUT_SPEND];
}

/** Solves the gut, and hands on what it gives to the rows solved after it. */
export function solveGut(m: Float64Array, g: Float64Array, go: number, rhs: Float64Array, inverse: Float64Array, o: number, delta: Float64Array, ro: number): void {
  const gut = rhs[o + GUT] * inverse[o + GUT];
  const eat = g[go + GUT_EAT] * gut, spend = g[go + GUT_SPEND] * gut;
  delta[ro + ID.fishGrowth] += eat;
  delta[ro + ID.fishExpenditure] += spend;
  addStretch(rhs, o, m, EAT, eat, FLOWING);
  addStretch(rhs, o, m, SPEND, spend, FLOWING);
  rhs[o + FISH] += m[EAT + FISH] * eat;
}
