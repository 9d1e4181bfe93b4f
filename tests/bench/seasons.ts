// The loops that the bench times, from four stages to a dozen long beds.
import type { Plan, StageSpec } from '../../src/season/plan';
import { referencePlan } from '../season/plans';

const known = new Map<string, StageSpec>(referencePlan().loop.map((stage) => [stage.id, stage]));
const named = (id: string, as = id): StageSpec => {
  const stage = known.get(id);
  if (!stage) throw new RangeError(`the reference has no stage ${id}`);
  return { ...stage, id: as };
};

function plan(loop: StageSpec[], days: number): Plan {
  const base = referencePlan();
  const ids = new Set(loop.map(({ id }) => id));
  return {
    ...base,
    days,
    loop,
    actions: base.actions.filter((action) => !('stage' in action) || action.stage === undefined || ids.has(action.stage)),
  };
}

export const fourStages = (days: number): Plan =>
  plan([named('fish'), named('settler'), named('rafts'), named('sump'), named('pump')], days);
export const eightStages = (days: number): Plan =>
  plan(
    [
      named('fish'),
      named('settler'),
      named('mats'),
      named('degas'),
      named('rafts'),
      named('rafts', 'rafts2'),
      named('sump'),
      named('pump'),
      named('degas', 'degas2'),
    ],
    days,
  );
/** So many beds of three cells each. */
export const manyBeds = (beds: number, days: number): Plan =>
  plan(
    [
      named('fish'),
      named('settler'),
      named('mats'),
      named('degas'),
      ...Array.from({ length: beds }, (_, i) => named('rafts', `rafts${i}`)),
      named('sump'),
      named('pump'),
    ],
    days,
  );
