// Tilapia: deep, with dark bars on its side.
import type { FishForm } from '../../../page/picture/kit/fishForm';
import { INK } from '../../../page/picture/kit/palette';

export const drawing: FishForm = {
  body: [
    [52, 2],
    [46, -7],
    [34, -16],
    [16, -22],
    [-4, -20],
    [-22, -12],
    [-36, -6],
    [-40, 0],
    [-36, 6],
    [-22, 13],
    [-2, 20],
    [18, 19],
    [36, 13],
    [47, 8],
  ],
  belly: [
    [50, 6],
    [36, 13],
    [18, 19],
    [-2, 20],
    [-22, 13],
    [-36, 5],
    [-18, 6],
    [6, 8],
    [30, 7],
  ],
  tail: [
    [-36, -5],
    [-48, -15],
    [-60, -20],
    [-57, -8],
    [-55, 0],
    [-57, 9],
    [-60, 19],
    [-48, 14],
    [-36, 6],
  ],
  fins: [
    [
      [26, -19],
      [20, -31],
      [8, -34],
      [-6, -32],
      [-20, -27],
      [-29, -21],
      [-24, -12],
      [-4, -19],
      [14, -21],
    ],
    [
      [-4, 19],
      [-12, 28],
      [-24, 24],
      [-27, 13],
      [-16, 15],
    ],
  ],
  sideFin: [
    [18, 5],
    [8, 3],
    [0, 9],
    [4, 14],
    [13, 11],
  ],
  colours: { flesh: INK.fish, belly: INK.fishBelly, dark: INK.fishDark, ink: INK.fishInk },
  eye: { x: 39, y: -4, r: 4.6 },
  mouth: 'M51 4Q46 6.5 43 5.4',
  gill: 'M29 -14Q21 -2 29 11',
  marks(pen, move, fade) {
    for (const x of [14, 2, -10, -22]) {
      const a = move([x, -19 + Math.abs(x - 6) * 0.28]);
      const b = move([x - 3, 3]);
      pen.path(`M${a[0]} ${a[1] + 2}Q${a[0] - 4} ${(a[1] + b[1]) / 2} ${b[0]} ${b[1]}`, {
        ink: INK.fishDark,
        width: 3.4,
        alpha: 0.5 * fade,
      });
    }
  },
};
