// Predictions as this device keeps them: by lesson and prediction, what was expected last and what came of it.
import { isObject, keptByLesson } from '../common/device';
import type { Answer } from '../common/state';

export interface KeptAnswer {
  choice: string;
  outcome: string | null;
  explained: string | null;
}
/** By lesson id, then by the prediction's key. */
export type KeptAnswers = Readonly<Record<string, Readonly<Record<string, KeptAnswer>>>>;

export const KEPT_AS = 'loopwright.predictions';
export const FORMAT = 'loopwright.predictions/1';

const textOrNull = (value: unknown): value is string | null => value === null || typeof value === 'string';

function answerOf(value: unknown): KeptAnswer | null {
  if (!isObject(value)) return null;
  const { choice, outcome, explained } = value;
  return typeof choice === 'string' && textOrNull(outcome) && textOrNull(explained) ? { choice, outcome, explained } : null;
}

/** What a kept text says; whatever in it makes no sense is passed over. */
export function answersIn(text: string | null): KeptAnswers {
  return Object.fromEntries(
    keptByLesson(text, FORMAT).map(([lesson, answers]) => [
      lesson,
      Object.fromEntries(
        Object.entries(isObject(answers) ? answers : {}).flatMap(([key, value]) => {
          const answer = answerOf(value);
          return answer === null ? [] : [[key, answer]];
        }),
      ),
    ]),
  );
}

export function earlierOf(kept: KeptAnswers, lesson: string, key: string): KeptAnswer | null {
  return Object.hasOwn(kept, lesson) && Object.hasOwn(kept[lesson], key) ? kept[lesson][key] : null;
}

/** The kept answers with those of a season that were settled. */
export function withAnswers(kept: KeptAnswers, lesson: string, answers: readonly Answer[]): KeptAnswers {
  const settled = answers.flatMap(({ key, choice, settled: found, explained }): [string, KeptAnswer][] =>
    choice === null || found === null ? [] : [[key, { choice, outcome: found.outcome, explained: explained ?? null }]],
  );
  return settled.length === 0
    ? kept
    : { ...kept, [lesson]: { ...(Object.hasOwn(kept, lesson) ? kept[lesson] : {}), ...Object.fromEntries(settled) } };
}
