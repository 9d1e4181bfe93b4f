// Plays a lesson's reference, its listed mistakes and an idle player, and says whether each shows what it should.
import { buildPlan } from '../lessons/buildPlan';
import { compare } from '../lessons/consequences';
import type { Shown } from '../lessons/consequences';
import type { Build, Lesson } from '../lessons/lesson';
import { harvestFor, marksFor } from '../lessons/marks';
import type { Plan } from '../season/plan';
import type { Trajectory } from '../season/trajectory';

export interface Played { key: string; title: string; fishHealth: number; harvest: number; marks: number; shown: Shown[]; passes: boolean; expected: string }

const FULL_MARKS = 3;

/** The run function is given, so that a faster or instrumented one can stand in. */
export function playLesson(lesson: Lesson, run: (plan: Plan) => Trajectory): Played[] {
  const reference = run(buildPlan(lesson, lesson.reference));
  const score = (trajectory: Trajectory) => {
    const { scores } = trajectory.summary;
    return { fishHealth: scores.fishHealth, harvest: harvestFor(scores, lesson), marks: marksFor(scores, lesson) };
  };
  const best = score(reference);
  const played: Played[] = [{ key: 'reference', title: 'the reference loop', ...best, shown: [], passes: best.marks === FULL_MARKS, expected: 'three marks' }];
  for (const mistake of lesson.mistakes) {
    const trajectory = run(buildPlan(lesson, mistake));
    const shown = mistake.shows.map((consequence) => compare(reference, trajectory, consequence));
    played.push({ key: mistake.key, title: mistake.title, ...score(trajectory), shown, passes: shown.length > 0 && shown.every((one) => one.holds), expected: 'its consequences' });
  }
  const idle: Build = { order: lesson.plan.loop.map((stage) => stage.id), actions: [] };
  const nothing = score(run(buildPlan(lesson, idle)));
  played.push({ key: 'idle', title: 'nothing placed, nothing done', ...nothing, shown: [], passes: nothing.marks === 0, expected: 'no mark' });
  return played;
}

const figure = (value: number): string => (Number.isFinite(value) ? String(Number(value.toPrecision(3))) : '–');

function shownLine(shown: Shown): string {
  const { stage, variable, statistic, fromDay, atLeastTimes, atMostTimes } = shown.consequence;
  const asked = [atLeastTimes === undefined ? '' : `at least ${atLeastTimes} times`, atMostTimes === undefined ? '' : `at most ${atMostTimes} times`].filter((text) => text !== '').join(', ');
  const from = fromDay > 0 ? ` from day ${fromDay}` : '';
  return `      ${shown.holds ? 'shows' : 'FAILS'}  ${statistic} ${stage}.${variable}${from}: ${figure(shown.mistake)} against ${figure(shown.reference)} = ${figure(shown.times)} times; expected ${asked}`;
}

/** A table for a terminal. */
export function playedText(played: readonly Played[]): string {
  const width = Math.max(...played.map((one) => one.key.length));
  const lines = [`${'build'.padEnd(width)}  fish health  harvest  marks`];
  for (const one of played) {
    lines.push(`${one.key.padEnd(width)}  ${one.fishHealth.toFixed(1).padStart(11)}  ${one.harvest.toFixed(1).padStart(7)}  ${String(one.marks).padStart(5)}  ${one.passes ? 'pass' : `FAIL: expected ${one.expected}`}  ${one.title}`);
    lines.push(...one.shown.map(shownLine));
  }
  return `${lines.join('\n')}\n`;
}
