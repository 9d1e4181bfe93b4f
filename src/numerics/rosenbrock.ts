// ROS2-W: Verwer's two-stage, second-order, L-stable Rosenbrock-W method, γ = 1 − 1/√2 (Verwer, Spee, Blom & Hundsdorfer 1999).
// Order two for any approximate Jacobian W. It knows steps, errors and outcomes, and no chemistry.
import { hermite } from './hermite';
import { addScaled, addTwoScaled } from './vectors';

export const GAMMA = 1 - 1 / Math.sqrt(2);

/** A system y' = f(t, y) that can solve with its own approximate Jacobian. */
export interface StiffSystem {
  readonly size: number;
  /** Writes f(t, y) to out. Stage 0 also fixes W at (t, y); stage 1 must leave W alone. */
  slope(t: number, y: Float64Array, out: Float64Array, stage: 0 | 1): void;
  /** Prepares solving with (d I − W). @returns false where that is impossible at this d. */
  factor(d: number): boolean;
  /** Solves (d I − W) u = rhs; rhs may be overwritten. */
  solve(rhs: Float64Array, u: Float64Array, stage: 0 | 1): void;
  /** Called once a step is taken, with its length; y may be mended in place (clipping). */
  accepted(h: number, t: number, y: Float64Array): void;
  /** Error norm of a trial step; 1 is the tolerance. */
  norm(error: Float64Array, before: Float64Array, after: Float64Array): number;
}

export interface Control {
  /** first step to try, d; ≤ 0: choose */
  firstStep: number;
  minStep: number;
  maxStep: number;
}

export interface Outcome {
  steps: number;
  rejections: number;
  evaluations: number;
  firstAccepted: number;
  lastStep: number;
}

/** The integration could not go on: at a time, by the place in the state that was worst off (−1: unknown). */
export class IntegrationError extends Error {
  constructor(
    readonly code: 'stepTooSmall' | 'notFinite',
    readonly t: number,
    readonly place: number,
    message: string,
  ) {
    super(message);
    this.name = 'IntegrationError';
  }
}

/** Called for each asked-for time inside the integration, in order. */
export type Output = (index: number, y: Float64Array) => void;

export class Rosenbrock2 {
  private f0: Float64Array;
  private fEnd: Float64Array;
  private readonly f1: Float64Array;
  private readonly u1: Float64Array;
  private readonly u2: Float64Array;
  private readonly rhs: Float64Array;
  private now: Float64Array;
  private trial: Float64Array;
  private readonly reading: Float64Array;

  /** @param asked places of the state that output reads; the others keep what they had in what it is given. Left out: all */
  constructor(
    private readonly system: StiffSystem,
    private readonly asked: Int32Array = Int32Array.from({ length: system.size }, (_, i) => i),
  ) {
    const make = (): Float64Array => new Float64Array(system.size);
    this.f0 = make();
    this.f1 = make();
    this.fEnd = make();
    this.u1 = make();
    this.u2 = make();
    this.rhs = make();
    this.now = make();
    this.trial = make();
    this.reading = make();
  }

  /**
   * Advances y from t0 to t1; the last step lands on t1, and only then is y written.
   * @param times output times in (t0, t1), ascending; answered by cubic Hermite interpolation
   * @throws IntegrationError where the step falls below control.minStep or the state stops being finite
   */
  integrate(t0: number, t1: number, y: Float64Array, control: Control, times: readonly number[], output: Output): Outcome {
    const { system } = this;
    const n = system.size;
    const outcome: Outcome = { steps: 0, rejections: 0, evaluations: 0, firstAccepted: 0, lastStep: 0 };
    let t = t0;
    let h = control.firstStep > 0 ? control.firstStep : (t1 - t0) / 8;
    let next = 0;
    const span = t1 - t0;
    let rejected = false;
    let known = false;
    this.now.set(y);
    while (t < t1 - span * 1e-12) {
      const left = t1 - t;
      if (h > control.maxStep) h = control.maxStep;
      if (h > left * 0.999) h = left;
      else if (h > left * 0.55) h = left * 0.5;
      if (!known) {
        system.slope(t, this.now, this.f0, 0);
        outcome.evaluations++;
      }
      known = false;
      for (;;) {
        const error = this.attempt(t, h);
        outcome.evaluations++;
        const ok = error <= 1;
        const factor = error > 0 ? 0.85 / Math.sqrt(error) : 3;
        if (ok) {
          outcome.steps++;
          // What tomorrow's same segment should begin with: this step, moved towards what its error allowed.
          if (outcome.steps === 1) outcome.firstAccepted = h * Math.min(1.5, Math.max(0.6, factor));
          outcome.lastStep = h;
          const begin = t;
          t = h === left ? t1 : t + h;
          const before = this.now;
          this.now = this.trial;
          this.trial = before;
          system.accepted(h, t, this.now);
          if (next < times.length && times[next] < t) {
            // The slope at the end is also the next step's first; after the last there is none, and nothing asks for W.
            system.slope(t, this.now, this.fEnd, t === t1 ? 1 : 0);
            outcome.evaluations++;
            known = true;
            while (next < times.length && times[next] < t) {
              hermite((times[next] - begin) / h, h, before, this.f0, this.now, this.fEnd, this.asked, this.reading);
              output(next, this.reading);
              next++;
            }
            const end = this.fEnd;
            this.fEnd = this.f0;
            this.f0 = end;
          }
          h *= Math.min(rejected ? 1 : 2.5, Math.max(0.3, factor));
          rejected = false;
          break;
        }
        outcome.rejections++;
        rejected = true;
        h *= Number.isFinite(error) ? Math.min(0.9, Math.max(0.2, factor)) : 0.2;
        if (!(h > control.minStep))
          throw new IntegrationError('stepTooSmall', t, this.worst(), `step fell below ${control.minStep} d at t = ${t} d`);
      }
    }
    y.set(this.now);
    for (let i = 0; i < n; i++)
      if (!Number.isFinite(y[i])) throw new IntegrationError('notFinite', t1, i, `state ${i} is not finite at t = ${t1} d`);
    return outcome;
  }

  /** The place in the state whose error is the largest of the last trial step; −1 where none stands out. */
  private worst(): number {
    const { system, rhs, now, trial } = this;
    // What is lost already is where it began; a step spreads it.
    for (const state of [now, trial]) {
      const lost = state.findIndex((value) => !Number.isFinite(value));
      if (lost >= 0) return lost;
    }
    const alone = new Float64Array(system.size);
    let found = -1;
    let most = 0;
    for (let i = 0; i < alone.length; i++) {
      alone[i] = rhs[i];
      const norm = system.norm(alone, now, trial);
      if (norm > most) {
        most = norm;
        found = i;
      }
      alone[i] = 0;
    }
    return found;
  }

  /** One trial step into `trial`; returns its error norm (Infinity where W could not be factorised). */
  private attempt(t: number, h: number): number {
    const { system, f0, f1, u1, u2, rhs, now, trial } = this;
    const d = 1 / (h * GAMMA);
    if (!system.factor(d)) return Infinity;
    rhs.set(f0);
    system.solve(rhs, u1, 0);
    addScaled(trial, now, u1, 1 / GAMMA);
    system.slope(t + h, trial, f1, 1);
    addScaled(rhs, f1, u1, -2 * d);
    system.solve(rhs, u2, 1);
    addTwoScaled(trial, rhs, now, u1, u2, 3 / (2 * GAMMA), 1 / (2 * GAMMA));
    return system.norm(rhs, now, trial);
  }
}
