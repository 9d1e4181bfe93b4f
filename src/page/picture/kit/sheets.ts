// The sheets of small moving pictures: gas, solids, drops, fish, plants and their roots.
import { INK } from './palette';
import type { Pen } from './pen';
import { carrier, speck } from './parts';
import { cropArt } from '../life/cropArt';
import { fish } from '../life/fishArt';
import { FISH_FRAME } from '../life/fishForm';
import { roots, ROOTS_FRAME } from '../life/rootsArt';
import type { Living } from '../life/living';
import { BLOWN, STROKE } from '../weather/rain';
import type { Sheet, SheetEntry, Studio } from './studio';

export interface Sheets { bits: Sheet; fish: Sheet; plants: Sheet; living: Living }

/** Moments of the tail beat that are drawn, from left to right. */
export const BEAT_FRAMES = 7;
/** Size at which fish are baked; they are shown at up to 1.5 times this. */
export const FISH_BAKED = 0.6;
export const PLANT_SEEDS = 3;
export const PLANT_SIZES = [1, 2, 3, 4] as const;
/** Steps of fouling that are drawn, from clean to fouled. */
export const FOUL_STEPS = 4;
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

function bits(): SheetEntry[] {
  const around = (r: number): { x: number; y: number; w: number; h: number } => ({ x: -r, y: -r, w: 2 * r, h: 2 * r });
  // one frame for all sizes, so that one can take the place of another
  const entries: SheetEntry[] = [2, 3.3, 4.8].map((r, i) => ({ name: BUBBLES[i], ...around(7), draw: bubble(r) }));
  [1.3, 1.7, 2.2, 2.7].forEach((size, i) => entries.push({ name: SPECKS[i], ...around(6), draw: (pen) => speck(pen, 0, 0, size, i * 0.8) }));
  entries.push({ name: 'diamond', ...around(8), draw: (pen) => pen.path('M0 -5.5L4.5 0L0 5.5L-4.5 0Z', { fill: '#D9CBEB', ink: INK.ink, width: 1.6 }) });
  entries.push({ name: 'dash', x: -9, y: -4, w: 18, h: 8, draw: (pen) => edged(pen, 4.5, 5.6) });
  entries.push({ name: 'thin dash', x: -8, y: -3, w: 16, h: 6, draw: (pen) => edged(pen, 4, 3.4) });
  entries.push({ name: 'ring', x: -20, y: -6, w: 40, h: 12, draw: (pen) => pen.path('M-16 1q8 -6 16 0t16 0', { ink: '#fff', width: 3 }) });
  entries.push({ name: 'drop', x: -6, y: -3, w: 12, h: 16, draw: (pen) => pen.path('M0 0q-4 6 0 9q4 -3 0 -9Z', { fill: INK.base, ink: INK.ink, width: 1.3 }) });
  entries.push({ name: 'film dash', x: -13, y: -3, w: 26, h: 6, draw: (pen) => pen.line(-10, 0, 10, 0, { ink: '#fff', width: 2.6, alpha: 0.9 }) });
  entries.push({ name: 'bead', x: -5, y: -6, w: 10, h: 12, draw: (pen) => pen.path('M0 -5q-4.4 6 0 9q4.4 -3 0 -9Z', { fill: '#fff', ink: INK.ink, width: 1.2 }) });
  entries.push({ name: 'needle', x: -4, y: -10, w: 8, h: 14, draw: (pen) => { pen.path('M0 2V-8', { ink: INK.ink, width: 2 }); pen.circle(0, 0, 2.2, { fill: INK.ink }); } });
  entries.push({ name: 'rain', x: -3 - STROKE * BLOWN, y: -3 - STROKE, w: STROKE * BLOWN + 6, h: STROKE + 6, draw: (pen) => pen.line(0, 0, -STROKE * BLOWN, -STROKE, { ink: INK.blue, width: 2, alpha: 0.8 }) });
  for (const i of [0, 1]) entries.push({ name: `carrier ${i}`, ...around(9), draw: (pen) => carrier(pen, 0, 0, i === 0 ? 0.86 : 1, 0) });
  entries.push({ name: 'gas', x: -10, y: -50, w: 20, h: 52, draw: (pen) => {
    pen.path('M0 0q-6 -9 0 -18t0 -18', { ink: INK.ink, width: 2, dash: [5, 5] });
    pen.path('M-5 -38l5 -8l5 8', { ink: INK.ink, width: 2 });
  } });
  return entries;
}

function fishes(species: ReadonlySet<string>): SheetEntry[] {
  const entries: SheetEntry[] = [];
  const frame = { x: FISH_FRAME.x * FISH_BAKED, y: FISH_FRAME.y * FISH_BAKED, w: FISH_FRAME.w * FISH_BAKED, h: FISH_FRAME.h * FISH_BAKED };
  for (const kind of species) {
    for (const unwell of [false, true]) {
      for (let i = 0; i < BEAT_FRAMES; i += 1) {
        const bend = (2 * i) / (BEAT_FRAMES - 1) - 1;
        entries.push({ name: fishFrame(kind, unwell, i), ...frame, draw: (pen) => pen.at(0, 0, () => fish(pen, kind, bend, unwell), 0, FISH_BAKED) });
      }
    }
  }
  return entries;
}

export function fishFrame(species: string, unwell: boolean, beat: number): string {
  return `${species} ${unwell ? 'unwell' : 'well'} ${beat}`;
}

export function leafFrame(crop: string, size: number, stress: boolean, seed: number): string {
  return `${crop} ${stress ? 'stressed' : 'leaf'} ${size} ${seed}`;
}

export function rootFrame(foul: number, seed: number): string {
  return `root ${foul} ${seed}`;
}

function plants(crops: ReadonlySet<string>): SheetEntry[] {
  const entries: SheetEntry[] = [];
  for (let seed = 0; seed < PLANT_SEEDS; seed += 1) {
    for (const crop of crops) {
      const art = cropArt(crop);
      for (const size of PLANT_SIZES) {
        for (const stress of [false, true]) entries.push({ name: leafFrame(crop, size, stress, seed), ...art.frame, draw: (pen) => art.draw(pen, size, stress, seed + 2) });
      }
    }
    for (let foul = 0; foul <= FOUL_STEPS; foul += 1) entries.push({ name: rootFrame(foul, seed), ...ROOTS_FRAME, draw: (pen) => roots(pen, foul / FOUL_STEPS, seed + 3) });
  }
  return entries;
}

/** Bakes all sheets for a scale, with the living things that a plan has, piece by piece. */
export function* bakeSheets(studio: Studio, living: Living): Generator<void, Sheets> {
  return { bits: yield* studio.sheetSteps(bits()), fish: yield* studio.sheetSteps(fishes(living.species)), plants: yield* studio.sheetSteps(plants(living.crops)), living };
}

/** The same sheets for another picture of that scale. */
export function sheetsOnto({ bits, fish, plants, living }: Sheets, studio: Studio): Sheets {
  return { bits: bits.onto(studio), fish: fish.onto(studio), plants: plants.onto(studio), living };
}
