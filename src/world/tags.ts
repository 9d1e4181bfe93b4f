// Number tags: every tank prints what the lens shows, with a tick, triangle or diamond where someone lives in that water.
import type { GameObjects, Textures } from 'phaser';
import type { Mark } from '../store/state';
import { LENSES } from '../store/lenses';
import { figure } from '../words/units';
import { INK } from './draw/palette';
import type { Pen } from './draw/pen';
import type { Dials } from './dials';
import { markOf } from './marks';
import type { Live, Moment } from './moment';
import type { Sheet, SheetEntry, Studio } from './studio';

const SIZE = 28;
const HEIGHT = 40;
const PAD = 11;
const MARK_ROOM = 25;
const LETTERS = '0123456789.<−–';
const LONGEST = 6;
const PULSE_s = 1.4;

export function markInk(pen: Pen, mark: Mark): void {
  if (mark === 'fine') pen.path('M-7 0l5 6L8 -7', { ink: INK.good, width: 3.6 });
  if (mark === 'watch') {
    pen.path('M0 -10L11 9H-11Z', { fill: INK.amber, ink: INK.ink, width: 2 });
    pen.path('M0 -3V3M0 6v.4', { ink: INK.ink, width: 2.4 });
  }
  if (mark === 'act') {
    pen.path('M0 -11L11 0L0 11L-11 0Z', { fill: INK.red, ink: INK.ink, width: 2 });
    pen.path('M0 -5V1M0 4.6v.4', { ink: '#fff', width: 2.6 });
  }
}

const cardName = (halves: number, marked: boolean, chosen: boolean): string => `card ${halves} ${marked ? 'm' : ''}${chosen ? 'c' : ''}`;

/** The sheet of cards, marks and digits, and how far each digit advances. */
export class TagSheet {
  readonly sheet: Sheet;
  private readonly wide: number;
  private readonly cards: Textures.Frame[] = [];
  /** the tag whose mark turned red last: it alone may pulse */
  newest: Tag | null = null;

  constructor(studio: Studio, readonly scale: number) {
    const context = document.createElement('canvas').getContext('2d');
    this.wide = 17;
    if (context !== null) {
      context.font = `760 ${SIZE}px 'Atkinson Hyperlegible Next Variable', system-ui, sans-serif`;
      this.wide = Math.max(...[...'0123456789'].map((digit) => context.measureText(digit).width));
    }
    const entries: SheetEntry[] = [];
    for (const letter of LETTERS) {
      entries.push({ name: letter, x: -SIZE / 2, y: -SIZE, w: SIZE, h: SIZE * 1.3, draw: (pen) => pen.text(letter, 0, 0, { size: SIZE, weight: 760 }) });
    }
    for (const mark of ['fine', 'watch', 'act'] as const) entries.push({ name: mark, x: -14, y: -14, w: 28, h: 28, draw: (pen) => pen.at(0, 0, () => markInk(pen, mark), 0, 0.95) });
    for (let tenths = 1; tenths <= 2 * LONGEST; tenths += 1) {
      for (const marked of [false, true]) {
        for (const chosen of [false, true]) entries.push(this.card(tenths, marked, chosen));
      }
    }
    this.sheet = studio.sheet(entries, studio.scale * scale);
    for (let halves = 1; halves <= 2 * LONGEST; halves += 1) {
      for (const marked of [false, true]) for (const chosen of [false, true]) this.cards[4 * halves + (marked ? 2 : 0) + (chosen ? 1 : 0)] = this.sheet.frame(cardName(halves, marked, chosen));
    }
  }

  /** Height of a card with its shadow, unscaled. */
  get height(): number {
    return HEIGHT + 5;
  }

  advance(letter: string): number {
    return letter === '.' ? this.wide * 0.5 : this.wide;
  }

  /** Room of a text in half digits: cards come in these steps. */
  halves(text: string): number {
    let sum = 0;
    for (let i = 0; i < text.length; i += 1) sum += text[i] === '.' ? 1 : 2;
    return Math.max(1, Math.min(2 * LONGEST, sum));
  }

  width(halves: number, marked: boolean): number {
    return (halves * this.wide) / 2 + 2 * PAD + (marked ? MARK_ROOM : 0);
  }

  /** The card for so many half digits. */
  cardFrame(halves: number, marked: boolean, chosen: boolean): Textures.Frame {
    return this.cards[4 * halves + (marked ? 2 : 0) + (chosen ? 1 : 0)];
  }

