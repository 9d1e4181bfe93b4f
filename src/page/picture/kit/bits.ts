// Small moving pictures that all stages share: gas, specks of solids, dashes and drops of water, carriers.
import { INK } from './palette';
import { carrier, speck } from './parts';
import type { Pen } from './pen';
import type { SheetEntry } from './studio';

export const BUBBLES = ['bubble 0', 'bubble 1', 'bubble 2'] as const;
export const SPECKS = ['speck 0', 'speck 1', 'speck 2', 'speck 3'] as const;

function bubble(r: number): (pen: Pen) => void {
  return (pen) => {
    pen.circle(0, 0, r, { fill: 'rgba(255,255,255,.55)', ink: 'rgba(30,42,50,.8)', width: 1.25 });
    pen.path(`M${-r * 0.55} ${-r * 0.1}A${r * 0.6} ${r * 0.6} 0 0 1 0 ${-r * 0.6}`, { ink: '#fff', width: 1.1 });
  };
}

/** A white stroke that is still seen on the palest water, in grey print and under a weak projector. */
function edged(pen: Pen, half: number, width: number): void {
  pen.line(-half, 0, half, 0, { ink: INK.ink, width: width + 1.6, alpha: 0.42 });
  pen.line(-half, 0, half, 0, { ink: '#fff', width });
}

/** The small pictures that all stages share, each around its own origin. */
export function bits(): SheetEntry[] {
  const around = (r: number): { x: number; y: number; w: number; h: number } => ({ x: -r, y: -r, w: 2 * r, h: 2 * r });
  // one frame for all sizes, so that one can take the place of another
  const entries: SheetEntry[] = [2, 3.3, 4.8].map((r, i) => ({ name: BUBBLES[i], ...around(7), draw: bubble(r) }));
  [1.3, 1.7, 2.2, 2.7].forEach((size, i) =>
    entries.push({ name: SPECKS[i], ...around(6), draw: (pen) => speck(pen, 0, 0, size, i * 0.8) }),
  );
  entries.push({
    name: 'diamond',
    ...around(8),
    draw: (pen) => pen.path('M0 -5.5L4.5 0L0 5.5L-4.5 0Z', { fill: '#D9CBEB', ink: INK.ink, width: 1.6 }),
  });
  entries.push({ name: 'dash', x: -9, y: -4, w: 18, h: 8, draw: (pen) => edged(pen, 4.5, 5.6) });
  entries.push({ name: 'thin dash', x: -8, y: -3, w: 16, h: 6, draw: (pen) => edged(pen, 4, 3.4) });
  entries.push({ name: 'ring', x: -20, y: -6, w: 40, h: 12, draw: (pen) => pen.path('M-16 1q8 -6 16 0t16 0', { ink: '#fff', width: 3 }) });
  entries.push({
    name: 'drop',
    x: -6,
    y: -3,
    w: 12,
    h: 16,
    draw: (pen) => pen.path('M0 0q-4 6 0 9q4 -3 0 -9Z', { fill: INK.base, ink: INK.ink, width: 1.3 }),
  });
  entries.push({
    name: 'film dash',
    x: -13,
    y: -3,
    w: 26,
    h: 6,
    draw: (pen) => pen.line(-10, 0, 10, 0, { ink: '#fff', width: 2.6, alpha: 0.9 }),
  });
  entries.push({
    name: 'bead',
    x: -5,
    y: -6,
    w: 10,
    h: 12,
    draw: (pen) => pen.path('M0 -5q-4.4 6 0 9q4.4 -3 0 -9Z', { fill: '#fff', ink: INK.ink, width: 1.2 }),
  });
  entries.push({
    name: 'needle',
    x: -4,
    y: -10,
    w: 8,
    h: 14,
    draw: (pen) => {
      pen.path('M0 2V-8', { ink: INK.ink, width: 2 });
      pen.circle(0, 0, 2.2, { fill: INK.ink });
    },
  });
  for (const i of [0, 1]) entries.push({ name: `carrier ${i}`, ...around(9), draw: (pen) => carrier(pen, 0, 0, i === 0 ? 0.86 : 1, 0) });
  entries.push({
    name: 'gas',
    x: -10,
    y: -50,
    w: 20,
    h: 52,
    draw: (pen) => {
      pen.path('M0 0q-6 -9 0 -18t0 -18', { ink: INK.ink, width: 2, dash: [5, 5] });
      pen.path('M-5 -38l5 -8l5 8', { ink: INK.ink, width: 2 });
    },
  });
  return entries;
}
