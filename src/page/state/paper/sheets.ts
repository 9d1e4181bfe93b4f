// What may go on paper: the sheets, the sizes of paper, what is chosen of them, and the teacher's key.
import type { Lesson } from '../../../lessons/lesson';
import type { Played } from '../../../lessons/playLesson';
import type { Plan } from '../../../season/plan';
import type { SeasonView } from '../common/state';

export type SheetKind = 'learner' | 'key' | 'lesson' | 'season';
export type PaperSize = 'A4' | 'Letter';
export const PAPER_SIZES: readonly PaperSize[] = ['A4', 'Letter'];
/** Versions of the learner's sheet, so that neighbours hold different ones. */
export const VERSIONS = 4;

/** A lesson as the model answers it: its builds as played, and the whole season of the reference. */
export interface LessonKey {
  lesson: Lesson;
  plan: Plan;
  season: SeasonView;
  played: Played[];
}

export interface PaperChoice {
  sheet: SheetKind;
  size: PaperSize;
  version: number;
}

/** Outlives the screen of sheets: what was chosen stays chosen, and a key that was worked out is kept. */
export interface PaperState extends PaperChoice {
  key: LessonKey | null;
}

export const FIRST_PAPER: PaperState = { sheet: 'learner', size: 'A4', version: 0, key: null };
