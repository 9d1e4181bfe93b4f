// Closed hulls under pressure: outline, cut shell, feet, a gauge whose needle follows the blockage, and the dirt they hold.
import type { GameObjects } from 'phaser';
import { INK } from './palette';
import { block } from './parts';
import type { Pen } from './pen';
import { NO_FIGURE, type Dials } from './dials';
import type { Kit } from './kit';
import { type StageBox } from './boxes';
import type { Live, Moment } from './moment';
import { FLOW_STEP_m3_d } from './flow';
import { StepTable } from './stepTable';

/** Thickness of a hull's shell. */
export const SHELL = 7;
const DOME = 24;

/** Inner outline of a hull, domed above and below. */
export function hullPath(box: StageBox, grow = 0, dome = DOME): string {
  const left = box.x - grow;
  const right = box.x + box.w + grow;
  const top = box.rim + 6 - grow;
  const foot = box.floor + grow;
  const r = dome + grow;
  const half = (right - left) / 2;
  return `M${left} ${top + r}C${left} ${top + r * 0.35} ${left + half * 0.4} ${top} ${left + half} ${top}S${right} ${top + r * 0.35} ${right} ${top + r}V${foot - r * 0.7}C${right} ${foot - r * 0.2} ${right - half * 0.4} ${foot} ${left + half} ${foot}S${left} ${foot - r * 0.2} ${left} ${foot - r * 0.7}Z`;
}

/** The cut shell: a hatched ring between two outlines. */
export function hullShell(pen: Pen, box: StageBox, fill: string = INK.steel, dome = DOME): void {
  const outer = hullPath(box, SHELL, dome);
  const inner = hullPath(box, 0, dome);
  pen.between(outer, inner, () => {
    pen.path(outer, { fill });
    pen.hatch(outer, box.x - SHELL, box.rim - SHELL, box.w + 2 * SHELL, box.floor - box.rim + 2 * SHELL, 7, 0.42);
  });
  pen.path(outer, { ink: INK.ink, width: 2.6 });
  pen.path(inner, { ink: INK.ink, width: 2 });
}

/** Two feet on a plinth. */
export function hullSupport(pen: Pen, box: StageBox): void {
  const plinth = Math.min(-4, box.floor + SHELL + 12);
  block(pen, box.x - 14, plinth, box.w + 28, -plinth);
  for (const x of [box.x + 2, box.x + box.w - 14])
    pen.rect(x, box.floor - 16, 12, plinth - box.floor + 16, { fill: INK.steelDark, ink: INK.ink });
}

/** A hand valve with a red lever, centred. */
export function handValve(pen: Pen, x: number, y: number): void {
  pen.at(x, y, () => {
    pen.rect(-10, -8, 20, 16, { fill: INK.steel, ink: INK.ink }, 3);
    pen.path('M0 -8V-13', { ink: INK.ink, width: 2.4 });
    pen.path('M-4 -14H13', { ink: INK.red, width: 4.6 });
  });
}

/** Face of the gauge, centred; the upper part of its scale is red. */
export function gaugeFace(pen: Pen, x: number, y: number, r: number): void {
  pen.rect(x - 3, y + r - 1, 6, 9, { fill: INK.steel, ink: INK.ink, width: 1.4 });
  pen.circle(x, y, r, { fill: INK.white, ink: INK.ink, width: 2.2 });
  pen.path(`M${x} ${y - r + 3}A${r - 3} ${r - 3} 0 0 1 ${x + r - 3} ${y}`, { ink: INK.red, width: 2.6 });
  pen.path(`M${x - r + 3} ${y}A${r - 3} ${r - 3} 0 0 1 ${x} ${y - r + 3}`, { ink: INK.ink, width: 1.2 });
}

export const GAUGE = 11;
/** Blockage is read in steps of this. */
const CLOG_STEP = 0.002;
const BLOCKED = Math.round(1 / CLOG_STEP);
/** A clean filter's needle stands a quarter of the way up while water runs, in steps. */
const RUNNING = Math.round(BLOCKED / 3);
const TURNS = new StepTable(0, RUNNING + BLOCKED, (step) => -1.5 + (3 * step) / (RUNNING + BLOCKED));

/** Needle of a gauge: it swings right as the filter blocks and falls back left where nothing flows. */
export class Gauge implements Live {
  private readonly needle: GameObjects.Image;
  private readonly dials: Dials;
  private readonly clog: number;
  private readonly flow: number;
  private seen = NO_FIGURE;
  private flowed = false;
  /** turn of the needle, in steps */
  private goal = 0;
  private shown = 0;

  constructor(kit: Kit, id: string, x: number, y: number) {
    this.dials = kit.dials;
    this.clog = kit.dials.inSteps(id, 'clog', 0, CLOG_STEP);
    this.flow = kit.dials.inSteps(id, 'flow_m3_d', 0, FLOW_STEP_m3_d);
    kit.studio.show(
      kit.studio.bake({ x: x - GAUGE - 3, y: y - GAUGE - 3, w: 2 * GAUGE + 6, h: 2 * GAUGE + 14 }, (pen) => gaugeFace(pen, x, y, GAUGE)),
    );
    this.needle = kit.sheets.bits.image('needle', x, y).setRotation(-1.5);
  }

  update(moment: Moment): void {
    const clog = this.dials.steps[this.clog];
    const flows = this.dials.steps[this.flow] > 0;
    if (clog !== this.seen || flows !== this.flowed) {
      this.seen = clog;
      this.flowed = flows;
      this.goal = flows ? RUNNING + (clog < 0 ? 0 : clog > BLOCKED ? BLOCKED : clog) : 0;
    }
    if (this.goal === this.shown) return;
    this.shown += moment.part(this.goal - this.shown);
    this.needle.rotation = TURNS.at(this.shown);
  }
}
