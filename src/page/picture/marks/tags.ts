// Number tags: every tank prints what the tint shows, with a tick, triangle or diamond where someone lives in that water.
import type { GameObjects, Textures } from 'phaser';
import type { Mark } from '../../state/common/state';
import { TINTS, type Tint } from '../../state/common/tints';
import { figure } from '../../../words/units';
import { INK } from '../kit/palette';
import { NO_FIGURE, TRACE, type Dials } from '../kit/dials';
import { Limits } from './marks';
import { signInk } from '../kit/signInk';
import type { Live, Moment } from '../kit/moment';
import type { ComfortBand } from '../kit/terms';
import type { Sheet, SheetEntry, Studio } from '../kit/studio';

const SIZE = 28;
const HEIGHT = 40;
const PAD = 11;
const MARK_ROOM = 25;
const LETTERS = '0123456789.,<−–';
/** Signs between digits, half as wide as these. */
const NARROW = '.,';
const LONGEST = 6;
const PULSE_s = 1.4;

const cardName = (halves: number, marked: boolean, chosen: boolean): string => `card ${halves} ${marked ? 'm' : ''}${chosen ? 'c' : ''}`;

/** The sheet of cards, marks and digits, and how far each digit advances. */
export class TagSheet {
  readonly sheet: Sheet;
  private readonly wide: number;
  private readonly cards: Textures.Frame[] = [];
  /** the tag whose mark turned red last: it alone may pulse */
  newest: Tag | null = null;
  /** digits and marks, each as large as any other of its kind, so that one can take the place of another */
  readonly letters: ReadonlyMap<string, Textures.Frame>;
  readonly marks: Readonly<Record<Mark, Textures.Frame>>;
  /** numbers in words, by their figures; a number comes again and again */
  private readonly words = new Map<number, string>();
  private decimals = -1;

  constructor(
    studio: Studio,
    readonly scale: number,
  ) {
    const context = document.createElement('canvas').getContext('2d');
    this.wide = 17;
    if (context !== null) {
      context.font = `760 ${SIZE}px 'Atkinson Hyperlegible Next Variable', system-ui, sans-serif`;
      this.wide = Math.max(...[...'0123456789'].map((digit) => context.measureText(digit).width));
    }
    const entries: SheetEntry[] = [];
    for (const letter of LETTERS) {
      entries.push({
        name: letter,
        x: -SIZE / 2,
        y: -SIZE,
        w: SIZE,
        h: SIZE * 1.3,
        draw: (pen) => pen.text(letter, 0, 0, { size: SIZE, weight: 760 }),
      });
    }
    for (const mark of ['fine', 'watch', 'act'] as const)
      entries.push({ name: mark, x: -14, y: -14, w: 28, h: 28, draw: (pen) => pen.at(0, 0, () => signInk(pen, mark), 0, 0.95) });
    for (let tenths = 1; tenths <= 2 * LONGEST; tenths += 1) {
      for (const marked of [false, true]) {
        for (const chosen of [false, true]) entries.push(this.card(tenths, marked, chosen));
      }
    }
    this.sheet = studio.sheet(entries, studio.scale * scale);
    this.letters = new Map([...LETTERS].map((letter) => [letter, this.sheet.frame(letter)]));
    this.marks = { fine: this.sheet.frame('fine'), watch: this.sheet.frame('watch'), act: this.sheet.frame('act') };
    for (let halves = 1; halves <= 2 * LONGEST; halves += 1) {
      for (const marked of [false, true])
        for (const chosen of [false, true])
          this.cards[4 * halves + (marked ? 2 : 0) + (chosen ? 1 : 0)] = this.sheet.frame(cardName(halves, marked, chosen));
    }
  }

  /**
   * A number of so many decimals in words, put together when it is first come to.
   * @param figures in units of the last decimal, as the dials tell them
   */
  wordsOf(figures: number, decimals: number): string {
    if (decimals !== this.decimals) {
      this.decimals = decimals;
      this.words.clear();
    }
    const known = this.words.get(figures);
    if (known !== undefined) return known;
    const words = figures === NO_FIGURE ? '' : figure(figures === TRACE ? 0.1 / 10 ** decimals : figures / 10 ** decimals, decimals);
    this.words.set(figures, words);
    return words;
  }

  /** Height of a card with its shadow, unscaled. */
  get height(): number {
    return HEIGHT + 5;
  }

  advance(letter: string): number {
    return NARROW.includes(letter) ? this.wide * 0.5 : this.wide;
  }

