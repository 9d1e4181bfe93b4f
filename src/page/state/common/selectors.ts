// Derivations from the page's state: what stands where, scores as they accrue, marks, fish and feed. Pure.
import type { Lesson } from '../../../lessons/lesson';
import type { CropKind, Plan, StageKind, StageSpec } from '../../../season/plan';
import type { Scores, SeasonEvent } from '../../../season/trajectory';
import { actingHour, feedInForce, lastDone_h } from '../run/inForce';
import { fishTankOf } from '../build/planEdits';
import { inletOf, readingAt } from '../run/readings';
import type { PageState, SeasonView } from './state';

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

/** Fish alive in the first fish tank and their mean mass: from the season at this moment, else from the stocking of the plan. */
export function fishNow(state: Pick<PageState, 'plan' | 'season' | 'mode' | 'now_h'>): { number: number; mass_g: number } {
  const tank = state.plan === null ? null : fishTankOf(state.plan);
  if (state.plan === null || tank === null) return { number: 0, mass_g: 0 };
  if (state.season !== null && state.mode !== 'build') {
    return { number: readingAt(state.season, tank, 'number', state.now_h, 'inside'), mass_g: readingAt(state.season, tank, 'mass_g', state.now_h, 'inside') };
  }
  const fromStart = state.plan.actions.filter((action) => action.do === 'stock' && lastDone_h(action, 0) === 0);
  const stocked = [...state.plan.fish, ...fromStart.flatMap((action) => (action.do === 'stock' ? [action] : []))].filter((group) => group.tank === tank);
  const number = stocked.reduce((sum, cohort) => sum + cohort.number, 0);
  return { number, mass_g: number > 0 ? stocked.reduce((sum, cohort) => sum + cohort.number * cohort.mass_g, 0) / number : 0 };
}

/** A feed as a share of the mass of the fish, % per day; 0 when there are no fish. */
export function percentOfMass(feed_g_d: number, fish: { number: number; mass_g: number }): number {
  const mass = fish.number * fish.mass_g;
  return mass > 0 ? (100 * feed_g_d) / mass : 0;
}

/** The feed in force at the hour a person would act, g/d. */
export function feedNow(state: Pick<PageState, 'plan' | 'mode' | 'now_h'>): number {
  const tank = state.plan === null ? null : fishTankOf(state.plan);
  return state.plan === null || tank === null ? 0 : feedInForce(state.plan, tank, actingHour(state));
}

/** Water of one stage at a moment: what comes in (the outflow of the stage upstream), inside, going out. */
export function waterOf(state: Pick<PageState, 'plan' | 'season' | 'now_h'>, stageId: string, variable: string): { in: number; inside: number; out: number } {
  if (state.plan === null || state.season === null) return { in: NaN, inside: NaN, out: NaN };
  const from = inletOf(state.plan, stageId);
  return {
    in: from === null ? NaN : readingAt(state.season, from, variable, state.now_h, 'out'),
    inside: readingAt(state.season, stageId, variable, state.now_h, 'inside'),
    out: readingAt(state.season, stageId, variable, state.now_h, 'out'),
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
