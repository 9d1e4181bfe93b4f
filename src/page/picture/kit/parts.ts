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
    for (let b = x + (row % 2 ? 20 : 0); b < x + w; b += 40) if (b > x) bricks += `M${b} ${y + row * 11}V${Math.min(y + h, y + row * 11 + 11)}`;
  }
  pen.path(bricks, { ink: INK.blockDark, width: 1.4 });
  pen.rect(x + w - 12, y, 12, h, { fill: '#5B4A2A', alpha: 0.16 });
  pen.rect(x, y, w, h, { ink: INK.ink, width: 2.2 });
}

/** Wooden table: a top and three legs, down to the ground at y = 0. */
export function table(pen: Pen, x: number, y: number, w: number, legs: number): void {
  for (let i = 0; i < legs; i += 1) pen.rect(x + 14 + ((w - 40) * i) / (legs - 1), y + 8, 12, -y - 8, { fill: INK.wood, ink: INK.ink, width: 2.2 });
  if (-y > 60) pen.rect(x + 20, y + (-y) * 0.62, w - 40, 6, { fill: INK.wood, ink: INK.ink, width: 1.6 });
  pen.rect(x, y, w, 9, { fill: INK.wood, ink: INK.ink, width: 2.2 });
}

/** Air stone, centred. */
export function stone(pen: Pen, x: number, y: number, w: number): void {
  pen.rect(x - w / 2, y - 5, w, 10, { fill: INK.steel, ink: INK.ink, width: 1.8 }, 4);
  for (let i = 0; i < Math.floor(w / 8); i += 1) pen.circle(x - w / 2 + 6 + i * 8, y, 1.2, { fill: INK.steelDark });
}

/** One carrier of film media, centred. */
export function carrier(pen: Pen, x: number, y: number, scale: number, turn: number): void {
  pen.at(x, y, () => {
    pen.circle(0, 0, 7, { fill: INK.media, ink: INK.mediaDark, width: 2 });
    pen.path('M-7 0H7M0 -7V7', { ink: INK.mediaDark, width: 1.6 });
    pen.circle(0, 0, 2.6, { fill: mix(INK.media, INK.biofilm, 0.55), ink: INK.mediaDark, width: 1.4 });
  }, turn, scale);
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

/** Submersible pump, centred; its lamp is lit while it runs. */
export function pump(pen: Pen, on: boolean): void {
  pen.rect(-26, -16, 52, 34, { fill: INK.pump, ink: INK.ink, width: 2.4 }, 7);
  pen.circle(-2, 1, 11, { fill: INK.steel, ink: INK.ink });
  pen.path('M-9 1a7 7 0 0 1 9 -6.6M5 1a7 7 0 0 1 -9 6.6', { ink: INK.ink });
  pen.rect(12, -28, 13, 14, { fill: INK.pump, ink: INK.ink }, 2);
  for (let i = 0; i < 4; i += 1) pen.rect(-22 + i * 12, 18, 6, 5, { fill: INK.ink });
  pen.circle(-18, -9, 2.8, { fill: on ? '#8FE3B0' : '#6B5A55', ink: INK.ink, width: 1 });
}

/** Air pump, centred on its body. */
export function airPump(pen: Pen): void {
  pen.rect(-34, -20, 68, 38, { fill: INK.airPump, ink: INK.ink, width: 2.4 }, 8);
  pen.rect(-26, -12, 30, 22, { fill: '#F4D2B4', ink: INK.ink, width: 1.6 }, 4);
  for (let i = 0; i < 3; i += 1) pen.line(-22, -7 + i * 6, 0, -7 + i * 6, { ink: INK.ink, width: 1.6 });
  pen.circle(18, -1, 7.5, { fill: INK.steel, ink: INK.ink });
  pen.path('M18 -1l4 -4', { ink: INK.ink });
  pen.rect(-28, 18, 10, 6, { fill: INK.ink });
  pen.rect(18, 18, 10, 6, { fill: INK.ink });
}

/** Arrowhead along the flow, centred. */
export function arrowHead(pen: Pen, x: number, y: number, turn: number, scale: number): void {
  pen.at(x, y, () => {
    pen.path('M-9 -8L9 0L-9 8L-4.5 0Z', { ink: INK.white, width: 4.4 });
    pen.path('M-9 -8L9 0L-9 8L-4.5 0Z', { fill: INK.ink });
  }, turn, scale);
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
