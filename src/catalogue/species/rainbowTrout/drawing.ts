// Rainbow trout: slim, spotted, with a red stripe.
import { scatter } from '../../../page/picture/kit/curves';
import type { FishForm } from '../../../page/picture/kit/fishForm';

export const drawing: FishForm = {
  body: [
    [54, 1],
    [48, -6],
    [34, -11],
    [14, -14],
    [-6, -12],
    [-24, -8],
    [-37, -5],
    [-40, 0],
    [-37, 5],
    [-22, 9],
    [-2, 13],
    [18, 14],
    [36, 10],
    [49, 6],
  ],
  belly: [
    [52, 5],
    [36, 10],
    [18, 14],
    [-2, 13],
    [-22, 9],
    [-37, 4],
    [-18, 6],
    [6, 8],
    [30, 7],
  ],
  tail: [
    [-36, -5],
    [-50, -13],
    [-61, -18],
    [-59, -8],
    [-58, 0],
    [-59, 8],
    [-61, 17],
    [-50, 13],
    [-36, 5],
  ],
  fins: [
    [
      [12, -13],
      [6, -26],
      [-4, -24],
      [-12, -12],
      [0, -13],
    ],
    [
      [-22, -8],
      [-27, -15],
      [-33, -14],
      [-30, -7],
    ],
    [
      [0, 13],
      [-6, 20],
      [-14, 19],
      [-12, 11],
    ],
    [
      [-18, 10],
      [-24, 19],
      [-32, 15],
      [-30, 7],
    ],
  ],
  sideFin: [
    [22, 7],
    [12, 8],
    [4, 15],
    [8, 17],
    [17, 13],
  ],
  colours: { flesh: '#93A793', belly: '#F6F2E6', dark: '#55705F', ink: '#22302A' },
  eye: { x: 41, y: -3, r: 3.9 },
  mouth: 'M54 3Q47 6 39 5',
  gill: 'M29 -10Q22 -1 29 9',
  marks(pen, move, fade) {
    const stripe = [
      [30, 1],
      [10, 1],
      [-14, 0.5],
      [-36, 0],
    ].map(([x, y]) => move([x, y]));
    pen.path(`M${stripe.map(([x, y]) => `${x} ${y}`).join('L')}`, { ink: '#DB6A7E', width: 6.5, alpha: 0.8 * fade, cap: 'butt' });
    const random = scatter(9);
    for (let i = 0; i < 34; i += 1) {
      const along = 46 - random() * 80;
      const [x, y] = move([along, -10 + random() * 9 + Math.max(0, -along) * 0.08]);
      pen.circle(x, y, 0.9 + random() * 0.7, { fill: '#1F2A24', alpha: 0.85 * fade });
    }
  },
};
