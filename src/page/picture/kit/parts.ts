// Parts that several stages share: cut walls, supports, media, air stones, pumps, marks. Each is drawn at its own origin.
import { INK, mix } from './palette';
import type { Pen } from './pen';
import { scatter } from './curves';

/** Inside of a tank behind its water. */
export function tankBack(pen: Pen, x: number, y: number, w: number, h: number): void {
  pen.rect(x, y, w, h, { fill: INK.back });
}

/** Cut face of an open tank: hatched walls and floor, a cap on each rim. x, y, w, h are the inner space. */
export function tankCut(pen: Pen, x: number, y: number, w: number, h: number, wall = 9, fill: string = INK.wall): void {
  const d = `M${x - wall} ${y}H${x}V${y + h}H${x + w}V${y}H${x + w + wall}V${y + h + wall}H${x - wall}Z`;
  pen.path(d, { fill });
  pen.hatch(d, x - wall, y, w + 2 * wall, h + wall, 7, 0.42);
  pen.path(d, { ink: INK.ink, width: 2.6 });
  rimCaps(pen, x, y, w, wall, fill);
}

export function rimCaps(pen: Pen, x: number, y: number, w: number, wall: number, fill: string): void {
  pen.rect(x - wall - 3, y - 5, wall + 6, 7, { fill, ink: INK.ink, width: 2 }, 2);
  pen.rect(x + w - 3, y - 5, wall + 6, 7, { fill, ink: INK.ink, width: 2 }, 2);
}

/** Nobody builds a block taller than this, world units: a steel frame on a plinth carries what stands higher. */
const TALLEST_BLOCK = 190;
const PLINTH = 24;

/** Steel frame with braces. */
function frame(pen: Pen, x: number, y: number, w: number, h: number): void {
  const bays = Math.max(1, Math.round(h / 110));
  let braces = '';
  for (let i = 0; i < bays; i += 1) {
    const top = y + (i * h) / bays;
    const foot = y + ((i + 1) * h) / bays;
    braces += `M${x + 6} ${top + 8}L${x + w - 6} ${foot}M${x + w - 6} ${top + 8}L${x + 6} ${foot}`;
  }
  pen.path(braces, { ink: INK.ink, width: 5 });
  pen.path(braces, { ink: INK.steel, width: 2 });
  for (let i = 0; i <= bays; i += 1) pen.rect(x, y + (i * h) / bays - (i > 0 ? 4 : 0), w, 8, { fill: INK.steel, ink: INK.ink, width: 1.8 });
  for (const at of [x, x + w - 10]) pen.rect(at, y, 10, h, { fill: INK.steel, ink: INK.ink, width: 2.2 });
}

/** Block stand with courses of bricks; its right edge lies in shade. */
export function block(pen: Pen, x: number, y: number, w: number, h: number): void {
  if (h < 3) return;
  if (h > TALLEST_BLOCK) {
    frame(pen, x, y, w, h - PLINTH);
    block(pen, x, y + h - PLINTH, w, PLINTH);
    return;
  }
  pen.rect(x, y, w, h, { fill: INK.block });
  let bricks = '';
  for (let row = 0; row * 11 < h; row += 1) {
    bricks += `M${x} ${y + row * 11}H${x + w}`;
    for (let b = x + (row % 2 ? 20 : 0); b < x + w; b += 40)
      if (b > x) bricks += `M${b} ${y + row * 11}V${Math.min(y + h, y + row * 11 + 11)}`;
  }
  pen.path(bricks, { ink: INK.blockDark, width: 1.4 });
  pen.rect(x + w - 12, y, 12, h, { fill: '#5B4A2A', alpha: 0.16 });
  pen.rect(x, y, w, h, { ink: INK.ink, width: 2.2 });
}

