// Plays a lesson's reference, its listed mistakes and an idle player, and says whether each shows what it should.
import type { Plan } from '../season/plan';
import type { Trajectory } from '../season/trajectory';
import { buildPlan, idleBuild } from './buildPlan';
import { compare } from './consequences';
import type { Shown } from './consequences';
import { outcomeOf } from './demonstration';
import type { Build, Goal, Lesson } from './lesson';
import { harvestFor, marksFor } from './marks';
import { holds, measure } from './measure';
import { settle } from './predictions';
import type { Settled } from './predictions';

/** Something a lesson asks, as its own seasons answer it. */
export type Asked =
  | { kind: 'goal'; goal: Goal; value: number; passes: boolean }
  | { kind: 'prediction'; settled: Settled; passes: boolean }
  | { kind: 'demonstration'; key: string; left: number; right: number; times: number; outcome: string | null; passes: boolean };

/** A build as played. title: the mistake's own; empty for the reference and the idle player. */
export interface Played {
  role: 'reference' | 'mistake' | 'idle';
  key: string;
  title: string;
  fishHealth: number;
  harvest: number;
  marks: number;
  shown: Shown[];
  asked: Asked[];
  passes: boolean;
}

export const FULL_MARKS = 3;

/** How many seasons playing a lesson takes. */
export const seasonsOf = (lesson: Pick<Lesson, 'mistakes'>): number => lesson.mistakes.length + 2;

/** Predictions settled by the reference: the outcome is one of the choices, and of the explanations some hold and some do not. */
function predicted(lesson: Lesson, reference: Trajectory): Asked[] {
  return lesson.predictions.map((prediction) => {
    const settled = settle(reference, prediction);
    const holding = settled.explanations.filter((one) => one.holds).length;
    return { kind: 'prediction', settled, passes: settled.outcome !== null && holding > 0 && holding < settled.explanations.length };
  });
}

/** Demonstrations settled by their two seasons: right ÷ left is a number, and is one of the choices. */
function demonstrated(lesson: Lesson, seasons: ReadonlyMap<string, Trajectory>): Asked[] {
  return lesson.demonstrations.map((shown) => {
    const [left, right] = [shown.left, shown.right].map((key) => {
      const season = seasons.get(key);
      return season === undefined ? Number.NaN : measure(season, shown.measure);
    });
    const { times, choice } = outcomeOf(left, right, shown.choices);
    return { kind: 'demonstration', key: shown.key, left, right, times, outcome: choice, passes: choice !== null };
  });
}

/** The run function is given, so that a faster or instrumented one can stand in. */
export function playLesson(lesson: Lesson, run: (plan: Plan) => Trajectory): Played[] {
  const seasons = new Map<string, Trajectory>();
  const play = (key: string, build: Build): { trajectory: Trajectory; fishHealth: number; harvest: number; marks: number } => {
    const trajectory = run(buildPlan(lesson, build));
    seasons.set(key, trajectory);
    const { scores } = trajectory.summary;
    return {
      trajectory,
      fishHealth: scores.fishHealth,
      harvest: harvestFor(scores, lesson),
      marks: marksFor(scores, trajectory, build.order, lesson),
    };
  };
  const { trajectory: reference, ...best } = play('reference', lesson.reference);
  const mistakes = lesson.mistakes.map((mistake): Played => {
    const { trajectory, ...result } = play(mistake.key, mistake);
    const shown = mistake.shows.map((consequence) => compare(reference, trajectory, consequence));
    return {
      role: 'mistake',
      key: mistake.key,
      title: mistake.title,
      ...result,
      shown,
      asked: [],
      passes: shown.length > 0 && shown.every((one) => one.holds),
    };
  });
  const goals = lesson.scoring.marks
    .flatMap((mark) => mark.goals ?? [])
    .map((goal): Asked => {
      const value = measure(reference, goal);
      return { kind: 'goal', goal, value, passes: holds(value, goal) };
    });
  const asked = [...goals, ...predicted(lesson, reference), ...demonstrated(lesson, seasons)];
  const whole = best.marks === FULL_MARKS || lesson.free;
  const first: Played = {
    role: 'reference',
    key: 'reference',
    title: '',
    ...best,
    shown: [],
    asked,
    passes: whole && asked.every((one) => one.passes),
  };
  const { fishHealth, harvest, marks } = play('idle', idleBuild(lesson));
  return [
    first,
    ...mistakes,
    { role: 'idle', key: 'idle', title: '', fishHealth, harvest, marks, shown: [], asked: [], passes: marks === 0 || lesson.free },
  ];
}