  /** Room of a text in half digits: cards come in these steps. */
  halves(text: string): number {
    let sum = 0;
    for (let i = 0; i < text.length; i += 1) sum += NARROW.includes(text[i]) ? 1 : 2;
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
    return {
      name: cardName(halves, marked, chosen),
      x: -w / 2 - 4,
      y: -HEIGHT / 2 - 4,
      w: w + 10,
      h: HEIGHT + 11,
      draw: (pen) => {
        pen.rect(-w / 2 + 2.5, -HEIGHT / 2 + 3.5, w, HEIGHT, { fill: INK.shadow, alpha: 0.28 }, 7);
        pen.rect(-w / 2, -HEIGHT / 2, w, HEIGHT, { fill: INK.white, ink: chosen ? INK.blue : INK.ink, width: chosen ? 3.4 : 2.2 }, 7);
      },
    };
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
  private figures = NO_FIGURE;
  private decimals = -1;
  /** what the card and the places of the letters were last worked out for */
  private laid = -1;
  private pulse_s = 0;
  private readonly water: number;
  private readonly judged = new Map<string, number>();
  /** what the number is judged by, worked out for these bands and this tint */
  private limits = new Limits([], '', [], this.judged);
  private comfort: readonly ComfortBand[] | null = null;
  private tint: Tint | null = null;

  constructor(
    private readonly tags: TagSheet,
    private readonly dials: Dials,
    id: string,
    private readonly kind: string,
    private readonly x: number,
    private readonly y: number,
  ) {
    this.water = dials.water(id);
    for (const { judged } of Object.values(TINTS)) for (const variable of judged) this.judged.set(variable, dials.want(id, variable, NaN));
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
    const figures = this.dials.figures[this.water];
    const { decimals } = moment.tint;
    if (moment.comfort !== this.comfort || moment.tint !== this.tint) this.judgeBy(moment);
    const mark = figures !== NO_FIGURE ? this.limits.mark(this.dials.at) : null;
    if (figures === this.figures && decimals === this.decimals && mark === this.shownMark) return;
    if (mark === 'act' && this.shownMark !== 'act' && this.shownMark !== null) {
      this.tags.newest = this;
      this.pulse_s = moment.moving ? PULSE_s : 0;
    }
    this.figures = figures;
    this.decimals = decimals;
    this.shownMark = mark;
    this.text = this.tags.wordsOf(figures, decimals);
    this.compose();
  }

  private judgeBy({ comfort, tint }: Moment): void {
    this.comfort = comfort;
    this.tint = tint;
    this.limits = new Limits(comfort, this.kind, tint.judged, this.judged);
  }

  /** A mark that has just turned red swells twice, then stands still. */
  private beat(moment: Moment): void {
    this.pulse_s = this.tags.newest === this ? Math.max(0, this.pulse_s - moment.dt) : 0;
    const swell = Math.sin((2 * Math.PI * this.pulse_s) / PULSE_s) ** 2;
    this.mark.setScale(this.tags.sheet.natural * this.tags.scale * (1 + 0.3 * swell));
  }

  private compose(): void {
    const { tags, text, shownMark } = this;
    const there = text !== '';
    this.card.visible = there;
    this.mark.visible = there && shownMark !== null;
    if (shownMark !== null) this.mark.frame = tags.marks[shownMark];
    let narrow = 0;
    for (let i = 0; i < text.length; i += 1) if (NARROW.includes(text[i])) narrow |= 1 << i;
    const laid = (64 * text.length + narrow) * 4 + (shownMark !== null ? 2 : 0) + (this.chosen ? 1 : 0);
    if (laid !== this.laid) this.lay();
    this.laid = laid;
    for (let i = 0; i < text.length && i < LONGEST; i += 1) {
      const frame = tags.letters.get(text[i]);
      if (frame !== undefined) this.letters[i].frame = frame;
    }
  }

  /** Chooses the card for a text, and puts mark and letters in their places on it. */
  private lay(): void {
    const { tags, text } = this;
    const s = tags.scale;
    const marked = this.shownMark !== null;
    const halves = tags.halves(text);
    const w = tags.width(halves, marked);
    if (text !== '') this.card.setFrame(tags.cardFrame(halves, marked, this.chosen));
    this.mark.x = this.x + (-w / 2 + 20) * s;
    let x = -w / 2 + PAD + (marked ? MARK_ROOM : 0);
    for (let i = 0; i < LONGEST; i += 1) {
      const letter = this.letters[i];
      letter.visible = i < text.length;
      if (i >= text.length) continue;
      const step = tags.advance(text[i]);
      letter.x = this.x + (x + step / 2) * s;
      letter.y = this.y + 10 * s;
      x += step;
    }
  }
}
