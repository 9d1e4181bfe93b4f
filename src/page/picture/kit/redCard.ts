// The red-pencil card: a few words at the place where something goes wrong, with a pointer to it. It is drawn when it is first wanted.
import type { GameObjects } from 'phaser';
import { say, type WordKey } from '../../../words/say';
import { INK } from './palette';
import { LEAST_TEXT_px, type Pen } from './pen';
import { signInk } from './signInk';
import type { Studio } from './studio';

const PAD = 12;
const MARK = 30;

/** What a card points at and how high over it the card floats, world units; the picture's width keeps it on the page. */
export interface CardPlace {
  x: number;
  y: number;
  rise: number;
  width: number;
  /** how far its middle lies to the right of the place */
  shift?: number;
}

function draw(pen: Pen, words: string, place: CardPlace, left: number, top: number, w: number, h: number, size: number): void {
  const tail = Math.max(left + 22, Math.min(left + w - 22, place.x));
  const d = `M${left + 8} ${top}H${left + w - 8}q8 0 8 8V${top + h - 8}q0 8 -8 8H${tail + 11}L${place.x} ${place.y}L${tail - 11} ${top + h}H${left + 8}q-8 0 -8 -8V${top + 8}q0 -8 8 -8Z`;
  pen.at(2, 3, () => pen.path(d, { fill: INK.shadow, alpha: 0.25 }));
  pen.path(d, { fill: INK.white, ink: INK.red, width: 3 });
  pen.at(left + PAD + 11, top + h / 2, () => signInk(pen, 'act'));
  pen.text(words, left + PAD + MARK, top + h / 2 + size * 0.36, { size, weight: 720, colour: INK.red, align: 'left' });
}

export class RedCard {
  private image: GameObjects.Image | null = null;

  constructor(
    private readonly studio: Studio,
    private readonly words: WordKey,
    private readonly place: CardPlace,
  ) {}

  show(on: boolean): void {
    if (this.image !== null) {
      if (this.image.visible !== on) this.image.setVisible(on);
    } else if (on) this.image = this.bake();
  }

  private bake(): GameObjects.Image {
    const { place } = this;
    const words = say(this.words);
    const size = Math.max(18, LEAST_TEXT_px / this.studio.cssScale);
    const context = document.createElement('canvas').getContext('2d');
    let text = words.length * size * 0.52;
    if (context !== null) {
      context.font = `720 ${size}px 'Atkinson Hyperlegible Next Variable', system-ui, sans-serif`;
      text = context.measureText(words).width;
    }
    const w = text + 2 * PAD + MARK;
    const h = size + 2 * PAD;
    const left = Math.max(8, Math.min(place.width - w - 8, place.x + (place.shift ?? 0) - w / 2));
    const top = place.y - place.rise - h;
    return this.studio
      .show(
        this.studio.bake(
          {
            x: Math.min(left, place.x) - 6,
            y: top - 6,
            w: Math.max(left + w, place.x) - Math.min(left, place.x) + 16,
            h: place.y - top + 12,
          },
          (pen) => draw(pen, words, place, left, top, w, h, size),
        ),
      )
      .setDepth(5);
  }
}
