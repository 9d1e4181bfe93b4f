// The sheets of small moving pictures: what all stages share, rain, fish, plants and their roots.
import { bits } from '../kit/bits';
import { FISH_FRAME, fishOf } from '../kit/fishForm';
import type { Sheet, SheetEntry, Studio } from '../kit/studio';
import { cropDrawing, fishForm } from '../scene/drawingOf';
import { RAINDROP } from '../weather/raindrop';
import type { Living } from './living';
import { roots, ROOTS_FRAME } from './rootsArt';

export interface Sheets {
  bits: Sheet;
  fish: Sheet;
  plants: Sheet;
  living: Living;
}

/** Moments of the tail beat that are drawn, from left to right. */
export const BEAT_FRAMES = 7;
/** Size at which fish are baked; they are shown at up to 1.5 times this. */
export const FISH_BAKED = 0.6;
export const PLANT_SEEDS = 3;
export const PLANT_SIZES = [1, 2, 3, 4] as const;
/** Steps of fouling that are drawn, from clean to fouled. */
export const FOUL_STEPS = 4;

function fishes(species: ReadonlySet<string>): SheetEntry[] {
  const entries: SheetEntry[] = [];
  const frame = { x: FISH_FRAME.x * FISH_BAKED, y: FISH_FRAME.y * FISH_BAKED, w: FISH_FRAME.w * FISH_BAKED, h: FISH_FRAME.h * FISH_BAKED };
  for (const kind of species) {
    const form = fishForm(kind);
    for (const unwell of [false, true]) {
      for (let i = 0; i < BEAT_FRAMES; i += 1) {
        const bend = (2 * i) / (BEAT_FRAMES - 1) - 1;
        entries.push({
          name: fishFrame(kind, unwell, i),
          ...frame,
          draw: (pen) => pen.at(0, 0, () => fishOf(form, pen, bend, unwell), 0, FISH_BAKED),
        });
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
      const art = cropDrawing(crop);
      for (const size of PLANT_SIZES) {
        for (const stress of [false, true])
          entries.push({ name: leafFrame(crop, size, stress, seed), ...art.frame, draw: (pen) => art.draw(pen, size, stress, seed + 2) });
      }
    }
    for (let foul = 0; foul <= FOUL_STEPS; foul += 1)
      entries.push({ name: rootFrame(foul, seed), ...ROOTS_FRAME, draw: (pen) => roots(pen, foul / FOUL_STEPS, seed + 3) });
  }
  return entries;
}

/** Bakes all sheets for a scale, with the living things that a plan has, piece by piece. */
export function* bakeSheets(studio: Studio, living: Living): Generator<void, Sheets> {
  return {
    bits: yield* studio.sheetSteps([...bits(), RAINDROP]),
    fish: yield* studio.sheetSteps(fishes(living.species)),
    plants: yield* studio.sheetSteps(plants(living.crops)),
    living,
  };
}

/** The same sheets for another picture of that scale. */
export function sheetsOnto({ bits, fish, plants, living }: Sheets, studio: Studio): Sheets {
  return { bits: bits.onto(studio), fish: fish.onto(studio), plants: plants.onto(studio), living };
}
