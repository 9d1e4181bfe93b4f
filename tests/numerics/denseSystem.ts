// A small stiff system with any Jacobian it is told to use, for the integrator's tests: the solver of its own is the project's dense one.
import { backSubstitute, factorise } from './dense';
import type { StiffSystem } from '../../src/numerics/rosenbrock';

export interface Problem {
  size: number;
  slope(t: number, y: Float64Array, out: Float64Array): void;
  /** W at (t, y), row-major: exact, in part, or zero */
  jacobian(t: number, y: Float64Array, w: Float64Array): void;
}

export class DenseSystem implements StiffSystem {
  readonly size: number;
  /** lengths of the accepted steps, in order */
  readonly taken: number[] = [];
  private readonly w: Float64Array;
  private readonly lu: Float64Array;

  /** @param tolerance relative and absolute; Infinity accepts every step */
  constructor(
    private readonly problem: Problem,
    private readonly tolerance: number,
  ) {
    this.size = problem.size;
    this.w = new Float64Array(problem.size ** 2);
    this.lu = new Float64Array(problem.size ** 2);
  }

  slope(t: number, y: Float64Array, out: Float64Array, stage: 0 | 1): void {
    this.problem.slope(t, y, out);
    if (stage === 0) this.problem.jacobian(t, y, this.w);
  }

  factor(d: number): boolean {
    for (let i = 0; i < this.lu.length; i++) this.lu[i] = -this.w[i];
    for (let i = 0; i < this.size; i++) this.lu[i * this.size + i] += d;
    return factorise(this.lu, 0, this.size);
  }

  solve(rhs: Float64Array, u: Float64Array): void {
    u.set(rhs);
    backSubstitute(this.lu, 0, this.size, u, 0);
  }

  accepted(h: number): void {
    this.taken.push(h);
  }

  norm(error: Float64Array, before: Float64Array, after: Float64Array): number {
    let sum = 0;
    for (let i = 0; i < error.length; i++)
      sum += (error[i] / (this.tolerance * (1 + Math.max(Math.abs(before[i]), Math.abs(after[i]))))) ** 2;
    return Math.sqrt(sum / error.length);
  }
}
