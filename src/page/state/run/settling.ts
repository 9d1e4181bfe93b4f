// What becomes of predictions as a season is lived: settled at their due day, explained, put off by acting before their hour. Pure.
import { answerTo, predictionOf } from './questions';
import type { Opened } from '../common/page';
import type { Answer } from '../common/state';
import type { Lived } from './lived';

export const isSettled = (answers: readonly Answer[], key: string): boolean => (answerTo(answers, key)?.settled ?? null) !== null;

/** With every prediction settled that is lived to its due day, asked about or not, once the worker has judged the season. */
export function withSettled<L extends Lived>(lived: L): L {
  const { judged, answers, lesson, lived_h } = lived;
  if (judged === null) return lived;
  const dueHour = (key: string): number => 24 * (lesson.predictions.find((prediction) => prediction.key === key)?.dueDay ?? Infinity);
  const isDue = (answer: Answer): boolean => answer.choice !== null && answer.settled === null && dueHour(answer.key) <= lived_h;
  if (!answers.some(isDue)) return lived;
  const found = (key: string): Answer['settled'] => judged.predictions.find((one) => one.key === key) ?? null;
  return { ...lived, answers: answers.map((answer) => (isDue(answer) ? { ...answer, settled: found(answer.key) } : answer)) };
}

/** With an answer to the question that is open, unless it has one. */
export function answered<G extends Opened>(game: G, answer: Omit<Answer, 'key' | 'settled'>): G {
  const { question, answers } = game;
  if (question === null || question.part !== 'ask' || answerTo(answers, question.key) !== undefined) return game;
  return { ...game, answers: [...answers, { key: question.key, settled: null, ...answer }] };
}

/** With an explanation of the outcome that is open, unless it has one. @param explained null: none was chosen */
export function explainedBy<G extends Opened>(game: G, explained: string | null): G {
  const { question, answers } = game;
  if (question === null || question.part !== 'explain') return game;
  return {
    ...game,
    answers: answers.map((answer) => (answer.key === question.key && answer.explained === undefined ? { ...answer, explained } : answer)),
  };
}

/**
 * After acting: a question whose hour is still to come again is put off to that hour; an answer that was settled already is left as it is.
 */
export function withPutOff<L extends Lived>(lived: L): L {
  const { question, answers, lived_h } = lived;
  const prediction = predictionOf(lived);
  if (question === null || prediction === null || lived_h >= 24 * (question.part === 'ask' ? prediction.askDay : prediction.dueDay))
    return lived;
  return { ...(isSettled(answers, prediction.key) ? explainedBy(lived, null) : lived), question: null };
}
