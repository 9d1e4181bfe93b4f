// Absolute tolerances of every state: what is too little to matter, per m³ of water or m² of film.
import { ALK, BA, BH, BN, CF, CH4, CLOG, FISH, FLOWING, FE, GUT, IC, LEAF, N2, NO2, NO3, O2, OP, PO, PS, QCA, QFE, QK, QN, QP, ROOT, S2, SS, STATES } from '../model/components';
import type { LoopData } from '../model/network/loopData';

/** @param times of the usual tolerances, e.g. a hundredth for a converged run */
export function setTolerances(data: LoopData, times = 1): void {
  const whole = data.cells.reduce((sum, cell) => sum + cell.volume, 0);
  data.cells.forEach((cell, c) => {
    const o = c * STATES;
    const t = data.tolerance;
    // A pipe-sized vessel of a loop is followed no closer than a fiftieth of the loop: what it holds matters to nobody.
    const volume = Math.max(cell.volume, Math.min(0.05, 0.02 * whole));
    // flowing: g/m³ and the like
    for (let i = 0; i < FLOWING; i++) t[o + i] = 0.01 * volume;
    for (let i = CF; i < FLOWING; i++) t[o + i] = 0.06 * volume;
    t[o + O2] = 0.015 * volume;
    t[o + NO3] = 0.03 * volume;
    t[o + NO2] = 0.003 * volume;
    t[o + N2] = 0.1 * volume;
    t[o + IC] = 0.004 * volume;
    t[o + ALK] = 0.004 * volume;
    t[o + S2] = 0.0002 * volume;
    t[o + CH4] = 0.02 * volume;
    t[o + OP] = 0.05 * volume;
    t[o + FE] = 0.002 * volume;
    t[o + SS] = 0.1 * volume;
    for (let i = FLOWING; i < STATES; i++) t[o + i] = 0.05;
    // a seeded film is tiny and must still be followed, or start-up lags are noise
    const film = Math.max(cell.film, 0.1);
    t[o + BA] = 1e-7 * film;
    t[o + BN] = 1e-7 * film;
    t[o + BH] = 1e-4 * film;
    t[o + PO] = 0.05;
    t[o + PS] = 3e-4;
    t[o + GUT] = 0.15;
    t[o + FISH] = 1;
    t[o + LEAF] = 0.05;
    t[o + QN] = 0.01;
    t[o + QP] = 0.003;
    t[o + QK] = 0.02;
    t[o + QCA] = 0.005;
    t[o + QFE] = 0.0002;
    t[o + ROOT] = 0.003;
    t[o + CLOG] = 0.1;
    for (let i = o; i < o + STATES; i++) t[i] *= times;
  });
}
