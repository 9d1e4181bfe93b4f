// Heaters with proportional thermostats, and a mass of water that loses heat in step with its warmth:
// solved exactly, piece by piece, so that no step is too long and the heater never hunts.
import { exp, ln } from '../../numerics/elementary';

export interface Heater {
  target_C: number;
  max_W: number;
}

/** Power a heater gives, W: full at half a band below the target, none at half a band above. */
export function heaterPower(T_C: number, target_C: number, max_W: number, band_C: number): number {
  return max_W * Math.min(1, Math.max(0, (target_C - T_C) / band_C + 0.5));
}

/** C dT/dt = gain − loss · T + heater(T) */
export interface Pool {
  /** heat the water holds, J/K */
  capacity_J_K: number;
  gain_W: number;
  /** above 0 */
  loss_W_K: number;
}

interface Piece {
  gain_W: number;
  loss_W_K: number;
  from_C: number;
  to_C: number;
}

/** The pool's straight pieces, coldest first: between two edges each heater is full, in its band, or off. */
function piecesOf(pool: Pool, heaters: readonly Heater[], band_C: number): Piece[] {
  const bands = heaters
    .filter(({ max_W }) => max_W > 0)
    .map(({ target_C, max_W }) => ({ low: target_C - band_C / 2, high: target_C + band_C / 2, max_W }));
  const edges = [...new Set(bands.flatMap(({ low, high }) => [low, high]))].sort((a, b) => a - b);
  return [-Infinity, ...edges].map((from_C, i): Piece => {
    const to_C = edges[i] ?? Infinity;
    let { gain_W, loss_W_K } = pool;
    for (const { low, high, max_W } of bands) {
      const slope = max_W / band_C;
      if (to_C <= low) gain_W += max_W;
      else if (from_C < high) {
        gain_W += slope * high;
        loss_W_K += slope;
      }
    }
    return { gain_W, loss_W_K, from_C, to_C };
  });
}

/**
 * Temperature of the pool after some time, and the mean of it on the way, °C. Exact for any length of time.
 * It runs one way only, so it crosses each edge of a heater's band at most once.
 */
export function poolAfter(
  T_C: number,
  seconds: number,
  pool: Pool,
  heaters: readonly Heater[],
  band_C: number,
): { T_C: number; mean_C: number } {
  const pieces = piecesOf(pool, heaters, band_C);
  let T = T_C;
  let left = seconds;
  let area = 0;
  let at = pieces.findIndex(({ to_C }) => T < to_C);
  const rises = pieces[at].gain_W / pieces[at].loss_W_K > T;
  while (left > 0 && at >= 0 && at < pieces.length) {
    const { gain_W, loss_W_K, from_C, to_C } = pieces[at];
    const rest = gain_W / loss_W_K;
    const rate = loss_W_K / pool.capacity_J_K;
    const edge = rises ? to_C : from_C;
    const crosses = rises ? rest > edge : rest < edge;
    const needed = crosses ? ln((T - rest) / (edge - rest)) / rate : Infinity;
    const time = Math.min(left, needed);
    const end = needed <= left ? edge : rest + (T - rest) * exp(-rate * time);
    area += rest * time + (T - end) / rate;
    T = end;
    left -= time;
    at += rises ? 1 : -1;
  }
  return { T_C: T, mean_C: seconds > 0 ? area / seconds : T_C };
}
