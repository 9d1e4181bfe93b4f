// The pH of a cell inside a step: Newton in ln h on the titration alkalinity, warm-started, with the slopes that gas transfer needs.
// h = 1000·10^−pH, mol/m³, on the activity scale; constants are conditional (equilibrium/conditional.ts).
import { ALK, ATOM, IC, P, S2, TAN } from '../components';
import { GAMMA1, K1, K2, KN, KP1, KP2, KP3, KS, KW } from '../equilibrium/conditional';
import { solveH } from '../equilibrium/solve';
import type { Workspace } from '../processes/workspace';

const PER_N = 1 / ATOM.N,
  PER_S = 1 / ATOM.S,
  PER_P = 1 / ATOM.P;

/**
 * Sets w.h, w.nh3, w.h2s, w.co2 and its slopes from the state at w.o; the search starts from the w.h that stands there.
 * @param k conditional constants, from `ko`
 */
export function acidBase(w: Workspace, k: Float64Array, ko: number): void {
  const { y, o, perVolume: v, pinned } = w;
  const C = Math.max(y[o + IC] * v, 0);
  const A = y[o + ALK] * v;
  const N = Math.max(y[o + TAN] * v * PER_N, 0);
  const S = Math.max(y[o + S2] * v * PER_S, 0);
  const Q = Math.max(y[o + P] * v * PER_P, 0);
  const k1 = k[ko + K1],
    k12 = k1 * k[ko + K2],
    kn = k[ko + KN],
    ks = k[ko + KS],
    kw = k[ko + KW];
  const p1 = k[ko + KP1],
    p12 = p1 * k[ko + KP2],
    p123 = p12 * k[ko + KP3],
    perGamma = 1 / k[ko + GAMMA1];
  let h = pinned > 0 ? pinned : w.h;
  let slope = 0; // d(alkalinity)/d ln h, negative
  let done = pinned > 0;
  for (let i = 0; i < 40; i++) {
    const h2 = h * h;
    const D = h2 + k1 * h + k12;
    const perD = 1 / D;
    const c = (k1 * h + 2 * k12) * perD;
    const n = kn / (kn + h);
    const s = ks / (ks + h);
    const h3 = h2 * h;
    const E = h3 + p1 * h2 + p12 * h + p123;
    const perE = 1 / E;
    const q = (p12 * h + 2 * p123 - h3) * perE;
    const hydroxide = kw / h;
    const proton = h * perGamma;
    const F = C * c + N * n + S * s + Q * q + hydroxide - proton - A;
    slope =
      C * h * perD * (k1 - c * (2 * h + k1))
      - N * n * (1 - n)
      - S * s * (1 - s)
      + Q * h * perE * (p12 - 3 * h2 - q * (3 * h2 + 2 * p1 * h + p12))
      - hydroxide
      - proton;
    if (done) break;
    let step = -F / slope;
    if (step > 1) step = 1;
    else if (step < -1) step = -1;
    h *= (2 + step) / (2 - step);
    // Newton's error is of the order step²; the slopes lag by one step, which the solver bears.
    if (step < 2e-3 && step > -2e-3) break;
    if (i > 30) {
      h = solveH(A, { carbon: C, ammonia: N, sulfide: S, phosphate: Q }, k, ko);
      done = true;
    }
  }
  w.h = h;
  w.nh3 = kn / (kn + h);
  w.h2s = h / (ks + h);
  const D = h * h + k1 * h + k12;
  const perD = 1 / D;
  const share = h * h * perD;
  w.co2 = C * share;
  w.carbon = C;
  w.carbonate = C * (k1 * h + 2 * k12) * perD;
  w.k1 = k1;
  w.k12 = k12;
  // d(share)/d ln h = share·(2 − h(2h + k1)/D); the pH follows IC and ALK through the alkalinity balance.
  const byLnH = C * share * (2 - h * (2 * h + k1) * perD);
  if (pinned > 0) {
    w.co2IC = share;
    w.co2ALK = 0;
  } else {
    const perSlope = 1 / slope;
    w.co2IC = share - byLnH * (k1 * h + 2 * k12) * perD * perSlope;
    w.co2ALK = byLnH * perSlope;
  }
}