  private card(halves: number, marked: boolean, chosen: boolean): SheetEntry {
    const w = this.width(halves, marked);
    return { name: cardName(halves, marked, chosen), x: -w / 2 - 4, y: -HEIGHT / 2 - 4, w: w + 10, h: HEIGHT + 11, draw: (pen) => {
      pen.rect(-w / 2 + 2.5, -HEIGHT / 2 + 3.5, w, HEIGHT, { fill: INK.shadow, alpha: 0.28 }, 7);
      pen.rect(-w / 2, -HEIGHT / 2, w, HEIGHT, { fill: INK.white, ink: chosen ? INK.blue : INK.ink, width: chosen ? 3.4 : 2.2 }, 7);
    } };
  }
}

/** One tag. It shows nothing while no season tells a number. */
export class Tag implements Live {
  private readonly card: GameObjects.Image;
  private readonly mark: GameObjects.Image;
  private readonly letters: GameObjects.Image[] = [];
  private text = '';
  private shownMark: Mark | null = null;
  private chosen = false;
  private key = NaN;
  private pulse_s = 0;
  private readonly water: number;
  private readonly judged = new Map<string, number>();

  constructor(private readonly tags: TagSheet, private readonly dials: Dials, id: string, private readonly kind: string, private readonly x: number, private readonly y: number) {
    this.water = dials.water(id);
    for (const { judged } of Object.values(LENSES)) for (const variable of judged) this.judged.set(variable, dials.want(id, variable, NaN));
    this.card = tags.sheet.image(cardName(2, false, false), x, y).setVisible(false);
    this.mark = tags.sheet.image('fine', x, y).setVisible(false);
    for (let i = 0; i < LONGEST; i += 1) this.letters.push(tags.sheet.image('0', x, y).setVisible(false));
    for (const image of [this.card, this.mark, ...this.letters]) image.setScale(tags.sheet.natural * tags.scale);
  }

  choose(chosen: boolean): void {
    if (chosen === this.chosen) return;
    this.chosen = chosen;
    this.compose();
  }

  update(moment: Moment): void {
    if (this.pulse_s > 0) this.beat(moment);
    if (!moment.glance) return;
    const value = this.dials.shown[this.water];
    const steps = 10 ** moment.lens.decimals;
    const key = Number.isFinite(value) ? (value > 0 && value * steps < 0.5 ? -1 : Math.round(value * steps) + moment.lens.decimals * 0.001) : NaN;
    const mark = Number.isFinite(value) ? markOf(moment.comfort, this.kind, moment.lens.judged, this.dials.at, this.judged) : null;
    if ((key === this.key || (Number.isNaN(key) && Number.isNaN(this.key))) && mark === this.shownMark) return;
    if (mark === 'act' && this.shownMark !== 'act' && this.shownMark !== null) {
      this.tags.newest = this;
      this.pulse_s = moment.moving ? PULSE_s : 0;
    }
    this.key = key;
    this.shownMark = mark;
    this.text = Number.isNaN(key) ? '' : figure(value, moment.lens.decimals);
    this.compose();
  }

  /** A mark that has just turned red swells twice, then stands still. */
  private beat(moment: Moment): void {
    this.pulse_s = this.tags.newest === this ? Math.max(0, this.pulse_s - moment.dt) : 0;
    const swell = Math.sin((2 * Math.PI * this.pulse_s) / PULSE_s) ** 2;
    this.mark.setScale(this.tags.sheet.natural * this.tags.scale * (1 + 0.3 * swell));
  }

  private compose(): void {
    const { tags, text } = this;
    const s = tags.scale;
    const there = text !== '';
    this.card.setVisible(there);
    this.mark.setVisible(there && this.shownMark !== null);
    const halves = tags.halves(text);
    const w = tags.width(halves, this.shownMark !== null);
    if (there) this.card.setFrame(tags.cardFrame(halves, this.shownMark !== null, this.chosen));
    if (this.shownMark !== null) this.mark.setFrame(tags.sheet.frame(this.shownMark)).setX(this.x + (-w / 2 + 20) * s);
    let x = -w / 2 + PAD + (this.shownMark === null ? 0 : MARK_ROOM);
    for (let i = 0; i < LONGEST; i += 1) {
      const letter = this.letters[i];
      letter.setVisible(i < text.length);
      if (i >= text.length) continue;
      const step = tags.advance(text[i]);
      letter.setFrame(tags.sheet.frame(text[i]));
      letter.x = this.x + (x + step / 2) * s;
      letter.y = this.y + 10 * s;
      x += step;
    }
  }
}
