// The drawings of the catalogue, by kind.
import { cropDrawings, speciesDrawings, stageDrawings } from '../../../catalogue/drawings';
import type { CropDrawing } from '../kit/crops';
import type { FishForm } from '../kit/fishForm';
import type { PumpDrawing, SideDrawing, StageDrawing } from '../kit/kit';

const drawn = (kind: string, place: string): Error => new Error(`the stage ${kind} has no drawing for its place: ${place}`);

/** The drawing of a kind that stands in the loop and holds water. */
export function drawingOf(kind: string): StageDrawing {
  const drawing = stageDrawings[kind];
  if (drawing?.place !== 'loop') throw drawn(kind, 'in the loop');
  return drawing;
}

/** The drawing of a kind that stands beside the loop. */
export function sideDrawingOf(kind: string): SideDrawing {
  const drawing = stageDrawings[kind];
  if (drawing?.place !== 'pit' && drawing?.place !== 'overRim') throw drawn(kind, 'beside the loop');
  return drawing;
}

/** The drawing of a kind that lifts the water out of the last tank. */
export function pumpDrawingOf(kind: string): PumpDrawing {
  const drawing = stageDrawings[kind];
  if (drawing?.place !== 'inTank') throw drawn(kind, 'in the last tank');
  return drawing;
}

/** Whether a kind lifts the water back to the top of the loop. */
export const lifts = (kind: string): boolean => stageDrawings[kind]?.place === 'inTank';

/** Whether fish or plants live in a kind, so that its water is judged. */
export const isHome = (kind: string): boolean => {
  const drawing = stageDrawings[kind];
  return drawing?.place === 'loop' && drawing.lives !== undefined;
};

/** Whether plants stand in a kind. */
export const grows = (kind: string): boolean => {
  const drawing = stageDrawings[kind];
  return drawing?.place === 'loop' && (drawing.lives === 'plants' || drawing.lives === 'leaningPlants');
};

/** The drawing of a crop. */
export function cropDrawing(crop: string): CropDrawing {
  const drawing = cropDrawings[crop];
  if (drawing === undefined) throw new Error(`the crop ${crop} has no drawing`);
  return drawing;
}

/** How a fish of a species is built. */
export function fishForm(species: string): FishForm {
  const form = speciesDrawings[species];
  if (form === undefined) throw new Error(`the species ${species} has no drawing`);
  return form;
}

/** What is drawn where a plan has none, so that a picture is never without. */
export const [ANY_CROP] = Object.keys(cropDrawings);
export const [ANY_SPECIES] = Object.keys(speciesDrawings);
