// What tells how dirty a stage's filling is: blockage where the model reckons it, else the solids it has caught against what looks full. Pure.
import type { StageSpec } from './terms';

/** A reading, and its value at which the filling is drawn full of dirt. */
export interface Load { variable: 'clog' | 'caught_g'; full: number }

/** Solids at which packing and matting look full: g/m³ of packing, g/m² of a tower's face. Only the drawing depends on them. */
const PACKING_FULL_g_m3 = 120;
const TOWER_FULL_g_m2 = 60;
/** Sizes of a stage that its plan leaves out, as the catalogue takes them. */
const USUAL_PACKING_m3 = 0.2;
const USUAL_FACE_m2 = 2;

/** The load of a stage: a trickling filter and a tower never block, so only what they have caught tells how dirty they are. */
export function loadOf(spec: StageSpec): Load {
  const units = spec.count ?? 1;
  if (spec.kind === 'tricklingFilter') return { variable: 'caught_g', full: PACKING_FULL_g_m3 * (spec.media_m3 ?? USUAL_PACKING_m3) * units };
  if (spec.kind === 'tower') return { variable: 'caught_g', full: TOWER_FULL_g_m2 * (spec.area_m2 ?? USUAL_FACE_m2) * units };
  return { variable: 'clog', full: 1 };
}
