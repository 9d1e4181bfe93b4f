// The one scene: it keeps the picture in step with the design and the size, and updates it each frame.
import { Scene } from 'phaser';
import type { DesignCheck } from '../../state/common/contract';
import type { PageState } from '../../state/common/page';
import { buildOf, designOf, dragOf, planOf } from '../../state/common/selectors';
import { TINTS } from '../../state/common/tints';
import { aeratedStages, partsKey } from './aerated';
import type { Coming } from './coming';
import { takeOver } from './moments';
import { INK, rgb } from '../kit/palette';
import { FONT } from '../kit/pen';
import { Hand } from './hand';
import { handlesOf, type Handle, type Pulled } from './handles';
import { layOut, type WorldLayout } from './layout';
import { FOR_ONE, type Legible } from '../marks/legible';
import { livingKey, livingOf } from '../life/living';
import { Moment } from '../kit/moment';
import { Picture } from './picture';
import type { PictureInput } from './pictureInput';
import { closeView, frameOf, viewBetween, wholeView, type Frame, type View } from './sight';
import { bakeSheets, sheetsOnto, type Sheets } from '../life/sheets';
import { evenShapes, Studio } from '../kit/studio';
import type { PageSource, Plan } from '../kit/terms';

const WHITE = 'white';
/** A frame never moves the picture by more than this, s: after a hidden tab, things go on from where they were. */
const LONGEST_FRAME_s = 0.25;
/** After the last change of size, the picture is drawn anew after this time, s. */
const SETTLE_s = 0.12;
const STILL_PERIOD_s = 1;
/**
 * Time after which drawing a new picture lets the page do other things, ms: with the piece in hand, the page is held for no longer than a
 * frame.
 */
const SLICE_ms = 6;
/** Time of the way to a close look and back, s. */
const GLIDE_s = 0.45;

export class LoopScene extends Scene {
  layout: WorldLayout | null = null;
  /** where it is looked at from now */
  view: View = { scale: 1, left: 0, top: 0 };
  /** device pixels of a page pixel */
  ratio = 1;
  legible: Legible = FOR_ONE;
  /** by which sizes are pulled in the picture that is shown, and the one that is being pulled */
  handles: readonly Handle[] = [];
  pulled: Pulled | null = null;
  private readonly moment = new Moment(TINTS.ammonia);
  private picture: Picture | null = null;
  private hand: Hand | null = null;
  /** the picture that is being drawn */
  private coming: Coming | null = null;
  /** small pictures for a scale and its living things, kept from one picture to the next; those to be freed with the next arrival */
  private sheets: { key: string; studio: Studio; made: Sheets } | null = null;
  private readonly old: Studio[] = [];
  private drawn: { design: DesignCheck; plan: Plan | null; building: boolean; units: string; near: string | null } | null = null;
  /** the look is on its way */
  private glide: { from: View; to: View; t: number } | null = null;

  private stale = 0;
  private partsKey = '';
  private ready = false;
  private still_s = STILL_PERIOD_s;
  private seen: PageState | null = null;
  private seenPulled: Pulled | null = null;

  constructor(private readonly store: PageSource) {
    super('loop');
  }

  create(): void {
    const white = this.textures.createCanvas(WHITE, 4, 4);
    if (white !== null) {
      white.context.fillStyle = '#fff';
      white.context.fillRect(0, 0, 4, 4);
      white.refresh();
      evenShapes(this, WHITE);
    }
    this.cameras.main.setOrigin(0, 0).setBackgroundColor(rgb(INK.paper));
    this.events.once('destroy', () => {
      this.coming = null;
    });
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
    if (this.glide !== null) this.move(dt);
    if (this.picture === null) return;
    const drag = dragOf(state);
    const { seen } = this;
    const changed = seen === null || state.view !== seen.view || drag !== dragOf(seen) || this.pulled !== this.seenPulled;
    this.still_s += dt;
    if (state.preferences.reducedMotion && !changed && this.still_s < STILL_PERIOD_s) return;
    this.still_s = 0;
    this.seen = state;
    this.seenPulled = this.pulled;
    this.moment.dt = dt;
    takeOver(this.moment, state);
    this.picture.update(this.moment, state, this.pulled);
    if (drag === null) this.hand?.update(null, 0, 0);
    else {
      const bounds = this.game.canvas.getBoundingClientRect();
      this.hand?.update(
        drag,
        (drag.x - bounds.left) / this.view.scale + this.view.left,
        (drag.y - bounds.top) / this.view.scale + this.view.top,
      );
    }
  }

