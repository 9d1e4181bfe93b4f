// What is drawn as dirt in a stage must be something the model tells of that kind: a reading that never leaves zero would draw a stage that
// is never dirty.
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readLesson } from '../../../src/lessons/readLesson';
import type { Plan, StageSpec } from '../../../src/season/plan';
import { runSeason } from '../../../src/season/season';
import { BLOCKAGE } from '../../../src/page/picture/kit/loads';
import { drawingOf } from '../../../src/page/picture/scene/drawingOf';

const DAYS = 3;
const ALL: StageSpec[] = [
  { id: 'mats', kind: 'fineFilter', volume_m3: 0.15 },
  { id: 'screen', kind: 'drumFilter', volume_m3: 0.05, mesh_um: 60 },
  { id: 'bead', kind: 'beadFilter', volume_m3: 0.05 },
  { id: 'sand', kind: 'sandFilter', volume_m3: 0.05 },
  { id: 'cartridge', kind: 'cartridgeFilter', volume_m3: 0.02 },
  { id: 'gravel', kind: 'mediaBed', area_m2: 2, depth_m: 0.3 },
  { id: 'packing', kind: 'tricklingFilter', media_m3: 0.2, height_m: 1.2 },
  { id: 'tower', kind: 'tower', area_m2: 2, height_m: 1.6 },
];

/** A fed loop with this one stage between the fish and the sump. */
function planWith(stage: StageSpec): Plan {
  const read = readLesson(readFileSync('levels/00-first-loop.json', 'utf8'));
  if (!('lesson' in read)) throw new Error('the first lesson cannot be read');
  const { plan } = read.lesson;
  const [fish, ...rest] = plan.loop;
  return { ...plan, days: DAYS, loop: [fish, stage, ...rest], actions: [{ day: 0, do: 'feed', tank: fish.id, g_d: 60 }] };
}

/** Largest share of its full look that a stage reaches in the season. */
function dirtiest(stage: StageSpec): number {
  const season = runSeason(planWith(stage));
  const load = drawingOf(stage.kind).dirt?.(stage) ?? BLOCKAGE;
  const place = season.stages.find(({ id }) => id === stage.id);
  if (place === undefined) throw new Error('the stage is not in the season');
  const width = season.variables.length;
  const column = season.variables.indexOf(load.variable);
  let most = 0;
  for (const { hourly } of season.days)
    for (let k = 0; k < 24; k += 1) most = Math.max(most, hourly[(k * season.cells + place.first) * width + column] / load.full);
  return most;
}

describe('dirt', () => {
  it.each(ALL.map((stage) => [stage.kind, stage] as const))('of a %s is told by the model once fish have been fed', (_kind, stage) => {
    expect(dirtiest(stage)).toBeGreaterThan(0.0005);
  });
});
