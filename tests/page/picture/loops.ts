// Small loops and designs for the tests of the picture: parts, levels that fall 5 cm from stage to stage, a short season.
import type { DesignCheck } from '../../../src/worker/messages';
import type { StageSpec } from '../../../src/season/plan';
import { VARIABLES } from '../../../src/season/trajectory';
import type { EventKind, SeasonEvent } from '../../../src/season/trajectory';
import type { SeasonView } from '../../../src/page/state/common/state';
import { learnKinds } from '../../../src/page/state/common/kinds';
import { catalogueEntries } from '../../../src/worker/catalogueEntries';

// as the page learns of them before it shows anything
learnKinds(catalogueEntries());

export const PARTS: Record<string, StageSpec> = {
  fish: { id: 'fish', kind: 'fishTank', volume_m3: 1, air_L_min: 30 },
  settler: { id: 'settler', kind: 'radialFlowSettler', volume_m3: 0.19 },
  mats: { id: 'mats', kind: 'fineFilter', volume_m3: 0.15 },
  degas: { id: 'degas', kind: 'degassingTank', volume_m3: 0.3, air_L_min: 40 },
  rafts: { id: 'rafts', kind: 'raftBed', area_m2: 3, depth_m: 0.3 },
  sump: { id: 'sump', kind: 'sump', volume_m3: 0.4 },
  pump: { id: 'pump', kind: 'returnPump', flow_m3_h: 1.8 },
};

export const loopOf = (...ids: string[]): StageSpec[] => ids.map((id) => PARTS[id]);

/** Levels as a builder would set them: 5 cm from stage to stage, what the pump feeds above the fish tank, the sump in a pit. */
export function designOf(loop: readonly StageSpec[]): DesignCheck {
  const pump = loop.findIndex((stage) => stage.kind === 'returnPump');
  const course = [...loop.slice(pump + 1), ...loop.slice(0, pump)];
  let level = 1.3 + 0.05 * (loop.length - 1 - pump);
  const stages = course.map((stage) => {
    const low = stage.kind === 'sump';
    const here = low ? -0.25 : level;
    if (!low) level -= 0.05;
    const depth = stage.kind === 'raftBed' ? 0.3 : 0.8;
    return {
      id: stage.id,
      kind: stage.kind,
      level_m: here,
      floor_m: here - depth,
      depth_m: depth,
      width_m: 1,
      height_m: depth + 0.1,
      volume_m3: 0.3,
      fall_m: 0.05,
      retention_min: 10,
    };
  });
  return { stages, totalVolume_m3: 3, lift_m: 1.6, problems: [] };
}

/** A season of one day whose samples are given by a rule: variable, cell and sample → value. */
export function seasonOf(
  stages: { id: string; kind: string; cells: number }[],
  rule: (variable: string, cell: number, sample: number) => number,
): SeasonView {
  let first = 0;
  const placed = stages.map((stage) => {
    const here = { ...stage, first, volume_m3: 0.3 };
    first += stage.cells;
    return here;
  });
  const at = (sample: number): number[] =>
    Array.from({ length: first }, (_, cell) => VARIABLES.map((variable) => rule(variable, cell, sample))).flat();
  const hourly = Float32Array.from(Array.from({ length: 24 }, (_, hour) => at(hour + 1)).flat());
  const scores = {
    fishHealth: 0,
    survival: 1,
    meanWelfare: 1,
    harvest: 0,
    plants_kg: 0,
    plantsIdeal_kg: 0,
    gain_kg: 0,
    gainIdeal_kg: 0,
    stewardship: 0,
    waterUsed_L: 0,
    nitrogenDischarged_g: 0,
    solidsDischarged_g: 0,
    energy_kWh: 0,
    work_h: 0,
  };
  return {
    stages: placed,
    cells: first,
    variables: VARIABLES,
    column: Object.fromEntries(VARIABLES.map((variable, i) => [variable, i])),
    processNames: [],
    initial: Float32Array.from(at(0)),
    days: [{ day: 0, hourly, extents: new Float64Array(0), scores, events: [] }],
    summary: { days: 1, scores, ledger: [], clipped: 0, steps: 0, rejections: 0 },
    sky: Float32Array.of(1),
  };
}

export const event = (hour: number, kind: EventKind, stage = '', amount = 1): SeasonEvent => ({
  hour,
  kind,
  stage,
  amount,
  byPerson: false,
});

/** A season of one tank, three days long, in which this happened. */
export function withEvents(...events: SeasonEvent[]): SeasonView {
  const view = seasonOf([{ id: 'sump', kind: 'sump', cells: 1 }], () => 0);
  return {
    ...view,
    days: [0, 1, 2].map((day) => ({ ...view.days[0], day, events: events.filter(({ hour }) => Math.floor(hour / 24) === day) })),
  };
}
