// How large words and numbers in the picture are at least: for one person at a screen, and for a class before a wall.
import { LEAST_TEXT_px } from '../kit/pen';

/** Heights of type on the page, px. inSoil: numbers stand in the ground under their tanks, so that large ones hide no fish and no roots. */
export interface Legible {
  text_px: number;
  number_px: number;
  inSoil: boolean;
}

export const FOR_ONE: Legible = { text_px: LEAST_TEXT_px, number_px: 21, inSoil: false };
/** Of a page 720 px high. */
export const FOR_A_CLASS: Legible = { text_px: 24, number_px: 29, inSoil: true };

/** On a page lower than this numbers are smaller, px; and never smaller than this. */
const LOW_px = 600;
const LEAST_NUMBER_px = 17;

/** The sizes for one person at a page of this height. */
export function forOne(height_px: number): Legible {
  return { ...FOR_ONE, number_px: Math.max(LEAST_NUMBER_px, Math.min(FOR_ONE.number_px, (FOR_ONE.number_px * height_px) / LOW_px)) };
}

/** On a lower page the soil is too shallow for a number. */
const LEAST_SOIL = 0.75;

/** The same sizes on a page of another height. */
export function scaled(legible: Legible, times: number): Legible {
  return {
    inSoil: legible.inSoil && times >= LEAST_SOIL,
    text_px: Math.max(LEAST_TEXT_px, legible.text_px * times),
    number_px: Math.max(FOR_ONE.number_px, legible.number_px * times),
  };
}
