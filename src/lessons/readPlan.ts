// The gate for plans from outside: text in, a complete plan or the list of what is wrong out. Never throws.
import type { Plan } from '../season/plan';
import type { CompositionRead } from './compositionSchema';
import { parseJson } from './jsonText';
import type { Problem } from './problem';
import { asMeasured, lacking } from './measured';
import type { Surroundings } from './measured';
import type { OldFile } from './oldFormats';
import { asWritten, planOfToday } from './oldFormats';
import { checkPlan } from './planChecks';
import type { PlanInput, PlanRead } from './planSchema';
import { planSchema } from './planSchema';
import { describe, problemsOf } from './problems';
import { fromTheStart, quantise } from './quantise';

/** Writes out what was left out and brings sizes and settings to their steps. Throws where the shape is wrong. */
export function withDefaults(plan: PlanInput): Plan {
  return complete(planSchema.parse(plan));
}

/** What the parts of a plan say together and so cannot stand in the schema. */
export function complete(read: PlanRead): Plan {
  const { open, rig } = surroundings(read);
  const plain = { ...read };
  delete plain.$schema;
  return quantise({
    ...plain,
    source: asMeasured(read.source, open),
    start: { ...read.start, water: read.start.water === 'source' ? 'source' : asMeasured(read.start.water, rig) },
    actions: read.actions.map(fromTheStart),
    rig: read.rig === null ? null : { ...read.rig, inflow: asMeasured(read.rig.inflow, rig) },
  });
}

/** Where a plan's waters stand: in the open, and in the rig with what it holds. */
function surroundings(read: PlanRead): { open: Surroundings; rig: Surroundings } {
  const T_C = read.climate.water_C ?? Math.min(40, Math.max(0.5, read.climate.air_C.mean));
  return { open: { T_C }, rig: { T_C: read.rig?.hold?.T_C ?? T_C, pH: read.rig?.hold?.pH } };
}

/** Waters that name a derived quantity without what it takes to resolve it; paths as in the plan. */
export function unresolved(read: PlanRead): Problem[] {
  const { open, rig } = surroundings(read);
  const waters: [string, CompositionRead | null, Surroundings][] = [
    ['source', read.source, open],
    ['start.water', read.start.water === 'source' ? null : read.start.water, rig],
    ['rig.inflow', read.rig?.inflow ?? null, rig],
  ];
  return waters.flatMap(([path, water, around]) => {
    const lack = water === null ? null : lacking(water, around);
    return water === null || lack === null
      ? []
      : [{ path: `${path}.${lack.key}`, got: describe(water[lack.key]), expected: lack.expected }];
  });
}

/** The gate for a value already parsed. `old`: the file was of an older format, and what was changed in it. */
export function readPlanValue(written: unknown): { plan: Plan; old?: OldFile } | { problems: Problem[] } {
  const { value, old } = planOfToday(written);
  const shape = planSchema.safeParse(value);
  if (!shape.success) return { problems: asWritten(problemsOf(shape.error, value), old) };
  const plan = complete(shape.data);
  const problems = [...unresolved(shape.data), ...checkPlan(plan)];
  if (problems.length > 0) return { problems: asWritten(problems, old) };
  return old === undefined ? { plan } : { plan, old };
}

export function readPlan(text: string): ReturnType<typeof readPlanValue> {
  const parsed = parseJson(text);
  return 'problems' in parsed ? parsed : readPlanValue(parsed.value);
}
