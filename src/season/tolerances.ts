// Absolute tolerances of every state: what is too little to matter, per m³ of water or m² of film.
import { ALK, BA, BH, BN, CF, CH4, CLOG, FISH, FLOWING, FE, GUT, IC, LEAF, N2, NO3, O2, OP, PO, PS, QCA, QFE, QK, QN, QP, ROOT, S2, SS, STATES } from '../model/components';
import type { LoopData } from '../model/network/loopData';

export function setTolerances(data: LoopData): void {
  data.cells.forEach((cell, c) => {
    const o = c * STATES;
    const t = data.tolerance;
    // flowing: g/m³ and the like
    for (let i = 0; i < FLOWING; i++) t[o + i] = 0.01 * cell.volume;
    for (let i = CF; i < FLOWING; i++) t[o + i] = 0.06 * cell.volume;
    t[o + O2] = 0.015 * cell.volume;
    t[o + NO3] = 0.03 * cell.volume;
    t[o + N2] = 0.1 * cell.volume;
    t[o + IC] = 0.004 * cell.volume;
    t[o + ALK] = 0.004 * cell.volume;
    t[o + S2] = 0.0001 * cell.volume;
    t[o + CH4] = 0.02 * cell.volume;
    t[o + OP] = 0.05 * cell.volume;
    t[o + FE] = 0.002 * cell.volume;
    t[o + SS] = 0.1 * cell.volume;
    for (let i = FLOWING; i < STATES; i++) t[o + i] = 0.05;
    // a seeded film is tiny and must still be followed, or start-up lags are noise
    const film = Math.max(cell.film, 0.1);
    t[o + BA] = 1e-7 * film;
    t[o + BN] = 1e-7 * film;
    t[o + BH] = 1e-4 * film;
    t[o + PO] = 0.05;
    t[o + PS] = 1e-3;
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
  });
}
