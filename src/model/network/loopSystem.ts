// The loop as a stiff system for the integrator: slope, factor, solve, and the books kept at every accepted step.
import { ALK, FLOWING, STATES } from '../components';
import { PROCESSES } from '../processes/catalogue';
import type { StiffSystem } from '../../numerics/rosenbrock';
import type { Workspace } from '../processes/workspace';
import { factorBlocks, gather, solveLoop } from './blockSolve';
import type { LoopData } from './loopData';
import { undoFlow, undoOverdraft } from './overdraft';
import { loopSlope, makeWorkspace } from './slope';

export class LoopSystem implements StiffSystem {
  readonly size: number;
  private readonly workspace: Workspace;
  private d = 1;

  constructor(readonly data: LoopData, private readonly relative: number) {
    this.size = data.cells.length * STATES;
    this.workspace = makeWorkspace(data);
  }

  slope(t: number, y: Float64Array, out: Float64Array, stage: 0 | 1): void {
    loopSlope(this.data, this.workspace, t, y, out, stage);
    if (stage === 0) gather(this.data);
  }

  factor(d: number): boolean {
    this.d = d;
    return factorBlocks(this.data, d);
  }

  solve(rhs: Float64Array, u: Float64Array, stage: 0 | 1): void {
    const { data } = this;
    if (stage === 0) solveLoop(data, this.d, rhs, u, data.d0, data.holdDelta0, data.outDelta0);
    else solveLoop(data, this.d, rhs, u, data.d1, data.holdDelta1, data.outDelta1);
  }

  accepted(h: number, _t: number, y: Float64Array): void {
    const { cells, extents, r0, r1, d0, d1, clipped } = this.data;
    const half = 0.5 * h;
    for (let c = 0; c < cells.length; c++) {
      const { active } = cells[c];
      const o = c * PROCESSES;
      for (let a = 0; a < active.length; a++) {
        const i = o + active[a];
        extents[i] += half * (r0[i] + r1[i] + d0[i] + d1[i]);
      }
    }
    this.book(h);
    for (let i = 0; i < y.length; i++) {
      if (y[i] >= 0) continue;
      const component = i % STATES;
      if (component === ALK) continue; // a strong acid's alkalinity is below zero
      const cell = (i - component) / STATES;
      undoOverdraft(this.data.matrix, y, i - component, component, extents, cell);
      if (component < FLOWING) undoFlow(this.data.links, y, cell, component);
      if (y[i] >= 0) continue;
      clipped[component] -= y[i];
      y[i] = 0;
    }
  }

  private book(h: number): void {
    const { data } = this;
    const half = 0.5 * h;
    for (const link of data.links) {
      if (link.from < 0) for (let i = 0; i < FLOWING; i++) data.received[i] += h * link.flow * data.inflow[i];
    }
    for (let i = 0; i < FLOWING; i++) data.released[i] += half * (data.outRate0[i] + data.outRate1[i] + data.outDelta0[i] + data.outDelta1[i]);
    if (data.holdO2 >= 0) for (let c = 0; c < data.held.length; c++) data.held[c] += half * (data.holdRate0[c] + data.holdRate1[c] + data.holdDelta0[c] + data.holdDelta1[c]);
  }

  /** Weighted root mean square of the error; above 16 cells that of the worst cell. */
  norm(error: Float64Array, before: Float64Array, after: Float64Array): number {
    const { tolerance, cells } = this.data;
    let total = 0;
    let worst = 0;
    for (let c = 0; c < cells.length; c++) {
      let sum = 0;
      const o = c * STATES;
      for (let i = o; i < o + STATES; i++) {
        const a = before[i] < 0 ? -before[i] : before[i];
        const b = after[i] < 0 ? -after[i] : after[i];
        const e = error[i] / (tolerance[i] + this.relative * (a > b ? a : b));
        sum += e * e;
      }
      total += sum;
      if (sum > worst) worst = sum;
    }
    const n = STATES;
    const value = cells.length > 16 ? Math.sqrt(worst / n) : Math.sqrt(total / (n * cells.length));
    return Number.isFinite(value) ? value : Infinity;
  }
}
