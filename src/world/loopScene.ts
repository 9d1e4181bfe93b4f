// The one scene: it keeps the picture in step with the design and the size, and updates it each frame.
import { Scene } from 'phaser';
import type { PageState } from '../store/state';
import { aeratedStages } from './aerated';
import { INK, rgb } from './draw/palette';
import { FONT } from './draw/pen';
import { Hand } from './hand';
import { layOut, type WorldLayout } from './layout';
import { livingKey, livingOf } from './living';
import { Moment } from './moment';
import { Picture } from './picture';
import { Studio } from './studio';
import type { PageSource, Plan } from './terms';

const WHITE = 'white';
/** A frame never moves the picture by more than this, s: after a hidden tab, things go on from where they were. */
const LONGEST_FRAME_s = 0.25;
/** After the last change of size, the picture is drawn anew after this time, s. */
const SETTLE_s = 0.12;
const STILL_PERIOD_s = 1;

/** How the picture lies on the page: page pixels of a world unit and the y of the upper edge. */
export interface View { scale: number; top: number }

export class LoopScene extends Scene {
  layout: WorldLayout | null = null;
  view: View = { scale: 1, top: 0 };
  /** device pixels of a page pixel */
  ratio = 1;
  private readonly moment = new Moment();
  private picture: Picture | null = null;
  private hand: Hand | null = null;
  private studio: Studio | null = null;
  private drawn: Pick<PageState, 'design' | 'plan' | 'mode'> | null = null;
  private stale = 0;
  private partsKey = '';
  private ready = false;
  private still_s = STILL_PERIOD_s;
  private seen: PageState | null = null;

  constructor(private readonly store: PageSource) {
    super('loop');
  }

  create(): void {
    const white = this.textures.createCanvas(WHITE, 4, 4);
    if (white !== null) {
      white.context.fillStyle = '#fff';
      white.context.fillRect(0, 0, 4, 4);
      white.refresh();
    }
    this.cameras.main.setOrigin(0, 0).setBackgroundColor(rgb(INK.paper));
    const weights = [680, 720, 760].map((weight) => document.fonts.load(`${weight} 20px ${FONT}`));
    const go = (): void => {
      this.ready = true;
    };
    Promise.all(weights).then(go, go);
  }

  /** The size of the page's view has changed. */
  resized(): void {
    this.stale = SETTLE_s;
  }

  override update(_time: number, delta_ms: number): void {
    const dt = Math.min(LONGEST_FRAME_s, delta_ms / 1000);
    const state = this.store.getState();
    if (this.stale > 0) this.stale = Math.max(0, this.stale - dt);
    if (this.ready && this.stale === 0) this.keepUp(state);
    if (this.picture === null) return;
    const changed = state !== this.seen && (this.seen === null || state.lens !== this.seen.lens || state.selected !== this.seen.selected || state.drag !== this.seen.drag);
    this.still_s += dt;
    if (state.reducedMotion && !changed && this.still_s < STILL_PERIOD_s) return;
    this.still_s = 0;
    this.seen = state;
    this.moment.take(state, dt);
    this.picture.update(this.moment, state);
    const { drag } = state;
    if (drag === null) this.hand?.update(null, 0, 0);
    else {
      const bounds = this.game.canvas.getBoundingClientRect();
      this.hand?.update(drag, (drag.x - bounds.left) / this.view.scale, (drag.y - bounds.top) / this.view.scale + this.view.top);
    }
  }

  /** Draws the picture anew when the design, its order, the mode or the size has changed. */
  private keepUp(state: PageState): void {
    const { design, plan, mode } = state;
    const last = this.drawn;
    const building = mode === 'build';
    if (last !== null && last.design === design && last.plan?.loop === plan?.loop && last.plan?.side === plan?.side && (last.mode === 'build') === building && (last.plan === plan || this.sameParts(plan))) {
      last.plan = plan;
      return;
    }
    if (design === null || plan === null) return;
    const width = this.scale.width / this.ratio;
    const height = this.scale.height / this.ratio;
    if (width < 40 || height < 40) return;
    const layout = layOut({ design, loop: plan.loop, side: plan.side, aspect: width / height });
    if (layout === null) return;
    this.picture?.destroy();
    this.drawn = { design, plan, mode };
    this.layout = layout;
    const scale = width / layout.width;
    this.view = { scale, top: layout.bottom - height / scale };
    const k = scale * this.ratio;
    this.cameras.main.setZoom(k).setScroll(0, Math.round(this.view.top * k) / k);
    this.studio = new Studio(this, k, scale);
    const aerated = aeratedStages(plan);
    const living = livingOf(plan);
    this.partsKey = partsKey(plan);
    const bad = new Set(design.problems.map((problem) => problem.stage));
    this.picture = new Picture(this, this.studio, { layout, plan, mode, aerated, living, bad, viewTop: Math.floor(this.view.top) - 2, white: WHITE });
    this.hand = new Hand(this.studio);
    this.still_s = STILL_PERIOD_s;
  }

  private sameParts(plan: Plan | null): boolean {
    return plan !== null && partsKey(plan) === this.partsKey;
  }

  /** Forces the picture to be drawn anew in the next frame. */
  refresh(): void {
    this.drawn = null;
  }
}

/** A word that changes with what a plan adds to the picture beside its loop: air, species, crops. */
function partsKey(plan: Plan): string {
  return `${[...aeratedStages(plan)].join(' ')} / ${livingKey(livingOf(plan))}`;
}
