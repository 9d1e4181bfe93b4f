// How a lesson's file played, in words for its author. Pure.
import type { Asked, Lesson, Plan, Played, ProcessFacts, Shown } from '../../state/common/contract';
import { say } from '../../../words/say';
import { measured } from '../../../words/units';
import { limitWords, measureValue, measureWords } from '../common/measureWords';

/** The lesson's plan with every stage a measure may speak of. */
const withParts = (lesson: Lesson): Plan => ({ ...lesson.plan, loop: [...lesson.plan.loop, ...lesson.shelf] });

const times = (value: number): string => measured(value, 2);

export const titleOf = (played: Played): string => (played.role === 'mistake' ? played.title : say(`file.${played.role}`));
export const mustOf = (played: Played): string =>
  say(played.role === 'reference' ? 'file.mustReference' : played.role === 'idle' ? 'file.mustIdle' : 'file.mustMistake');

/** What a mistake had to show, and what it showed. */
export function shownWords({ consequence, reference, mistake, times: ratio }: Shown, lesson: Lesson, facts: ProcessFacts | null): string {
  const { atLeast, atMost, atLeastTimes, atMostTimes } = consequence;
  const limits = [
    atLeast === undefined && atMost === undefined ? '' : limitWords(consequence, facts),
    atLeastTimes === undefined ? '' : say('file.atLeastTimes', { n: times(atLeastTimes) }),
    atMostTimes === undefined ? '' : say('file.atMostTimes', { n: times(atMostTimes) }),
  ].filter((words) => words !== '');
  return say('file.shows', {
    what: measureWords(consequence, withParts(lesson)),
    mistake: measureValue(consequence, mistake, facts),
    reference: measureValue(consequence, reference, facts),
    times: times(ratio),
    limits,
  });
}

/** What the lesson asks of its own seasons, and what they answered. */
export function askedWords(asked: Asked, lesson: Lesson, facts: ProcessFacts | null): string {
  switch (asked.kind) {
    case 'goal':
      return say('file.goal', { text: asked.goal.text, value: measureValue(asked.goal, asked.value, facts) });
    case 'prediction': {
      const { key, value, outcome, explanations } = asked.settled;
      const prediction = lesson.predictions.find((one) => one.key === key);
      const found = explanations.map((one) => {
        const statement = prediction?.explanations.find((explanation) => explanation.key === one.key)?.evidence;
        return say(one.holds ? 'file.holds' : 'file.holdsNot', {
          key: one.key,
          value: statement === undefined ? measured(one.value, 2) : measureValue(statement, one.value, facts),
        });
      });
      return say(asked.passes ? 'file.prediction' : 'file.predictionFails', {
        key,
        value: prediction === undefined ? measured(value, 2) : measureValue(prediction.measure, value, facts),
        outcome: prediction?.choices.find((choice) => choice.key === outcome)?.text ?? say('file.noChoice'),
        explanations: found,
      });
    }
    case 'demonstration': {
      const demonstration = lesson.demonstrations.find((one) => one.key === asked.key);
      const value = (number: number): string =>
        demonstration === undefined ? measured(number, 2) : measureValue(demonstration.measure, number, facts);
      return say('file.demonstration', {
        key: asked.key,
        right: value(asked.right),
        left: value(asked.left),
        times: times(asked.times),
        outcome: demonstration?.choices.find((choice) => choice.key === asked.outcome)?.text ?? say('file.noChoice'),
      });
    }
  }
}
