// The three signs that say whether a number matters: tick, triangle, diamond.
import type { Mark } from '../../state/common/state';
import { INK } from './palette';
import type { Pen } from './pen';

export function signInk(pen: Pen, mark: Mark): void {
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
