// The log of what a person did while a season ran, and how it becomes the actions of a plan.
import type { Action, Deed } from '../../../season/plan';
import type { Act, Chore } from '../common/state';

/** Hour of the day at which chores are done. */
export const CHORE_HOUR = 9;

/** Deeds that set something to a value: the last word within an hour counts. */
const SETTINGS: ReadonlySet<Deed['do']> = new Set(['feed', 'air', 'pump', 'flow', 'base', 'power', 'heater', 'light', 'setting']);

/** The deed of a chore at a stage. */
export function choreDeed(chore: Chore, stage: string): Deed {
  return { do: chore, stage };
}

function target(deed: Deed): string {
  if (deed.do === 'stock') return `${deed.tank} ${deed.species} ${deed.number} ${deed.mass_g}`;
  if ('stage' in deed) return deed.stage ?? '';
  return 'tank' in deed ? deed.tank : '';
}

function sameChore(deed: Deed, other: Deed): boolean {
  return deed.do === other.do && target(deed) === target(other);
}

/** First day on which a chore set at this hour is done. */
function firstDay(hour: number): number {
  const day = Math.floor(hour / 24);
  return hour - day * 24 <= CHORE_HOUR ? day : day + 1;
}

/**
 * Adds an act and forgets what was to come after it: acting in the past replaces the hours lived since.
 * A second word on the same thing at the same hour replaces the first.
 */
export function withAct(acts: readonly Act[], act: Act): Act[] {
  const kept = acts.filter((one) => one.hour <= act.hour);
  const replaced = kept.filter(
    (one) =>
      one.hour !== act.hour
      || !sameChore(one.deed, act.deed)
      || (one.every_d === null) !== (act.every_d === null)
      || (act.every_d === null && !SETTINGS.has(act.deed.do)),
  );
  // a chore done twice in an hour is done once; fish put in twice are twice the fish
  const twice =
    act.every_d === null
    && act.deed.do !== 'stock'
    && !SETTINGS.has(act.deed.do)
    && replaced.some((one) => one.every_d === null && one.hour === act.hour && sameChore(one.deed, act.deed));
  return twice ? replaced : [...replaced, act];
}

function endChore(actions: readonly Action[], deed: Deed, hour: number): Action[] {
  const lastDay = firstDay(hour) - 1;
  const out: Action[] = [];
  for (const action of actions) {
    if (action.every_d === undefined || !sameChore(action, deed) || (action.to ?? Infinity) <= lastDay) out.push(action);
    else if ((action.from ?? 0) <= lastDay) out.push({ ...action, to: lastDay });
  }
  return out;
}

/** The actions of the plan as they were when the season began, with the person's acts worked in. */
export function compileActions(start: readonly Action[], acts: readonly Act[]): Action[] {
  let actions = [...start];
  for (const act of acts) {
    const day = Math.floor(act.hour / 24);
    if (act.every_d === null) {
      actions.push({ day, hour: act.hour - day * 24, ...act.deed });
      continue;
    }
    actions = endChore(actions, act.deed, act.hour);
    if (act.every_d > 0) actions.push({ every_d: act.every_d, from: firstDay(act.hour), hour: CHORE_HOUR, ...act.deed });
  }
  return actions;
}

/** A plan's actions with a chore that stands from the first morning on, or without it (0). */
export function withStandingChore(actions: readonly Action[], chore: Chore, stage: string, every_d: number): Action[] {
  const deed = choreDeed(chore, stage);
  const rest = actions.filter((action) => action.every_d === undefined || !sameChore(action, deed));
  return every_d > 0 ? [...rest, { every_d, from: every_d, hour: CHORE_HOUR, ...deed }] : rest;
}