/** Wooden table: a top and three legs, down to the ground at y = 0. */
export function table(pen: Pen, x: number, y: number, w: number, legs: number): void {
  for (let i = 0; i < legs; i += 1)
    pen.rect(x + 14 + ((w - 40) * i) / (legs - 1), y + 8, 12, -y - 8, { fill: INK.wood, ink: INK.ink, width: 2.2 });
  if (-y > 60) pen.rect(x + 20, y + -y * 0.62, w - 40, 6, { fill: INK.wood, ink: INK.ink, width: 1.6 });
  pen.rect(x, y, w, 9, { fill: INK.wood, ink: INK.ink, width: 2.2 });
}

/** Air stone, centred. */
export function stone(pen: Pen, x: number, y: number, w: number): void {
  pen.rect(x - w / 2, y - 5, w, 10, { fill: INK.steel, ink: INK.ink, width: 1.8 }, 4);
  for (let i = 0; i < Math.floor(w / 8); i += 1) pen.circle(x - w / 2 + 6 + i * 8, y, 1.2, { fill: INK.steelDark });
}

/** One carrier of film media, centred. */
export function carrier(pen: Pen, x: number, y: number, scale: number, turn: number): void {
  pen.at(
    x,
    y,
    () => {
      pen.circle(0, 0, 7, { fill: INK.media, ink: INK.mediaDark, width: 2 });
      pen.path('M-7 0H7M0 -7V7', { ink: INK.mediaDark, width: 1.6 });
      pen.circle(0, 0, 2.6, { fill: mix(INK.media, INK.biofilm, 0.55), ink: INK.mediaDark, width: 1.4 });
    },
    turn,
    scale,
  );
}

/** Carriers scattered in a space without touching. */
export function carriers(pen: Pen, x: number, y: number, w: number, h: number, count: number, seed: number): void {
  const random = scatter(seed * 17);
  const at: [number, number][] = [];
  for (let tries = 0; at.length < count && tries < count * 40; tries += 1) {
    const px = x + 8 + random() * (w - 16);
    const py = y + 8 + random() * (h - 16);
    if (at.every((q) => Math.hypot(px - q[0], py - q[1]) > 14.2)) at.push([px, py]);
  }
  for (const [px, py] of at) carrier(pen, px, py, 0.82 + random() * 0.24, random() * 1.57);
}

/** Bed of pebbles that fills a space from the top left. */
export function pebbles(pen: Pen, x: number, y: number, w: number, h: number, seed: number, size: number): void {
  const random = scatter(seed * 29);
  for (let j = 0; j * size * 1.05 < h; j += 1) {
    for (let i = 0; i * size * 1.45 < w; i += 1) {
      const cx = x + i * size * 1.45 + (j % 2 ? size * 0.75 : 0) + (random() - 0.5) * 2 + size * 0.5;
      const cy = y + j * size * 1.05 + size * 0.5 + (random() - 0.5) * 2;
      if (cx > x + w - 4 || cy > y + h - 3) continue;
      const fill = mix(INK.gravel, random() > 0.5 ? '#D8CDB8' : '#958A76', random() * 0.7);
      pen.oval(cx, cy, size * 0.66 + random() * 1.4, size * 0.5 + random(), random() * 0.7 - 0.35, { fill, ink: INK.ink, width: 1.2 });
    }
  }
}

/** Brown specks with a cream edge, as caught or floating solids are drawn. */
export function speck(pen: Pen, x: number, y: number, size: number, turn: number, fill: string = INK.sludge): void {
  pen.oval(x, y, size * 1.5, size, turn, { fill, ink: INK.cream, width: 0.7 });
}

/**
 * Submersible pump, centred: a ribbed motor over a volute with its neck upward, on a slotted inlet; a light on the motor shows that it
 * runs.
 */
