// How many fish are drawn for those of a tank, how large, and where each goes its rounds.

/** At most so many fish are drawn; each stands for an equal share of those stocked. */
export const MOST_FISH = 12;
/** A fish of this mass is drawn at this scale of its art; length grows with the cube root of mass. */
export const REFERENCE_g = 50;
export const REFERENCE_SCALE = 0.35;
const SMALLEST = 0.22;
export const LARGEST = 0.8;

/** How many fish to draw for so many alive, of so many stocked. */
export function fishShown(alive: number, stocked: number): number {
  if (!(alive >= 0.5) || stocked <= 0) return 0;
  if (stocked <= MOST_FISH) return Math.min(MOST_FISH, Math.round(alive));
  return Math.max(1, Math.min(MOST_FISH, Math.round((MOST_FISH * alive) / stocked)));
}

/** Scale of the art for a fish of this mass, g. */
export function fishScale(mass_g: number): number {
  return Math.max(SMALLEST, Math.min(LARGEST, REFERENCE_SCALE * Math.cbrt(Math.max(1, mass_g) / REFERENCE_g)));
}

/** Depth and middle of each fish's round, spread so that any first few of them fill the tank evenly. */
export const LANES = [5, 9, 1, 7, 3, 11, 0, 6, 10, 2, 8, 4] as const;
export const CENTRES = [0.5, 0.2, 0.75, 0.85, 0.2, 0.65, 0.3, 0.12, 0.9, 0.45, 0.6, 0.82] as const;
