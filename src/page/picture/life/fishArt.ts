// The species as they are told apart from the side: deep barred tilapia, whiskered catfish, scaled carp, spotted trout.
import { fishOf, type FishForm } from './fishForm';
import { INK } from '../kit/palette';
import type { Pen } from '../kit/pen';
import { scatter } from '../kit/curves';

const TILAPIA: FishForm = {
  body: [[52, 2], [46, -7], [34, -16], [16, -22], [-4, -20], [-22, -12], [-36, -6], [-40, 0], [-36, 6], [-22, 13], [-2, 20], [18, 19], [36, 13], [47, 8]],
  belly: [[50, 6], [36, 13], [18, 19], [-2, 20], [-22, 13], [-36, 5], [-18, 6], [6, 8], [30, 7]],
  tail: [[-36, -5], [-48, -15], [-60, -20], [-57, -8], [-55, 0], [-57, 9], [-60, 19], [-48, 14], [-36, 6]],
  fins: [
    [[26, -19], [20, -31], [8, -34], [-6, -32], [-20, -27], [-29, -21], [-24, -12], [-4, -19], [14, -21]],
    [[-4, 19], [-12, 28], [-24, 24], [-27, 13], [-16, 15]],
  ],
  sideFin: [[18, 5], [8, 3], [0, 9], [4, 14], [13, 11]],
  colours: { flesh: INK.fish, belly: INK.fishBelly, dark: INK.fishDark, ink: INK.fishInk },
  eye: { x: 39, y: -4, r: 4.6 },
  mouth: 'M51 4Q46 6.5 43 5.4', gill: 'M29 -14Q21 -2 29 11',
  marks(pen, move, fade) {
    for (const x of [14, 2, -10, -22]) {
      const a = move([x, -19 + Math.abs(x - 6) * 0.28]);
      const b = move([x - 3, 3]);
      pen.path(`M${a[0]} ${a[1] + 2}Q${a[0] - 4} ${(a[1] + b[1]) / 2} ${b[0]} ${b[1]}`, { ink: INK.fishDark, width: 3.4, alpha: 0.5 * fade });
    }
  },
};

const CATFISH: FishForm = {
  body: [[53, 2], [48, -6], [36, -11], [18, -14], [-4, -12], [-24, -8], [-37, -5], [-40, 0], [-37, 5], [-22, 9], [-2, 13], [20, 14], [38, 11], [49, 7]],
  belly: [[51, 5], [38, 11], [20, 14], [-2, 13], [-22, 9], [-37, 4], [-18, 4], [6, 6], [30, 6]],
  tail: [[-36, -4], [-50, -16], [-66, -23], [-58, -9], [-51, 0], [-58, 9], [-66, 22], [-50, 15], [-36, 5]],
  fins: [
    [[20, -13], [17, -30], [12, -29], [5, -20], [2, -12], [10, -13]],
    [[-22, -8], [-28, -16], [-35, -14], [-33, -6]],
    [[4, 12], [-4, 22], [-18, 22], [-30, 16], [-34, 6], [-20, 9], [-6, 12]],
  ],
  sideFin: [[24, 8], [14, 10], [5, 18], [9, 20], [19, 15]],
  colours: { flesh: '#7E8D96', belly: '#EDEBDD', dark: '#46545E', ink: '#1F2A31' },
  eye: { x: 40, y: -3, r: 3.2 },
  mouth: 'M53 4Q46 8 41 7', gill: 'M27 -10Q20 -1 27 9',
  marks(pen, move, fade) {
    const random = scatter(5);
    for (let i = 0; i < 15; i += 1) {
      const [x, y] = move([24 - i * 4, -6 + random() * 9]);
      pen.circle(x, y, 1 + random() * 0.8, { fill: '#2C373E', alpha: 0.75 * fade });
    }
  },
  over(pen, ink) {
    pen.path('M50 0Q58 -4 61 -14M48 6Q57 11 58 20M43 9Q47 17 44 24M38 11Q38 17 33 21', { ink, width: 1.8 });
  },
};