  /** Draws the picture anew when the design, its order, the mode or the size has changed. */
  private keepUp(state: PageState): void {
    const {
      game,
      view: { selected, closer },
      preferences: { units, reducedMotion },
    } = state;
    const [design, plan, build] = [designOf(state), planOf(state), buildOf(state)];
    const last = this.drawn;
    const building = build !== null;
    const near = closer ? selected : null;
    const same =
      last !== null
      && last.design === design
      && last.units === units
      && last.building === building
      && last.plan?.loop === plan?.loop
      && last.plan?.side === plan?.side
      && (last.plan === plan || this.sameParts(plan));
    if (same && last.near === near) {
      last.plan = plan;
      return;
    }
    if (design === null || plan === null) return;
    const width = this.scale.width / this.ratio;
    const height = this.scale.height / this.ratio;
    if (width < 40 || height < 40) return;
    const layout = layOut({ design, loop: plan.loop, side: plan.side, aspect: width / height });
    if (layout === null) return;
    this.drawn = { design, plan, building, units, near };
    const living = livingOf(plan);
    this.partsKey = partsKey(plan);
    const whole = wholeView(layout, width, height);
    const close = near === null ? null : closeView(layout, near, width, height);
    const view = close ?? whole;
    const bad = new Set(design.problems.map((problem) => problem.stage));
    const { legible } = this;
    const handles = build === null ? [] : handlesOf(layout, build.lesson.sizes, plan, design);
    this.giveUp();
    // the picture there is fills a view of another size until the new one is ready
    if (!same && near === null && this.layout !== null) this.lookFrom(wholeView(this.layout, width, height));
    // nearer: the look goes in while the sharper picture is drawn, which shows no more than what will be in view
    this.glide =
      same && this.picture !== null && !reducedMotion && close !== null && last.near === null ? { from: this.view, to: view, t: 0 } : null;
    const seen = close === null ? null : frameOf(close, width, height);
    const told = game.mode === 'class' ? game.told : null;
    this.begin(layout, view, seen, same && !reducedMotion && last.near !== null && close === null, {
      layout,
      plan,
      building,
      aerated: aeratedStages(plan),
      living,
      bad,
      told,
      legible,
      handles,
      looked: selected,
      viewTop: Math.floor(whole.top) - 2,
    });
  }

  /** The look goes on; a picture that has waited for it is shown when it is there. */
  private move(dt: number): void {
    const { glide, coming } = this;
    if (glide === null) return;
    glide.t = Math.min(1, glide.t + dt / GLIDE_s);
    this.lookFrom(viewBetween(glide.from, glide.to, glide.t));
    if (glide.t < 1) return;
    this.glide = null;
    if (coming !== null && coming.drawn !== null) this.arrive(coming, coming.drawn);
  }

  private lookFrom(view: View): void {
    const k = view.scale * this.ratio;
    this.view = view;
    this.cameras.main.setZoom(k).setScroll(Math.round(view.left * k) / k, Math.round(view.top * k) / k);
  }

  /**
   * Begins to draw a new picture; the one there is stays until it is ready.
   * @param seen what alone need be drawn
   * @param out whether the look then goes out from where it is
   */
  private begin(layout: WorldLayout, view: View, seen: Frame | null, out: boolean, input: PictureInput): void {
    const k = view.scale * this.ratio;
    const studio = new Studio(this, WHITE, k, view.scale, seen);
    const key = `${k} ${livingKey(input.living)}`;
    const own = this.sheets?.key === key ? null : new Studio(this, WHITE, k, k);
    this.coming = {
      layout,
      handles: input.handles,
      view,
      k,
      drawn: null,
      out,
      studio,
      own,
      steps: this.drawSteps(studio, own, key, input),
    };
    this.goOnSoon(this.coming);
  }

  private goOnSoon(coming: Coming): void {
    setTimeout(() => this.goOn(coming), 0);
  }

  private giveUp(): void {
    this.coming?.studio.clear();
    this.coming?.own?.clear();
    this.coming = null;
  }

  /** @param own where the sheets are made, if those kept do not fit */
  private *drawSteps(studio: Studio, own: Studio | null, key: string, input: PictureInput): Generator<void, Picture | null> {
    if (own !== null) {
      const made = yield* bakeSheets(own, input.living);
      if (this.sheets !== null) this.old.push(this.sheets.studio);
      this.sheets = { key, studio: own, made };
      if (this.coming !== null) this.coming.own = null;
      yield;
    }
    if (this.sheets === null) return null;
    const picture = new Picture(studio, sheetsOnto(this.sheets.made, studio), input);
    yield* picture.draw();
    return picture;
  }

  /** Draws for a while, then lets the page breathe. */
  private goOn(coming: Coming): void {
    if (this.coming !== coming) return;
    const until = performance.now() + SLICE_ms;
    do {
      const { done, value } = coming.steps.next();
      if (!done) continue;
      coming.drawn = value;
      if (value !== null && this.glide === null) this.arrive(coming, value);
      return;
    } while (performance.now() < until);
    this.goOnSoon(coming);
  }

  private arrive(coming: Coming, picture: Picture): void {
    this.coming = null;
    this.picture?.destroy();
    for (const studio of this.old.splice(0)) studio.clear();
    this.picture = picture;
    this.layout = coming.layout;
    this.handles = coming.handles;
    this.pulled = null;
    this.view = coming.view;
    this.hand = new Hand(coming.studio);
    if (coming.out) this.glide = { from: this.view, to: coming.view, t: 0 };
    else this.lookFrom(coming.view);
    this.still_s = STILL_PERIOD_s;
    picture.show();
  }

  private sameParts(plan: Plan | null): boolean {
    return plan !== null && partsKey(plan) === this.partsKey;
  }

  /** Forces the picture to be drawn anew in the next frame. */
  refresh(): void {
    this.drawn = null;
  }
}
