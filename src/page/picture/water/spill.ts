// Water over a rim: stripes down the outside of the tank, a puddle on the ground, and a card that says so. It lasts while the level stands
// at the rim.
import type { GameObjects } from 'phaser';
import { INK, rgb } from '../kit/palette';
import { lately } from '../kit/happenings';
import type { Dials } from '../kit/dials';
import type { Kit } from '../kit/kit';
import { FLOW_STEP_m3_d } from '../kit/flow';
import { type StageBox, WALL } from '../kit/boxes';
import type { Live, Moment } from '../kit/moment';
import { drawingOf } from '../scene/drawingOf';
import { RedCard } from '../kit/redCard';
import { BandColour } from '../kit/bandColour';

/** A level this close under the rim counts as at it, m. */
const AT_RIM_m = 0.003;
const STEP_m = 0.001;
/** A gush that is over within the hour is still shown for so long, h. */
const SHOWN_h = 1;
const STRIPE = 7;
const DASHES = 3;
/** Cards of neighbours float at different heights. */
const STAGGER = 46;
const FALL_s = 0.7;

export class Spill implements Live {
  private readonly stripes: GameObjects.Image[] = [];
  private readonly edges: GameObjects.Image[] = [];
  private readonly dashes: GameObjects.Image[] = [];
  private readonly puddle: GameObjects.Image;
  private readonly shine: GameObjects.Image;
  private readonly card: RedCard;
  private readonly colour = new BandColour();
  private readonly foot: number;
  private readonly dials: Dials;
  private readonly told: number;
  private readonly brim: number;
  private readonly flow: number;
  private readonly band: number;
  private on = false;

  constructor(
    kit: Kit,
    private readonly box: StageBox,
    width: number,
  ) {
    this.dials = kit.dials;
    this.told = kit.dials.inSteps(box.id, 'level_m', -box.floor / kit.unitsPerM, STEP_m);
    this.brim = drawingOf(box.kind).inlet === 'bar' ? Infinity : Math.round((-box.brim / kit.unitsPerM - AT_RIM_m) / STEP_m);
    this.flow = kit.dials.inSteps(box.id, 'flow_m3_d', 0, FLOW_STEP_m3_d);
    this.band = kit.dials.water(box.id, 0);
    // in a pit the water runs over the ground beside it; elsewhere it runs down to the ground
    this.foot = Math.max(box.rim + 12, 0);
    const height = this.foot - box.rim + 6;
    for (const x of [box.x - WALL - STRIPE - 1, box.x + box.w + WALL + 1]) {
      const add = (left: number, w: number): GameObjects.Image =>
        kit.studio
          .patch(left, box.rim - 6)
          .setDisplaySize(w, height)
          .setVisible(false);
      this.edges.push(add(x - 1.4, STRIPE + 2.8).setTint(rgb(INK.ink)));
      this.stripes.push(add(x, STRIPE));
      for (let i = 0; i < DASHES; i += 1)
        this.dashes.push(
          kit.sheets.bits
            .image('thin dash', x + STRIPE / 2, box.rim)
            .setRotation(Math.PI / 2)
            .setVisible(false),
        );
    }
    const half = box.w / 2 + 62;
    const cx = box.x + box.w / 2;
    const space = { x: cx - half - 3, y: -9, w: 2 * half + 6, h: 20 };
    this.puddle = kit.studio.show(kit.studio.bake(space, (pen) => pen.oval(cx, 1, half, 7, 0, { fill: '#fff' }))).setVisible(false);
    this.shine = kit.studio
      .show(
        kit.studio.bake(space, (pen) => {
          pen.oval(cx, 1, half, 7, 0, { ink: INK.ink, width: 2 });
          pen.path(`M${cx - half * 0.7} -1q${half * 0.2} -4 ${half * 0.4} 0M${cx + half * 0.3} 3q${half * 0.16} -4 ${half * 0.32} 0`, {
            ink: '#fff',
            width: 2.2,
            alpha: 0.9,
          });
        }),
      )
      .setVisible(false);
    this.card = new RedCard(kit.studio, 'world.spills', {
      x: box.x + box.w + WALL + 4,
      y: box.rim - 8,
      rise: 62 + (box.index % 3) * STAGGER,
      width,
    });
  }

  update(moment: Moment): void {
    const on = moment.glance ? this.runsOver(moment) : this.on;
    if (on !== this.on) {
      this.on = on;
      for (let i = 0; i < this.stripes.length; i += 1) {
        this.stripes[i].setVisible(on);
        this.edges[i].setVisible(on);
      }
      for (let i = 0; i < this.dashes.length; i += 1) this.dashes[i].setVisible(on);
      this.puddle.setVisible(on);
      this.shine.setVisible(on);
      this.card.show(on);
      this.paint();
    }
    if (!on) return;
    if (this.colour.towards(this.dials.bands[this.band], moment)) this.paint();
    const height = this.foot - this.box.rim - 8;
    for (let i = 0; i < this.dashes.length; i += 1) {
      const p = (moment.gasTime / FALL_s + (i % DASHES) / DASHES) % 1;
      this.dashes[i].y = this.box.rim + 2 + Math.max(0, height) * p * p;
    }
  }

  private paint(): void {
    for (let i = 0; i < this.stripes.length; i += 1) this.stripes[i].setTint(this.colour.tint);
    this.puddle.setTint(this.colour.tint);
  }

  private runsOver(moment: Moment): boolean {
    const { box } = this;
    if (moment.view === null) return false;
    const full = this.dials.steps[this.told] >= this.brim && this.dials.steps[this.flow] > 0;
    return full || lately(moment.view, 'spilled', box.id, moment, SHOWN_h) > 0;
  }
}
