// Predictions as this device keeps them: by lesson and prediction, what was expected last and what came of it.
import type { StoreApi } from 'zustand/vanilla';
import { isObject, keptByLesson, keptText, type Device } from '../common/device';
import type { Answer, PageStore } from '../common/state';

export interface KeptAnswer { choice: string; outcome: string | null; explained: string | null }
/** By lesson id, then by the prediction's key. */
export type KeptAnswers = Readonly<Record<string, Readonly<Record<string, KeptAnswer>>>>;

const KEPT_AS = 'loopwright.predictions';
const FORMAT = 'loopwright.predictions/1';

const textOrNull = (value: unknown): value is string | null => value === null || typeof value === 'string';

function answerOf(value: unknown): KeptAnswer | null {
  if (!isObject(value)) return null;
  const { choice, outcome, explained } = value;
  return typeof choice === 'string' && textOrNull(outcome) && textOrNull(explained) ? { choice, outcome, explained } : null;
}

/** What a kept text says; whatever in it makes no sense is passed over. */
export function answersIn(text: string | null): KeptAnswers {
  return Object.fromEntries(keptByLesson(text, FORMAT).map(([lesson, answers]) => [lesson, Object.fromEntries(
    Object.entries(isObject(answers) ? answers : {}).flatMap(([key, value]) => {
      const answer = answerOf(value);
      return answer === null ? [] : [[key, answer]];
    }),
  )]));
}

export function earlierOf(kept: KeptAnswers, lesson: string, key: string): KeptAnswer | null {
  return Object.hasOwn(kept, lesson) && Object.hasOwn(kept[lesson], key) ? kept[lesson][key] : null;
}

/** The kept answers with those of a season that were settled. */
export function withAnswers(kept: KeptAnswers, lesson: string, answers: readonly Answer[]): KeptAnswers {
  const settled = answers.flatMap(({ key, choice, settled: found, explained }) => (choice === null || found === null ? [] : [[key, { choice, outcome: found.outcome, explained: explained ?? null }]]));
  return settled.length === 0 ? kept : { ...kept, [lesson]: { ...(Object.hasOwn(kept, lesson) ? kept[lesson] : {}), ...Object.fromEntries(settled) } };
}

/** Takes up what this device has kept, and keeps what is settled from now on. What the page shows as earlier changes when the next season begins. */
export function watchAnswers(store: StoreApi<PageStore>, device: Device): void {
  store.setState({ earlier: answersIn(device.read(KEPT_AS)) });
  store.subscribe((now, before) => {
    if (now.answers === before.answers || now.lesson === null) return;
    if (now.answers.length === 0) {
      store.setState({ earlier: answersIn(device.read(KEPT_AS)) });
      return;
    }
    if (now.lesson !== before.lesson) return;
    const kept = answersIn(device.read(KEPT_AS));
    const next = withAnswers(kept, now.lesson.id, now.answers);
    if (next !== kept) device.write(KEPT_AS, keptText(FORMAT, next));
  });
}
