// Derivations from the page's state: the game by its mode, what stands where, scores as they accrue, fish and feed. Pure.
import type { Lesson } from '../../../lessons/lesson';
import type { CropKind, Plan, StageKind, StageSpec } from '../../../season/plan';
import type { Scores, SeasonEvent } from '../../../season/trajectory';
import { feedInForce, lastDone_h } from '../run/inForce';
import { fishTankOf } from '../build/planEdits';
import { inletOf, readingAt } from '../run/readings';
import type { Build } from '../build/build';
import type { Lived } from '../run/lived';
import type { CatalogueEntry, ComfortBand, DesignCheck, ProcessFacts } from '../../../worker/messages';
import type { Opened, PageState } from './page';
import type { Drag, SeasonView, Speed } from './state';

type Page = Pick<PageState, 'game'>;
const NO_BANDS: readonly ComfortBand[] = [];
const NO_KINDS: readonly CatalogueEntry[] = [];

export const buildOf = ({ game }: Page): Build | null => (game.mode === 'build' ? game : null);
export const livedOf = ({ game }: Page): Lived | null => (game.mode === 'run' || game.mode === 'result' ? game : null);
/** The game with a lesson open: built, run, or over. */
export const openedOf = ({ game }: Page): Opened | null => (game.mode === 'none' || game.mode === 'class' ? null : game);

export const lessonOf = (page: Page): Lesson | null => openedOf(page)?.lesson ?? null;
export const planOf = ({ game }: Page): Plan | null => (game.mode === 'none' ? null : game.plan);
export const designOf = ({ game }: Page): DesignCheck | null => (game.mode === 'none' ? null : game.design);
export const comfortOf = ({ game }: Page): readonly ComfortBand[] => (game.mode === 'none' ? NO_BANDS : game.comfort);
/** The part in the hand. */
export const dragOf = ({ game }: Page): Drag | null => (game.mode === 'build' ? game.drag : null);
/** The season that is shown; none while building. */
export const seasonOf = ({ game }: Page): SeasonView | null => ('season' in game ? game.season : null);
/** The moment that is shown; hour 0 while building. */
export const hourOf = ({ game }: Page): number => ('now_h' in game ? game.now_h : 0);
export const speedOf = ({ game }: Page): Speed => ('speed' in game ? game.speed : 'paused');
export const catalogueOf = ({ known }: Pick<PageState, 'known'>): readonly CatalogueEntry[] => known?.catalogue ?? NO_KINDS;
export const factsOf = ({ known }: Pick<PageState, 'known'>): ProcessFacts | null => known?.facts ?? null;

/** Any stage or side branch of a plan, with its kind; null when there is none of that id. */
export function kindOf(plan: Plan, stageId: string): StageKind | null {
  return plan.loop.find((stage) => stage.id === stageId)?.kind ?? plan.side.find((side) => side.id === stageId)?.kind ?? null;
}

/** Everything a person can select, in the order of the water: the loop, then the side branches. */
export function selectable(plan: Plan): { id: string; kind: StageKind }[] {
  return [...plan.loop, ...plan.side].map(({ id, kind }) => ({ id, kind }));
}

/** Parts still on the shelf. */
export function shelfParts(lesson: Lesson, plan: Plan): StageSpec[] {
  return lesson.shelf.filter((part) => !plan.loop.some((stage) => stage.id === part.id));
}

/** Hours a season of this plan lasts. */
export function lastHour(plan: Plan): number {
  return plan.days * 24;
}

/** Scores at the end of the last whole day before a moment; null within the first day. */
export function scoresAt(view: SeasonView, now_h: number): Scores | null {
  return view.days[Math.min(view.days.length, Math.floor(now_h / 24 + 1e-9)) - 1]?.scores ?? null;
}

/** Plants and fish gain as the harvest counts them: shares of what would be had with nothing limiting, held between 0 and 1. */
export function harvestShares(scores: Scores): { plants: number; gain: number } {
  const share = (real: number, ideal: number): number => (ideal > 0 ? Math.min(1, Math.max(0, real / ideal)) : 0);
  return { plants: share(scores.plants_kg, scores.plantsIdeal_kg), gain: share(scores.gain_kg, scores.gainIdeal_kg) };
}

/** Fish alive in the first fish tank and their mean mass: from the season at a moment; without one, from the stocking of the plan. */
export function fishNow({ plan, season, now_h }: { plan: Plan; season: SeasonView | null; now_h: number }): {
  number: number;
  mass_g: number;
} {
  const tank = fishTankOf(plan);
  if (tank === null) return { number: 0, mass_g: 0 };
  if (season !== null) {
    const read = (variable: string): number => readingAt(season, tank, variable, now_h, 'inside');
    return { number: read('number'), mass_g: read('mass_g') };
  }
  const fromStart = plan.actions.flatMap((action) => (action.do === 'stock' && lastDone_h(action, 0) === 0 ? [action] : []));
  const stocked = [...plan.fish, ...fromStart].filter((group) => group.tank === tank);
  const number = stocked.reduce((sum, cohort) => sum + cohort.number, 0);
  return { number, mass_g: number > 0 ? stocked.reduce((sum, cohort) => sum + cohort.number * cohort.mass_g, 0) / number : 0 };
}

export interface WaterAt {
  in: number;
  inside: number;
  out: number;
}

/** A feed as a share of the mass of the fish, % per day; 0 when there are no fish. */
export function percentOfMass(feed_g_d: number, fish: { number: number; mass_g: number }): number {
  const mass = fish.number * fish.mass_g;
  return mass > 0 ? (100 * feed_g_d) / mass : 0;
}

/** The feed in force at an hour, g/d. */
export function feedNow(plan: Plan, hour: number): number {
  const tank = fishTankOf(plan);
  return tank === null ? 0 : feedInForce(plan, tank, hour);
}

/** Water of one stage at a moment: what comes in (the outflow of the stage upstream), inside, going out. */
export function waterOf(
  { plan, season, now_h }: { plan: Plan; season: SeasonView; now_h: number },
  stageId: string,
  variable: string,
): WaterAt {
  const from = inletOf(plan, stageId);
  return {
    in: from === null ? NaN : readingAt(season, from, variable, now_h, 'out'),
    inside: readingAt(season, stageId, variable, now_h, 'inside'),
    out: readingAt(season, stageId, variable, now_h, 'out'),
  };
}

/** Events up to a moment, oldest first. */
export function eventsUntil(view: SeasonView, hour: number): SeasonEvent[] {
  const out: SeasonEvent[] = [];
  for (const day of view.days) {
    if (day.day * 24 > hour) break;
    for (const event of day.events) if (event.hour <= hour) out.push(event);
  }
  return out;
}

/** The crop of the first bed. */
export function cropOf(plan: Plan): CropKind | null {
  return plan.loop.find((stage) => stage.crop !== undefined)?.crop?.kind ?? null;
}
