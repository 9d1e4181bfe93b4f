// The loop as a stiff system for the integrator: slope, factor, solve, and the books kept at every accepted step.
import { ALK, FLOWING, STATES } from '../components';
import type { StiffSystem } from '../../numerics/rosenbrock';
import { firstBelowZero } from '../../numerics/vectors';
import { addExtents } from '../kernel/addExtents';
import { PROCESSES } from '../kernel/sizes';
import type { Workspace } from '../processes/workspace';
import { factorBlocks, gather, solveLoop } from './blockSolve';
import type { LoopData } from './loopData';
import { undoFlow, undoOverdraft } from './overdraft';
import { loopSlope, makeWorkspace } from './slope';

/** Times its tolerance that one component may err: a mean over hundreds would let a tank's oxygen stray by a milligram. */
const ONE_ALONE = 8;
/**
 * Components whose errors the norm is the mean of: as many as there were when tolerances were chosen, so that one more, where it is
 * nothing, changes no step.
 */
const COUNTED = 49;

export class LoopSystem implements StiffSystem {
  readonly size: number;
  private readonly spaces: readonly Workspace[];
  private d = 1;

  constructor(
    readonly data: LoopData,
    private readonly relative: number,
  ) {
    this.size = data.cells.length * STATES;
    this.spaces = data.cells.map(() => makeWorkspace(data));
  }

  slope(t: number, y: Float64Array, out: Float64Array, stage: 0 | 1): void {
    loopSlope(this.data, this.spaces, t, y, out, stage);
    if (stage === 0) gather(this.data);
  }

  factor(d: number): boolean {
    this.d = d;
    return factorBlocks(this.data, d);
  }

  solve(rhs: Float64Array, u: Float64Array, stage: 0 | 1): void {
    const { data } = this;
    // The books want what both stages' corrections do together.
    if (stage === 0) {
      data.delta.fill(0);
      data.holdDelta.fill(0);
      data.outDelta.fill(0);
    }
    solveLoop(data, this.d, rhs, u);
  }

  accepted(h: number, _t: number, y: Float64Array): void {
    this.addExtents(0.5 * h);
    this.book(h);
    for (let i = firstBelowZero(y, 0); i < y.length; i = firstBelowZero(y, i + 1)) this.mend(y, i);
  }

  /** A component below zero: what drew on it is undone, what water carried off comes back, and only what is left is clipped. */
  private mend(y: Float64Array, i: number): void {
    const { matrix, extents, links, clipped } = this.data;
    const component = i % STATES;
    if (component === ALK) return; // a strong acid's alkalinity is below zero
    const cell = (i - component) / STATES;
    undoOverdraft(matrix, y, i - component, component, extents, cell);
    if (component < FLOWING) undoFlow(links, y, cell, component);
    if (y[i] >= 0) return;
    clipped[component] -= y[i];
    y[i] = 0;
  }

  /** Extents of all processes that can run. */
  private addExtents(half: number): void {
    const { cells, extents, r0, r1, delta } = this.data;
    for (let c = 0; c < cells.length; c++) addExtents(cells[c], extents, r0, r1, delta, half, c * PROCESSES);
  }

  private book(h: number): void {
    const { data } = this;
    const half = 0.5 * h;
    for (const link of data.inlets) for (let i = 0; i < FLOWING; i++) data.received[i] += h * link.flow * data.inflow[i];
    if (data.outlets.length > 0)
      for (let i = 0; i < FLOWING; i++) data.released[i] += half * (data.outRate0[i] + data.outRate1[i] + data.outDelta[i]);
    if (data.holdO2 >= 0)
      for (let c = 0; c < data.held.length; c++) data.held[c] += half * (data.holdRate0[c] + data.holdRate1[c] + data.holdDelta[c]);
  }

  /**
   * Weighted root mean square of the error, above 16 cells that of the worst cell; but no component may stray far beyond its tolerance
   * alone.
   */
  norm(error: Float64Array, before: Float64Array, after: Float64Array): number {
    const { tolerance, cells } = this.data;
    const half = 0.5 * this.relative;
    let total = 0;
    let worst = 0;
    let largest = 0;
    for (let c = 0; c < cells.length; c++) {
      let sum = 0;
      const o = c * STATES;
      for (let i = o; i < o + STATES; i++) {
        const strays = error[i];
        if (strays === 0) continue; // what this cell does not have
        // The larger of the two sizes, without a branch that no processor can foretell.
        const a = Math.abs(before[i]);
        const b = Math.abs(after[i]);
        const e = strays / (tolerance[i] + half * (a + b + Math.abs(a - b)));
        const square = e * e;
        sum += square;
        if (square > largest) largest = square;
      }
      total += sum;
      if (sum > worst) worst = sum;
    }
    const value = cells.length > 16 ? Math.sqrt(worst / COUNTED) : Math.sqrt(total / (COUNTED * cells.length));
    return Number.isFinite(value) ? Math.max(value, Math.sqrt(largest) / ONE_ALONE) : Infinity;
  }
}
