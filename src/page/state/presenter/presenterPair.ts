// Works out the two seasons of a demonstration and sets them on the two loops that are drawn.
import type { StoreApi } from 'zustand/vanilla';
import type { Lesson } from '../../../lessons/lesson';
import type { Plan } from '../../../season/plan';
import { say } from '../../../words/say';
import { compileActions } from '../run/acts';
import { branchLetter, withPresent } from '../run/branches';
import { fishTankOf } from '../build/planEdits';
import { figuresOf } from './pairFigures';
import { sharedScale } from './pairScale';
import { stepsOf } from './presenterSteps';
import type { Shown, ShownDemonstration } from './presenterState';
import type { PageState, PageStore } from '../common/page';
import { livedOf } from '../common/selectors';
import type { Client } from '../common/state';
import { mergeSeason } from '../run/view';
import { can, pumpAt } from '../common/kinds';

type Sides = readonly [StoreApi<PageStore>, StoreApi<PageStore>];

/** What is to be shown, before its seasons are worked out. */
export interface Found {
  lesson: string | null;
  from: string;
  demonstration: ShownDemonstration;
  plans: readonly [Plan, Plan];
  differ: readonly string[];
  plantsWeight: number;
}

/** A prepared pair of a lesson. @throws Error when the lesson has no such demonstration, or the worker cannot answer */
export async function preparedPair(client: Client, lesson: Lesson, key: string): Promise<Found> {
  const shown = lesson.demonstrations.find((one) => one.key === key);
  if (shown === undefined) throw new Error(`${lesson.id}: ${key}`);
  const { plans, differ } = await client.ask({ ask: 'pair', lesson, shown });
  return { lesson: lesson.id, from: lesson.title, demonstration: shown, plans, differ, plantsWeight: lesson.scoring.plantsWeight };
}

/** Two branches of the season at hand; null when there is no such season or branch. The class is asked for the harvest. */
export function branchPair(page: PageState, left: number, right: number): Found | null {
  const lived = livedOf(page);
  if (lived === null) return null;
  const { built, lesson, plan } = lived;
  const branches = withPresent(lived, [lived.present]);
  const pair = [left, right].map((id) => branches.find((branch) => branch.id === id));
  const [a, b] = pair;
  if (a === undefined || b === undefined) return null;
  const planOf = (acts: (typeof a)['acts']): Plan => ({ ...built.plan, actions: compileActions(built.plan.actions, acts) });
  const [leftName, rightName] = [left, right].map((id) => say('branch.name', { branch: branchLetter(id) }));
  const split = Math.max(a.split_h, b.split_h);
  const furthest = Math.max(a.lived_h, b.lived_h);
  const { tint, selected } = page.view;
  const stands = selected !== null && plan.loop.some((stage) => stage.id === selected && !can(stage.kind, 'pumps'));
  const moment = (hours: number, words: string) => ({ day: Math.floor(hours / 24), hour: Math.floor(hours % 24), say: words });
  return {
    lesson: null,
    from: lesson.title,
    plans: [planOf(a.acts), planOf(b.acts)],
    differ: [],
    plantsWeight: lesson.scoring.plantsWeight,
    demonstration: {
      key: 'branches',
      title: say('presenter.branchTitle', { left: leftName, right: rightName }),
      leftName,
      rightName,
      tint,
      look: stands ? selected : (fishTankOf(plan) ?? plan.loop[0].id),
      question: say('presenter.branchQuestion', { left: leftName, right: rightName }),
      measure: { score: 'harvest', statistic: 'last', fromDay: 0 },
      choices: [
        { key: 'less', text: say('presenter.branchLess', { right: rightName }), below: 0.95 },
        { key: 'same', text: say('presenter.branchSame'), atLeast: 0.95, below: 1.05 },
        { key: 'more', text: say('presenter.branchMore', { right: rightName }), atLeast: 1.05 },
      ],
      turningPoints: [
        moment(split, say('presenter.branchSplit')),
        ...(furthest > split ? [moment(furthest, say('presenter.branchLived'))] : []),
      ],
    },
  };
}

/**
 * Stages whose names and numbers a class should read: the fish, what is looked at and measured, and what differs; of a pump that was moved,
 * what it now pumps into.
 */
function toldStages(found: Found, plan: Plan): string[] {
  const { look, measure } = found.demonstration;
  const wanted = new Set([fishTankOf(plan), look, measure.stage ?? null, ...found.differ]);
  for (const { loop } of found.plans) {
    const pump = pumpAt(loop);
    if (pump >= 0 && wanted.has(loop[pump].id)) wanted.add(loop[(pump + 1) % loop.length].id);
  }
  const silent = new Set(
    found.differ.filter((id) => id !== look && id !== measure.stage && plan.loop.some((stage) => stage.id === id && stage.kind === 'sump')),
  );
  return [...plan.loop, ...plan.side].map((stage) => stage.id).filter((id) => wanted.has(id) && !silent.has(id));
}

/** Runs both seasons and sets both loops to their first hour. @throws Error when the worker cannot answer */
export async function stagePair(client: Client, sides: Sides, found: Found): Promise<Shown> {
  const { plans, demonstration, plantsWeight } = found;
  const work = async (plan: Plan) => {
    const [answer, design, comfort] = await Promise.all([
      client.ask({ ask: 'run', plan, keepDays: 0, plantsWeight }),
      client.ask({ ask: 'checkDesign', plan }),
      client.ask({ ask: 'comfort', plan }),
    ]);
    return { season: mergeSeason(null, answer), design, comfort };
  };
  const [left, right] = await Promise.all([work(plans[0]), work(plans[1])]);
  const seasons = [left.season, right.season] as const;
  const scale = sharedScale(demonstration.tint, seasons);
  [left, right].forEach(({ season, design, comfort }, index) => {
    const plan = plans[index];
    sides[index].setState(({ view }) => ({
      game: { mode: 'class', plan, design, comfort, season, now_h: 0, lived_h: 0, speed: 'paused', scale, told: toldStages(found, plan) },
      view: { ...view, tint: demonstration.tint, selected: demonstration.look },
    }));
  });
  return {
    lesson: found.lesson,
    from: found.from,
    demonstration,
    plans,
    seasons,
    steps: stepsOf(demonstration),
    scale,
    days: plans[0].days,
    plantsWeight,
    figures: figuresOf({ measure: demonstration.measure, tint: demonstration.tint, look: demonstration.look, plan: plans[0], seasons }),
  };
}
