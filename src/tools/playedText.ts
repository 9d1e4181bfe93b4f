// How a lesson was played, as a table for a terminal. Numbers are written as a lesson file writes them.
import type { Shown } from '../lessons/consequences';
import type { Asked, Played } from '../lessons/playLesson';
import { say } from '../words/say';
import type { WordKey } from '../words/say';

const FAILURES = { reference: 'played.failReference', mistake: 'played.failMistake', idle: 'played.failIdle' } as const satisfies Record<
  Played['role'],
  WordKey
>;
/** What stands before a line that says more of a build. */
const INDENT = ' '.repeat(6);

const figure = (value: number): string => (Number.isFinite(value) ? String(Number(value.toPrecision(3))) : '–');

function limitsOf({ atLeastTimes, atMostTimes, atLeast, atMost }: Shown['consequence']): string[] {
  return [
    atLeastTimes === undefined ? null : say('played.atLeastTimes', { limit: String(atLeastTimes) }),
    atMostTimes === undefined ? null : say('played.atMostTimes', { limit: String(atMostTimes) }),
    atLeast === undefined ? null : say('played.atLeast', { limit: String(atLeast) }),
    atMost === undefined ? null : say('played.atMost', { limit: String(atMost) }),
  ].filter((limit) => limit !== null);
}

function measured({ stage = '', variable, process, score, statistic }: Shown['consequence']): string {
  if (score !== undefined) return score;
  return process === undefined ? `${statistic} ${stage}.${variable ?? ''}` : say('played.aDay', { what: `${stage}.${process}` });
}

function shownLine(shown: Shown): string {
  const { fromDay: from, toDay } = shown.consequence;
  const values = {
    what: measured(shown.consequence),
    mistake: figure(shown.mistake),
    reference: figure(shown.reference),
    times: figure(shown.times),
    limits: limitsOf(shown.consequence),
  };
  const line =
    toDay === undefined
      ? from > 0
        ? say('played.shownFrom', { ...values, from })
        : say('played.shown', values)
      : from > 0
        ? say('played.shownBetween', { ...values, from, to: toDay })
        : say('played.shownTo', { ...values, to: toDay });
  return `${INDENT}${say(shown.holds ? 'played.shows' : 'played.fails', { line })}`;
}

function askedText(asked: Asked): string {
  switch (asked.kind) {
    case 'goal':
      return say('played.goal', { text: asked.goal.text, value: figure(asked.value) });
    case 'prediction': {
      const { key, value, outcome, explanations } = asked.settled;
      const figures = explanations.map((one) =>
        say(one.holds ? 'played.explanationHolds' : 'played.explanation', { key: one.key, value: figure(one.value) }),
      );
      return say('played.prediction', { key, value: figure(value), outcome: outcome ?? say('played.noChoice'), explanations: figures });
    }
    case 'demonstration': {
      const { key, right, left, times, outcome } = asked;
      return say('played.demonstration', {
        key,
        right: figure(right),
        left: figure(left),
        times: figure(times),
        outcome: outcome ?? say('played.noChoice'),
      });
    }
  }
}

const askedLine = (asked: Asked): string => `${INDENT}${say(asked.passes ? 'played.asks' : 'played.fails', { line: askedText(asked) })}`;

/** A cell is as wide as its column's heading; the first column as its widest key. */
export function playedText(played: readonly Played[]): string {
  const [build, fish, harvest, marks] = [say('played.build'), say('played.fishHealth'), say('played.harvest'), say('played.marks')];
  const width = Math.max(build.length, ...played.map((one) => one.key.length));
  const lines = [[build.padEnd(width), fish, harvest, marks].join('  ')];
  for (const one of played) {
    const title = one.role === 'mistake' ? one.title : say(`played.${one.role}`);
    const cells = [
      one.key.padEnd(width),
      one.fishHealth.toFixed(1).padStart(fish.length),
      one.harvest.toFixed(1).padStart(harvest.length),
      String(one.marks).padStart(marks.length),
      say(one.passes ? 'played.pass' : FAILURES[one.role]),
      title,
    ];
    lines.push(cells.join('  '), ...one.shown.map(shownLine), ...one.asked.map(askedLine));
  }
  return `${lines.join('\n')}\n`;
}
