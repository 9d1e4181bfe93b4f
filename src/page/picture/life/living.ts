// Which fish and crops a plan has, over all its days, and which of them live in a stage at a moment. Pure.
import type { Plan } from '../kit/terms';
import { ANY_CROP, ANY_SPECIES } from '../scene/drawingOf';

/** Species and crops to be drawn; each set holds at least one, so that a picture is never without. */
export interface Living {
  species: ReadonlySet<string>;
  crops: ReadonlySet<string>;
}

export function livingOf(plan: Plan): Living {
  const species = new Set<string>(plan.fish.map((group) => group.species));
  const crops = new Set<string>();
  for (const stage of plan.loop) if (stage.crop !== undefined) crops.add(stage.crop.kind);
  for (const action of plan.actions) {
    if (action.do === 'stock') species.add(action.species);
    if (action.do === 'plant') crops.add(action.crop);
  }
  if (species.size === 0) species.add(ANY_SPECIES);
  if (crops.size === 0) crops.add(ANY_CROP);
  return { species, crops };
}

/** A word that changes with what is to be drawn. */
export const livingKey = ({ species, crops }: Living): string => [...species, ...crops].join(' ');

/**
 * Crop of a bed at an hour: the one planted last, by the plan or by hand.
 * @returns null before anything is planted
 */
export function cropAt(plan: Plan, stageId: string, now: { now_h: number }): string | null {
  const { now_h } = now;
  let crop: string | null = null;
  let since = -1;
  for (let i = 0; i < plan.loop.length; i += 1) {
    const stage = plan.loop[i];
    if (stage.id !== stageId || stage.crop === undefined || stage.crop.plantedDay * 24 > now_h) continue;
    crop = stage.crop.kind;
    since = stage.crop.plantedDay * 24;
  }
  for (let i = 0; i < plan.actions.length; i += 1) {
    const action = plan.actions[i];
    if (action.do !== 'plant' || action.stage !== stageId) continue;
    const hour = (action.day ?? action.from ?? 0) * 24 + (action.hour ?? 0);
    if (hour <= now_h && hour >= since) {
      crop = action.crop;
      since = hour;
    }
  }
  return crop;
}

/** Species in a tank: the first that was stocked there. @returns null where none ever is */
export function speciesIn(plan: Plan, tankId: string): string | null {
  for (let i = 0; i < plan.fish.length; i += 1) if (plan.fish[i].tank === tankId) return plan.fish[i].species;
  for (let i = 0; i < plan.actions.length; i += 1) {
    const action = plan.actions[i];
    if (action.do === 'stock' && action.tank === tankId) return action.species;
  }
  return null;
}