export function pump(pen: Pen, on: boolean): void {
  pen.path('M-29 8H9V18H-29Z', { fill: INK.white, ink: INK.ink });
  pen.path('M-24 10.5v5M-18.5 10.5v5M-13 10.5v5M-7.5 10.5v5M-2 10.5v5M3.5 10.5v5', { ink: INK.ink, width: 2.2 });
  pen.path('M-30 8V3Q-30 -6 -21 -6H9V-25H27V-2Q27 8 15 8Z', { fill: INK.pump, ink: INK.ink, width: 2.4 });
  pen.path('M-20 2.5H6Q18 2.5 18 -8V-17M14.5 -13L18 -18L21.5 -13', { ink: '#BFEFF8', width: 2.2 });
  pen.path('M6.5 -30H29.5V-25H6.5Z', { fill: INK.steel, ink: INK.ink });
  pen.path('M-25 -6V-29Q-25 -34 -20 -34H-6Q-1 -34 -1 -29V-6Z', { fill: INK.steel, ink: INK.ink, width: 2.2 });
  pen.path('M-25 -12H-1M-25 -17H-1M-25 -22H-1', { ink: INK.ink, width: 1.5 });
  pen.path('M-16.5 -30.5h7v4h-7Z', { fill: on ? '#8FE3B0' : '#6B5A55', ink: INK.ink, width: 1.2 });
}

/**
 * Air pump on its board, open to the eye: a coil moves a diaphragm in bellows, and three hoses leave its valve head; the air line begins at
 * its left.
 */
export function airPump(pen: Pen): void {
  hose(pen, 'M-37 -9C-46 -9 -45 0 -54 0M-37 8C-46 8 -45 0 -54 0M-37 -0.5H-54');
  pen.path('M-44 15H40V21H-44Z', { fill: INK.steel, ink: INK.ink });
  pen.path('M8 -17H36V15H8Z', { fill: INK.steelDark, ink: INK.ink, width: 2.2 });
  pen.path('M13 -17V15M31 -17V15', { ink: INK.ink, width: 1 });
  pen.path('M15 -10H29V9H15Z', { fill: INK.airPump, ink: INK.ink, width: 1.8 });
  pen.path('M15 -6.2H29M15 -2.4H29M15 1.4H29M15 5.2H29', { ink: INK.ink, width: 1.2 });
  pen.path('M8 -4H0V3H8', { ink: INK.ink, width: 2.4 });
  pen.path('M-20 -13L-16 -10L-12 -13L-8 -10L-4 -13L0 -10V9L-4 12L-8 9L-12 12L-16 9L-20 12Z', { fill: INK.mat, ink: INK.ink });
  pen.path('M-16 -10V9M-12 -13V12M-8 -10V9M-4 -13V12', { ink: INK.ink, width: 1.2 });
  pen.path('M-30 -13H-20V15H-30Z', { fill: INK.pipe, ink: INK.ink });
  for (const y of [-9, -0.5, 8]) pen.path(`M-30 ${y - 3}H-37V${y + 3}H-30Z`, { fill: INK.white, ink: INK.ink, width: 1.6 });
}

/** Arrowhead along the flow, centred. */
export function arrowHead(pen: Pen, x: number, y: number, turn: number, scale: number): void {
  pen.at(
    x,
    y,
    () => {
      pen.path('M-9 -8L9 0L-9 8L-4.5 0Z', { ink: INK.white, width: 4.4 });
      pen.path('M-9 -8L9 0L-9 8L-4.5 0Z', { fill: INK.ink });
    },
    turn,
    scale,
  );
}

/** Sign of a water level: a triangle that stands on the surface, and two strokes under it. */
export function levelSign(pen: Pen, x: number, y: number): void {
  pen.at(x, y, () => {
    pen.path('M-7 -12H7L0 -1Z', { fill: INK.white, ink: INK.ink, width: 1.6 });
    pen.path('M-6 4H6M-3.5 8H3.5', { ink: INK.ink, width: 1.5 });
  });
}

/** Air hose along path data. */
export function hose(pen: Pen, d: string): void {
  pen.path(d, { ink: INK.ink, width: 4.2 });
  pen.path(d, { ink: '#FBE3C8', width: 1.8 });
}
