// Plays a lesson's reference, its listed mistakes and an idle player, and says whether each shows what it should.
import { buildPlan, idleBuild } from '../lessons/buildPlan';
import { compare } from '../lessons/consequences';
import type { Shown } from '../lessons/consequences';
import type { Build, Lesson } from '../lessons/lesson';
import { harvestFor, marksFor } from '../lessons/marks';
import { holds, measure } from '../lessons/measure';
import { choiceOf, settle } from '../lessons/predictions';
import type { Plan } from '../season/plan';
import type { Trajectory } from '../season/trajectory';

/** Something a lesson asks, as its own seasons answer it. */
export interface Asked { text: string; passes: boolean }

export interface Played { key: string; title: string; fishHealth: number; harvest: number; marks: number; shown: Shown[]; asked: Asked[]; passes: boolean; expected: string }

const FULL_MARKS = 3;

/** Predictions settled by the reference: the outcome is one of the choices, and of the explanations some hold and some do not. */
function predicted(lesson: Lesson, reference: Trajectory): Asked[] {
  return lesson.predictions.map((prediction) => {
    const { value, outcome, explanations } = settle(reference, prediction);
    const holding = explanations.filter((one) => one.holds);
    const passes = outcome !== null && holding.length > 0 && holding.length < explanations.length;
    const figures = explanations.map((one) => `${one.key} ${figure(one.value)}${one.holds ? ' holds' : ''}`).join(', ');
    return { text: `prediction ${prediction.key}: ${figure(value)} = ${outcome ?? 'no choice'}; explanations: ${figures}`, passes };
  });
}

/** Demonstrations settled by their two seasons: right ÷ left is a number, and is one of the choices. */
function demonstrated(lesson: Lesson, seasons: ReadonlyMap<string, Trajectory>): Asked[] {
  return lesson.demonstrations.map((shown) => {
    const [left, right] = [shown.left, shown.right].map((key) => {
      const season = seasons.get(key);
      return season === undefined ? Number.NaN : measure(season, shown.measure);
    });
    const outcome = choiceOf(shown.choices, right / left);
    return { text: `demonstration ${shown.key}: ${figure(right)} against ${figure(left)} = ${figure(right / left)} times = ${outcome ?? 'no choice'}`, passes: outcome !== null };
  });
}

/** The run function is given, so that a faster or instrumented one can stand in. */
export function playLesson(lesson: Lesson, run: (plan: Plan) => Trajectory): Played[] {
  const seasons = new Map<string, Trajectory>();
  const play = (key: string, build: Build): { trajectory: Trajectory; fishHealth: number; harvest: number; marks: number } => {
    const trajectory = run(buildPlan(lesson, build));
    seasons.set(key, trajectory);
    const { scores } = trajectory.summary;
    return { trajectory, fishHealth: scores.fishHealth, harvest: harvestFor(scores, lesson), marks: marksFor(scores, trajectory, build.order, lesson) };
  };
  const { trajectory: reference, ...best } = play('reference', lesson.reference);
  const mistakes = lesson.mistakes.map((mistake): Played => {
    const { trajectory, ...result } = play(mistake.key, mistake);
    const shown = mistake.shows.map((consequence) => compare(reference, trajectory, consequence));
    return { key: mistake.key, title: mistake.title, ...result, shown, asked: [], passes: shown.length > 0 && shown.every((one) => one.holds), expected: 'its consequences' };
  });
  const goals = lesson.scoring.marks.flatMap((mark) => mark.goals ?? []).map((goal): Asked => {
    const value = measure(reference, goal);
    return { text: `goal "${goal.text}": ${figure(value)}`, passes: holds(value, goal) };
  });
  const asked = [...goals, ...predicted(lesson, reference), ...demonstrated(lesson, seasons)];
  const whole = best.marks === FULL_MARKS || lesson.free;
  const first: Played = { key: 'reference', title: 'the reference loop', ...best, shown: [], asked, passes: whole && asked.every((one) => one.passes), expected: 'three marks, and what it asks to be settled' };
  const { fishHealth, harvest, marks } = play('idle', idleBuild(lesson));
  return [first, ...mistakes, { key: 'idle', title: 'the loop as given, nothing done', fishHealth, harvest, marks, shown: [], asked: [], passes: marks === 0 || lesson.free, expected: 'no mark' }];
}

const figure = (value: number): string => (Number.isFinite(value) ? String(Number(value.toPrecision(3))) : '–');

function shownLine(shown: Shown): string {
  const { stage, variable, process, score, statistic, fromDay, toDay, atLeastTimes, atMostTimes, atLeast, atMost } = shown.consequence;
  const limits: [number | undefined, string][] = [[atLeastTimes, 'at least # times'], [atMostTimes, 'at most # times'], [atLeast, 'at least #'], [atMost, 'at most #']];
  const asked = limits.flatMap(([limit, words]) => (limit === undefined ? [] : [words.replace('#', String(limit))])).join(', ');
  const what = score ?? (process === undefined ? `${statistic} ${stage ?? ''}.${variable ?? ''}` : `${stage ?? ''}.${process} a day`);
  const when = `${fromDay > 0 ? ` from day ${fromDay}` : ''}${toDay === undefined ? '' : ` to day ${toDay}`}`;
  return `      ${shown.holds ? 'shows' : 'FAILS'}  ${what}${when}: ${figure(shown.mistake)} against ${figure(shown.reference)} = ${figure(shown.times)} times; expected ${asked}`;
}

const askedLine = (asked: Asked): string => `      ${asked.passes ? 'asks ' : 'FAILS'}  ${asked.text}`;

/** A table for a terminal. */
export function playedText(played: readonly Played[]): string {
  const width = Math.max(...played.map((one) => one.key.length));
  const lines = [`${'build'.padEnd(width)}  fish health  harvest  marks`];
  for (const one of played) {
    lines.push(`${one.key.padEnd(width)}  ${one.fishHealth.toFixed(1).padStart(11)}  ${one.harvest.toFixed(1).padStart(7)}  ${String(one.marks).padStart(5)}  ${one.passes ? 'pass' : `FAIL: expected ${one.expected}`}  ${one.title}`);
    lines.push(...one.shown.map(shownLine), ...one.asked.map(askedLine));
  }
  return `${lines.join('\n')}\n`;
}
