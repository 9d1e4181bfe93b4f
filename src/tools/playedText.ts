// How a lesson was played, as a table for a terminal.
import type { Shown } from '../lessons/consequences';
import type { Asked, Played } from '../lessons/playLesson';

const TITLES: Readonly<Record<Exclude<Played['role'], 'mistake'>, string>> = { reference: 'the reference loop', idle: 'the loop as given, nothing done' };
const EXPECTED: Readonly<Record<Played['role'], string>> = { reference: 'three marks, and what it asks to be settled', mistake: 'its consequences', idle: 'no mark' };

const figure = (value: number): string => (Number.isFinite(value) ? String(Number(value.toPrecision(3))) : '–');

function shownLine(shown: Shown): string {
  const { stage, variable, process, score, statistic, fromDay, toDay, atLeastTimes, atMostTimes, atLeast, atMost } = shown.consequence;
  const limits: [number | undefined, string][] = [[atLeastTimes, 'at least # times'], [atMostTimes, 'at most # times'], [atLeast, 'at least #'], [atMost, 'at most #']];
  const asked = limits.flatMap(([limit, words]) => (limit === undefined ? [] : [words.replace('#', String(limit))])).join(', ');
  const what = score ?? (process === undefined ? `${statistic} ${stage ?? ''}.${variable ?? ''}` : `${stage ?? ''}.${process} a day`);
  const when = `${fromDay > 0 ? ` from day ${fromDay}` : ''}${toDay === undefined ? '' : ` to day ${toDay}`}`;
  return `      ${shown.holds ? 'shows' : 'FAILS'}  ${what}${when}: ${figure(shown.mistake)} against ${figure(shown.reference)} = ${figure(shown.times)} times; expected ${asked}`;
}

function askedText(asked: Asked): string {
  switch (asked.kind) {
    case 'goal': return `goal "${asked.goal.text}": ${figure(asked.value)}`;
    case 'prediction': {
      const { key, value, outcome, explanations } = asked.settled;
      const figures = explanations.map((one) => `${one.key} ${figure(one.value)}${one.holds ? ' holds' : ''}`).join(', ');
      return `prediction ${key}: ${figure(value)} = ${outcome ?? 'no choice'}; explanations: ${figures}`;
    }
    case 'demonstration': return `demonstration ${asked.key}: ${figure(asked.right)} against ${figure(asked.left)} = ${figure(asked.times)} times = ${asked.outcome ?? 'no choice'}`;
  }
}

const askedLine = (asked: Asked): string => `      ${asked.passes ? 'asks ' : 'FAILS'}  ${askedText(asked)}`;

export function playedText(played: readonly Played[]): string {
  const width = Math.max(...played.map((one) => one.key.length));
  const lines = [`${'build'.padEnd(width)}  fish health  harvest  marks`];
  for (const one of played) {
    const title = one.role === 'mistake' ? one.title : TITLES[one.role];
    lines.push(`${one.key.padEnd(width)}  ${one.fishHealth.toFixed(1).padStart(11)}  ${one.harvest.toFixed(1).padStart(7)}  ${String(one.marks).padStart(5)}  ${one.passes ? 'pass' : `FAIL: expected ${EXPECTED[one.role]}`}  ${title}`);
    lines.push(...one.shown.map(shownLine), ...one.asked.map(askedLine));
  }
  return `${lines.join('\n')}\n`;
}
