// How far a learner has come, kept on this device alone: the best marks of each lesson and when it was played last.
import { isObject, keptByLesson, keptText, type Device } from '../common/device';

export interface LessonProgress {
  /** best result, 0–3 */
  marks: number;
  /** day on which its season was lived to the end last, as 2026-11-26 */
  played: string;
}
/** By lesson id. */
export type Progress = Readonly<Record<string, LessonProgress>>;

export const NO_PROGRESS: Progress = {};
const KEPT_AS = 'loopwright.progress';
const FORMAT = 'loopwright.progress/1';
const MARKS_MAX = 3;

const isCount = (value: unknown, most: number): value is number =>
  typeof value === 'number' && Number.isInteger(value) && value >= 0 && value <= most;

function lessonOf(value: unknown): LessonProgress | null {
  if (!isObject(value)) return null;
  const { marks, played } = value;
  return isCount(marks, MARKS_MAX) && typeof played === 'string' && /^\d{4}-\d\d-\d\d$/.test(played) ? { marks, played } : null;
}

/** What a kept text says; whatever in it makes no sense is passed over. */
export function progressIn(text: string | null): Progress {
  return Object.fromEntries(
    keptByLesson(text, FORMAT).flatMap(([id, value]) => {
      const lesson = lessonOf(value);
      return lesson === null ? [] : [[id, lesson]];
    }),
  );
}

/** The progress after one more season: the best marks stay. */
export function withSeason(progress: Progress, id: string, marks: number, day: string): Progress {
  const before = Object.hasOwn(progress, id) ? progress[id].marks : 0;
  return { ...progress, [id]: { marks: Math.max(before, marks), played: day } };
}

export const readProgress = (device: Device): Progress => progressIn(device.read(KEPT_AS));

/** Books a season on the device and returns the progress there, which another page may have added to in the meantime. */
export function keepSeason(device: Device, id: string, marks: number, day: string): Progress {
  const progress = withSeason(readProgress(device), id, marks, day);
  device.write(KEPT_AS, keptText(FORMAT, progress));
  return progress;
}
