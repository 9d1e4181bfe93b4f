// The steps in which a plan's sizes and settings are kept, so that a plan written out reads back as itself.
import { takesSolids } from '../season/plan';
import type { Action, Plan, StageSpec } from '../season/plan';

const toStep = (value: number, perUnit: number): number => Math.round(value * perUnit) / perUnit;
const litre = (m3: number): number => toStep(m3, 1000);
const airStep = (L_min: number): number => toStep(L_min, 10);

/** Below this a depth is a film, and counts by the millimetre. */
const SHALLOW_m = 0.05;

/** A part as it stands in a plan that is no rig. */
export function quantiseStage(stage: StageSpec): StageSpec {
  return {
    ...stage,
    ...(stage.volume_m3 === undefined ? {} : { volume_m3: litre(stage.volume_m3) }),
    ...(stage.media_m3 === undefined ? {} : { media_m3: litre(stage.media_m3) }),
    ...(stage.area_m2 === undefined ? {} : { area_m2: toStep(stage.area_m2, 100) }),
    ...(stage.depth_m === undefined ? {} : { depth_m: toStep(stage.depth_m, stage.depth_m < SHALLOW_m ? 1000 : 100) }),
    ...(stage.height_m === undefined ? {} : { height_m: toStep(stage.height_m, 100) }),
    ...(stage.stand_m === undefined ? {} : { stand_m: toStep(stage.stand_m, 100) }),
    ...(stage.pipe_mm === undefined ? {} : { pipe_mm: toStep(stage.pipe_mm, 10) }),
    ...(stage.lamp_W === undefined ? {} : { lamp_W: Math.round(stage.lamp_W) }),
    ...(stage.mesh_um === undefined ? {} : { mesh_um: Math.round(stage.mesh_um) }),
    ...(stage.air_L_min === undefined ? {} : { air_L_min: airStep(stage.air_L_min) }),
  };
}

/** An action as it stands in a plan that is no rig; what is done again and again begins at day 0 unless it says otherwise. */
export function quantiseAction(read: Action): Action {
  const action = fromTheStart(read);
  if (action.do === 'air') return { ...action, L_min: airStep(action.L_min) };
  if (action.do === 'feed') return { ...action, g_d: Math.round(action.g_d) };
  return action;
}

/** Writes out where a repeated action begins. */
export function fromTheStart(action: Action): Action {
  return action.every_d === undefined ? action : { ...action, from: action.from ?? 0 };
}

/**
 * Sizes to the litre (area to 0.01 m², depth and height to the centimetre, a film's depth to the millimetre, lamps to the watt, meshes to
 * the µm), air to 0.1 L/min, feed to the gram a day. A rig keeps its numbers as given: bench vessels are smaller than these steps.
 */
export function quantise(plan: Plan): Plan {
  if (plan.rig !== null) return plan;
  return {
    ...plan,
    loop: plan.loop.map(quantiseStage),
    side: plan.side.map((side) =>
      takesSolids(side) ? { ...side, volume_m3: litre(side.volume_m3), air_L_min: airStep(side.air_L_min) } : side,
    ),
    actions: plan.actions.map(quantiseAction),
  };
}
