// Arctic char: long and slim, olive back, pale spots, an orange belly, white edges to its fins.
import { scatter } from '../../../page/picture/kit/curves';
import type { FishForm } from '../../../page/picture/kit/fishForm';

export const drawing: FishForm = {
  body: [
    [56, 1],
    [50, -5],
    [36, -10],
    [15, -12],
    [-6, -11],
    [-26, -7],
    [-39, -4],
    [-42, 0],
    [-39, 4],
    [-24, 8],
    [-2, 11],
    [19, 12],
    [38, 9],
    [51, 5],
  ],
  belly: [
    [54, 4],
    [38, 9],
    [19, 12],
    [-2, 11],
    [-24, 8],
    [-39, 3],
    [-20, 4],
    [6, 5],
    [32, 5],
  ],
  tail: [
    [-38, -4],
    [-51, -12],
    [-62, -17],
    [-57, -7],
    [-55, 0],
    [-57, 7],
    [-62, 16],
    [-51, 11],
    [-38, 4],
  ],
  fins: [
    [
      [10, -11],
      [5, -22],
      [-4, -21],
      [-11, -10],
      [0, -11],
    ],
    [
      [-24, -7],
      [-29, -13],
      [-34, -12],
      [-31, -6],
    ],
    [
      [0, 11],
      [-6, 19],
      [-14, 18],
      [-12, 10],
    ],
    [
      [-20, 8],
      [-26, 17],
      [-33, 14],
      [-31, 6],
    ],
  ],
  sideFin: [
    [23, 6],
    [13, 7],
    [5, 13],
    [9, 15],
    [18, 11],
  ],
  colours: { flesh: '#7E8F7A', belly: '#E98B4A', dark: '#465A4C', ink: '#20302A' },
  eye: { x: 43, y: -2, r: 3.7 },
  mouth: 'M56 3Q49 5 42 4',
  gill: 'M31 -9Q25 -1 31 8',
  marks(pen, move, fade) {
    const random = scatter(17);
    for (let i = 0; i < 26; i += 1) {
      const along = 44 - random() * 78;
      const [x, y] = move([along, -8 + random() * 10]);
      pen.circle(x, y, 1 + random() * 0.8, { fill: '#F3E3CE', alpha: 0.9 * fade });
    }
  },
  over(pen, _ink, move, fade) {
    for (const [from, to] of [
      [
        [0, 11],
        [-6, 19],
      ],
      [
        [-20, 8],
        [-26, 17],
      ],
    ] as const) {
      const [a, b] = [move(from), move(to)];
      pen.path(`M${a[0]} ${a[1]}L${b[0]} ${b[1]}`, { ink: '#FFFFFF', width: 2.2, alpha: fade });
    }
  },
};
