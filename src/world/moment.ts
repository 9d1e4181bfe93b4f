// The moment the picture shows: one object, rewritten each frame, that every moving part reads from.
import type { PageState, SeasonView } from '../store/state';
import { LENSES, type Lens } from '../store/lenses';
import { readingAt } from '../store/readings';
import { bandOf, lensCell, lensValue } from './reading';
import { PALE_BAND } from './draw/palette';
import type { ComfortBand, Plan, StageCells } from './terms';

/** Time in which a tween covers most of its way, s. */
const TWEEN_s = 0.2;

export class Moment {
  view: SeasonView | null = null;
  plan: Plan | null = null;
  comfort: readonly ComfortBand[] = [];
  lens: Lens = LENSES.ammonia;
  now_h = 0;
  /** seconds that moving things have lived: fish, water in pipes */
  time = 0;
  /** seconds that bubbles and specks have lived; it holds at speeds over a day a second */
  gasTime = 0;
  /** real seconds since the last frame */
  dt = 0;
  /** share of its remaining way a tween covers in this frame, 0–1 */
  ease = 1;
  /** whether the water in pipes is seen to move: not while days fly by */
  flowing = false;
  /** whether things move at all (people may ask for less motion) */
  moving = true;

  /** Takes over the page's state for this frame. */
  take(state: PageState, dt: number): void {
    this.view = state.mode === 'build' ? null : state.season;
    this.plan = state.plan;
    this.comfort = state.comfort;
    this.lens = LENSES[state.lens];
    this.now_h = state.now_h;
    this.moving = !state.reducedMotion;
    this.dt = dt;
    this.ease = this.moving ? 1 - Math.exp(-dt / TWEEN_s) : 1;
    this.flowing = this.moving && state.speed !== 'days5' && state.speed !== 'day1';
    if (!this.moving) return;
    this.time += dt;
    if (this.flowing) this.gasTime += dt;
  }

  /** A variable inside a stage, or `otherwise` where no season tells it. */
  read(stageId: string, variable: string, otherwise: number): number {
    if (this.view === null) return otherwise;
    const value = readingAt(this.view, stageId, variable, this.now_h, 'inside');
    return Number.isFinite(value) ? value : otherwise;
  }

  /** Band of the water in a cell; pale while nothing is measured. */
  band(stageId: string, cell: number): number {
    const stage = this.cellsOf(stageId);
    if (this.view === null || stage === null) return PALE_BAND;
    const value = lensCell(this.view, this.lens, stage, cell, this.now_h);
    return Number.isFinite(value) ? bandOf(this.lens, value) : PALE_BAND;
  }

  /** What the lens shows inside a stage; NaN where no season tells it. */
  shown(stageId: string): number {
    return this.view === null ? NaN : lensValue(this.view, this.lens, stageId, this.now_h);
  }

  cellsOf(stageId: string): StageCells | null {
    if (this.view === null) return null;
    const stages = this.view.stages;
    for (let i = 0; i < stages.length; i += 1) if (stages[i].id === stageId) return stages[i].cells > 0 ? stages[i] : null;
    return null;
  }
}

/** A part of the picture that follows the moment. */
export interface Live { update(moment: Moment): void }
