// The worker's memory of the last seasons: their chunks and midnight checkpoints, so that a change recomputes only what follows it.
import type { Plan } from '../season/plan';
import { skyOf } from '../season/climate';
import { dueOn } from '../season/schedule';
import { Season } from '../season/season';
import type { Checkpoint } from '../season/season';
import { VARIABLES } from '../season/trajectory';
import type { DayChunk } from '../season/trajectory';
import { PROCESS_NAMES } from '../model/processes/catalogue';
import type { SeasonAnswer } from './messages';

interface Lived {
  plan: Plan;
  season: Season;
  chunks: DayChunk[];
  checkpoints: Checkpoint[];
  initial: Float32Array;
  plantsWeight: number | undefined;
}

const bare = (plan: Plan): string => JSON.stringify({ ...plan, title: '', actions: [] });

/** First day on which two plans of one design differ. */
function differFrom(a: Plan, b: Plan): number {
  if (bare(a) !== bare(b)) return 0;
  for (let day = 0; day < b.days; day++) if (JSON.stringify(dueOn(a, day)) !== JSON.stringify(dueOn(b, day))) return day;
  return b.days;
}

/** Seasons kept: the present one, the one it is compared with, and two that are shown side by side. */
const KEPT = 4;

export function createRuns(): { run(plan: Plan, keepDays: number, plantsWeight?: number): SeasonAnswer } {
  let kept: Lived[] = [];
  return {
    run(plan, keepDays, plantsWeight) {
      // the season that shares most days with this plan
      let last: Lived | null = null;
      let shared = 0;
      for (const lived of kept) {
        const days = Math.min(differFrom(lived.plan, plan), lived.chunks.length);
        if (last !== null && days <= shared) continue;
        last = lived;
        shared = days;
      }
      const from = shared > 0 && last ? last.checkpoints[shared - 1] : undefined;
      // a season that is kept whole is answered as it stands
      const season =
        last && shared === plan.days && last.season.day === plan.days && last.plantsWeight === plantsWeight
          ? last.season
          : new Season(plan, { plantsWeight }, from);
      const initial = shared > 0 && last ? last.initial : season.initialRows();
      const chunks = last ? last.chunks.slice(0, shared) : [];
      const checkpoints = last ? last.checkpoints.slice(0, shared) : [];
      while (season.day < plan.days) {
        chunks.push(season.liveDay());
        checkpoints.push(season.checkpoint());
      }
      kept = [
        { plan, season, chunks, checkpoints, initial, plantsWeight },
        ...kept.filter((lived) => lived !== last || shared < lived.chunks.length),
      ].slice(0, KEPT);
      const firstDay = Math.max(0, Math.min(shared, keepDays));
      return {
        stages: season.stages(),
        cells: season.runtime.assembly.cells.length,
        variables: VARIABLES,
        processNames: [...PROCESS_NAMES],
        initial,
        firstDay,
        days: chunks.slice(firstDay),
        summary: season.summary(),
        sky: skyOf(plan.climate, season.runtime.weather),
      };
    },
  };
}
