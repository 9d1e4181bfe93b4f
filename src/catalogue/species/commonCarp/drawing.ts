// Common carp: deep, golden, in large scales.
import type { FishForm } from '../../../page/picture/kit/fishForm';

export const drawing: FishForm = {
  body: [
    [52, 4],
    [46, -5],
    [34, -15],
    [18, -23],
    [0, -22],
    [-20, -13],
    [-36, -7],
    [-40, 0],
    [-36, 7],
    [-22, 14],
    [-2, 21],
    [18, 20],
    [36, 14],
    [48, 9],
  ],
  belly: [
    [50, 8],
    [36, 14],
    [18, 20],
    [-2, 21],
    [-22, 14],
    [-36, 6],
    [-18, 8],
    [6, 11],
    [30, 9],
  ],
  tail: [
    [-36, -6],
    [-48, -17],
    [-63, -24],
    [-58, -10],
    [-52, 0],
    [-58, 10],
    [-63, 23],
    [-48, 16],
    [-36, 7],
  ],
  fins: [
    [
      [18, -22],
      [12, -36],
      [4, -31],
      [-10, -27],
      [-24, -23],
      [-30, -18],
      [-26, -11],
      [-4, -20],
    ],
    [
      [2, 20],
      [-4, 28],
      [-13, 26],
      [-10, 18],
    ],
    [
      [-20, 13],
      [-27, 23],
      [-34, 19],
      [-32, 8],
    ],
  ],
  sideFin: [
    [22, 9],
    [12, 9],
    [4, 17],
    [8, 21],
    [17, 17],
  ],
  colours: { flesh: '#B99444', belly: '#F2E3B0', dark: '#7A5B1F', ink: '#33260E' },
  eye: { x: 39, y: -3, r: 4 },
  mouth: 'M52 6Q47 9 44 8',
  gill: 'M28 -15Q20 -2 28 13',
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
