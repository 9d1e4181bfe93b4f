// Channel catfish: whiskered and spotted, with a forked tail.
import { scatter } from '../../../page/picture/kit/curves';
import type { FishForm } from '../../../page/picture/kit/fishForm';

export const drawing: FishForm = {
  body: [
    [53, 2],
    [48, -6],
    [36, -11],
    [18, -14],
    [-4, -12],
    [-24, -8],
    [-37, -5],
    [-40, 0],
    [-37, 5],
    [-22, 9],
    [-2, 13],
    [20, 14],
    [38, 11],
    [49, 7],
  ],
  belly: [
    [51, 5],
    [38, 11],
    [20, 14],
    [-2, 13],
    [-22, 9],
    [-37, 4],
    [-18, 4],
    [6, 6],
    [30, 6],
  ],
  tail: [
    [-36, -4],
    [-50, -16],
    [-66, -23],
    [-58, -9],
    [-51, 0],
    [-58, 9],
    [-66, 22],
    [-50, 15],
    [-36, 5],
  ],
  fins: [
    [
      [20, -13],
      [17, -30],
      [12, -29],
      [5, -20],
      [2, -12],
      [10, -13],
    ],
    [
      [-22, -8],
      [-28, -16],
      [-35, -14],
      [-33, -6],
    ],
    [
      [4, 12],
      [-4, 22],
      [-18, 22],
      [-30, 16],
      [-34, 6],
      [-20, 9],
      [-6, 12],
    ],
  ],
  sideFin: [
    [24, 8],
    [14, 10],
    [5, 18],
    [9, 20],
    [19, 15],
  ],
  colours: { flesh: '#7E8D96', belly: '#EDEBDD', dark: '#46545E', ink: '#1F2A31' },
  eye: { x: 40, y: -3, r: 3.2 },
  mouth: 'M53 4Q46 8 41 7',
  gill: 'M27 -10Q20 -1 27 9',
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
