// Which stages get air at some time of a plan: they have a hose and stones in the picture. Pure.
import type { Plan } from '../kit/terms';
import { livingKey, livingOf } from '../life/living';

/** Ids of the stages that are set to get air, or to which an action gives some. */
export function aeratedStages(plan: Plan): Set<string> {
  const ids = new Set<string>();
  for (const stage of plan.loop) if ((stage.air_L_min ?? 0) > 0) ids.add(stage.id);
  for (const action of plan.actions) if (action.do === 'air' && action.L_min > 0) ids.add(action.stage);
  return ids;
}

/** A word that changes with what a plan adds to the picture beside its loop: air, species, crops. */
export function partsKey(plan: Plan): string {
  return `${[...aeratedStages(plan)].join(' ')} / ${livingKey(livingOf(plan))}`;
}