const CARP: FishForm = {
  body: [[52, 4], [46, -5], [34, -15], [18, -23], [0, -22], [-20, -13], [-36, -7], [-40, 0], [-36, 7], [-22, 14], [-2, 21], [18, 20], [36, 14], [48, 9]],
  belly: [[50, 8], [36, 14], [18, 20], [-2, 21], [-22, 14], [-36, 6], [-18, 8], [6, 11], [30, 9]],
  tail: [[-36, -6], [-48, -17], [-63, -24], [-58, -10], [-52, 0], [-58, 10], [-63, 23], [-48, 16], [-36, 7]],
  fins: [
    [[18, -22], [12, -36], [4, -31], [-10, -27], [-24, -23], [-30, -18], [-26, -11], [-4, -20]],
    [[2, 20], [-4, 28], [-13, 26], [-10, 18]],
    [[-20, 13], [-27, 23], [-34, 19], [-32, 8]],
  ],
  sideFin: [[22, 9], [12, 9], [4, 17], [8, 21], [17, 17]],
  colours: { flesh: '#B99444', belly: '#F2E3B0', dark: '#7A5B1F', ink: '#33260E' },
  eye: { x: 39, y: -3, r: 4 },
  mouth: 'M52 6Q47 9 44 8', gill: 'M28 -15Q20 -2 28 13',
  marks(pen, move, fade) {
    // large scales in rows, each an arc open to the tail
    for (let row = -3; row <= 2; row += 1) {
      for (let i = 0; i < 9; i += 1) {
        const [x, y] = move([22 - i * 7 - (row & 1) * 3.5, row * 6 + 1]);
        pen.path(`M${x - 2} ${y - 3.4}Q${x - 6.4} ${y} ${x - 2} ${y + 3.4}`, { ink: '#6B4F18', width: 1.1, alpha: 0.75 * fade });
      }
    }
  },
  over(pen, ink) {
    pen.path('M48 9Q50 14 47 18M51 6Q56 10 55 15', { ink, width: 1.6 });
  },
};

const TROUT: FishForm = {
  body: [[54, 1], [48, -6], [34, -11], [14, -14], [-6, -12], [-24, -8], [-37, -5], [-40, 0], [-37, 5], [-22, 9], [-2, 13], [18, 14], [36, 10], [49, 6]],
  belly: [[52, 5], [36, 10], [18, 14], [-2, 13], [-22, 9], [-37, 4], [-18, 6], [6, 8], [30, 7]],
  tail: [[-36, -5], [-50, -13], [-61, -18], [-59, -8], [-58, 0], [-59, 8], [-61, 17], [-50, 13], [-36, 5]],
  fins: [
    [[12, -13], [6, -26], [-4, -24], [-12, -12], [0, -13]],
    [[-22, -8], [-27, -15], [-33, -14], [-30, -7]],
    [[0, 13], [-6, 20], [-14, 19], [-12, 11]],
    [[-18, 10], [-24, 19], [-32, 15], [-30, 7]],
  ],
  sideFin: [[22, 7], [12, 8], [4, 15], [8, 17], [17, 13]],
  colours: { flesh: '#93A793', belly: '#F6F2E6', dark: '#55705F', ink: '#22302A' },
  eye: { x: 41, y: -3, r: 3.9 },
  mouth: 'M54 3Q47 6 39 5', gill: 'M29 -10Q22 -1 29 9',
  marks(pen, move, fade) {
    const stripe = [[30, 1], [10, 1], [-14, 0.5], [-36, 0]].map(([x, y]) => move([x, y]));
    pen.path(`M${stripe.map(([x, y]) => `${x} ${y}`).join('L')}`, { ink: '#DB6A7E', width: 6.5, alpha: 0.8 * fade, cap: 'butt' });
    const random = scatter(9);
    for (let i = 0; i < 34; i += 1) {
      const along = 46 - random() * 80;
      const [x, y] = move([along, -10 + random() * 9 + Math.max(0, -along) * 0.08]);
      pen.circle(x, y, 0.9 + random() * 0.7, { fill: '#1F2A24', alpha: 0.85 * fade });
    }
  },
};

const SPECIES: Readonly<Record<string, FishForm>> = { tilapia: TILAPIA, channelCatfish: CATFISH, commonCarp: CARP, rainbowTrout: TROUT };

/** Draws a fish of a species, nose to the right; one without a form of its own is drawn as tilapia. */
export function fish(pen: Pen, species: string, bend: number, unwell: boolean): void {
  fishOf(SPECIES[species] ?? TILAPIA, pen, bend, unwell);
}
