// Levels, falls and stands of a design, before any run: gravity stages fall 5 cm each, the sump stands in a pit,
// stages after the pump stand above the fish tank's rim and pour into it.
import { can, pumpAt } from '../catalogue/can';
import { stageType } from '../catalogue/stageTypes';
import type { Values } from '../model/parameters/values';
import { FALL_M } from './assemble';
import type { Plan, StageSpec } from './plan';

export interface StageLevel {
  id: string;
  kind: string;
  level_m: number;
  floor_m: number;
  depth_m: number;
  width_m: number;
  height_m: number;
  volume_m3: number;
  fall_m: number;
  retention_min: number;
}
export interface Design {
  stages: StageLevel[];
  totalVolume_m3: number;
  lift_m: number;
  problems: { stage: string; key: string; values: Record<string, number> }[];
}

/** m: least height of a tank's underside over the floor, the sump's water below the floor, what a rim stands over its water */
const LEAST_STAND = 0.05;
const SUMP_LEVEL = -0.2;
const RIM = 0.12;

export function designOf(plan: Plan, values: Values): Design {
  const entries = plan.loop.map((spec) => ({
    spec,
    type: stageType(spec.kind),
    vessel: stageType(spec.kind).vessel({ ...stageType(spec.kind).defaults, ...spec }, values),
  }));
  const pump = pumpAt(plan.loop);
  const gravity = pump < 0 ? entries : entries.slice(0, pump);
  const lifted = pump < 0 ? [] : entries.slice(pump + 1);
  // A stage that costs head falls that much more to the next.
  const perDay = (plan.loop[pump]?.flow_m3_h ?? 1) * 24;
  const falls = gravity.map(({ spec, type }) => FALL_M + (type.loss?.({ ...type.defaults, ...spec }, perDay, 0, values) ?? 0));
  const fallen = falls.map((_, i) => falls.slice(0, i).reduce((sum, fall) => sum + fall, 0));
  // The first tank stands just high enough that every later one still stands on the floor.
  const tops = gravity.map(({ type, vessel }, i) => (type.lowest ? 0 : vessel.depth_m + LEAST_STAND + fallen[i]));
  const first = Math.max(...tops, 0.4);
  const levels = new Map<string, number>();
  let level = first;
  gravity.forEach(({ spec, type }, i) => {
    if (i > 0) level = type.lowest ? Math.min(SUMP_LEVEL, level - falls[i - 1]) : level - falls[i - 1];
    if (spec.stand_m !== undefined) level = spec.stand_m + entries[i].vessel.depth_m;
    levels.set(spec.id, level);
  });
  lifted.forEach(({ spec, vessel }, i) =>
    levels.set(
      spec.id,
      spec.stand_m === undefined
        ? (levels.get(entries[0].spec.id) ?? first) + RIM + FALL_M * (lifted.length - i)
        : spec.stand_m + vessel.depth_m,
    ),
  );
  const lowest = Math.min(...gravity.map(({ spec }) => levels.get(spec.id) ?? first));
  const top = lifted.length > 0 ? (levels.get(lifted[0].spec.id) ?? first) : first;
  const flow = (plan.loop[pump]?.flow_m3_h ?? 0) / 60;
  const at = (spec: StageSpec | undefined): number => (spec ? (levels.get(spec.id) ?? lowest) : first);
  const stages = entries.map(({ spec, type, vessel }, i): StageLevel => {
    const sizes = { ...type.defaults, ...spec };
    const volume = type.volume(sizes, values);
    const own = at(spec);
    const next = plan.loop[(i + 1) % plan.loop.length];
    const following = next !== undefined && can(next.kind, 'pumps') ? own : at(next);
    return {
      id: spec.id,
      kind: spec.kind,
      level_m: own,
      floor_m: own - vessel.depth_m,
      ...vessel,
      volume_m3: volume,
      fall_m: i === pump ? lowest - top : own - following,
      retention_min: flow > 0 ? volume / flow : 0,
    };
  });
  const problems: Design['problems'] = [];
  if (!plan.loop.some((stage) => stageType(stage.kind).group === 'growPlants'))
    problems.push({ stage: '', key: 'design.noPlants', values: {} });
  if (!plan.loop.some((stage) => stageType(stage.kind).group === 'catchSolids'))
    problems.push({ stage: '', key: 'design.noSolids', values: {} });
  if (!plan.rig && pump < 0) problems.push({ stage: '', key: 'design.noPump', values: {} });
  for (const stage of stages)
    if (!can(stage.kind, 'lowest') && !can(stage.kind, 'pumps') && stage.floor_m < -1e-9)
      problems.push({ stage: stage.id, key: 'design.inGround', values: { cm: Math.round(-100 * stage.floor_m) } });
  return { stages, totalVolume_m3: stages.reduce((sum, stage) => sum + stage.volume_m3, 0), lift_m: top - lowest, problems };
}
