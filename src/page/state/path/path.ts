// The path of lessons as the page knows it: its cards, which lesson is open and from where, how far the learner came. Types and pure
// derivations.
import type { LessonCard } from '../../../lessons/card';
import type { Lesson } from '../../../lessons/lesson';
import type { Problem } from '../../../lessons/problem';
import type { OldFile } from '../../../lessons/oldFormats';
import type { Played } from '../../../lessons/playLesson';
import { addressOfNumber } from '../common/address';
import type { Client } from '../common/state';
import { forgetful, type Device } from '../common/device';
import { NO_PROGRESS, type Progress } from './progress';

/** Where the open lesson came from, and the address that stands for it. */
export interface Opened {
  from: 'path' | 'web' | 'file';
  name: string;
  address: string;
}

/** A file that an author opened by hand: what is wrong with it, and how it played. */
export interface FileCheck {
  name: string;
  /** the sheet with it lies open */
  shown: boolean;
  problems: Problem[];
  /** null while the file cannot be used */
  lesson: Lesson | null;
  /** null until it was played */
  played: Played[] | null;
  playing: boolean;
  /** in words, why it could not be played */
  failed: string | null;
}

export interface PathState {
  cards: readonly LessonCard[];
  opened: Opened | null;
  progress: Progress;
  file: FileCheck | null;
  /** what was changed in the file of the open lesson, where that was of an older format; null once it was read */
  old: OldFile | null;
}

export interface PathActions {
  /** Opens what an address asks for. What cannot be opened is told, and the lesson at hand stays. */
  openAddress(hash: string): Promise<void>;
  /** Opens a file given by hand; one with problems is told with them, and the lesson at hand stays. */
  openFile(name: string, text: string): Promise<void>;
  /** Has a worker play the file's reference, mistakes and an idle player. */
  playFile(): Promise<void>;
  showFile(shown: boolean): void;
  dismissOld(): void;
}

/** What the path needs of the world outside the store. */
export interface Surroundings {
  cards: readonly LessonCard[];
  /** the text of a lesson of the path, by its file's name */
  readCard(file: string): Promise<string>;
  /** the text at an address on the web */
  fetchText(url: string): Promise<string>;
  /** the page's own address, which those of files are relative to */
  page: string;
  /** Writes what stands after the # of the page's address, as a new step of its history or in place of the present one. */
  setAddress(hash: string, step: 'new' | 'same'): void;
  device: Device;
  /** as 2026-11-26 */
  today(): string;
  /** a worker for long work, so that the page's own stays free; null: the page's own does it */
  side: (() => Client) | null;
}

/** A page without a path of its own, as tests have it. */
export const NOWHERE: Surroundings = {
  cards: [],
  readCard: () => Promise.reject(new Error('no path')),
  fetchText: () => Promise.reject(new Error('no web')),
  page: 'http://localhost/',
  setAddress: () => undefined,
  device: forgetful(),
  today: () => '2026-01-01',
  side: null,
};

export const firstPath = (cards: readonly LessonCard[], progress: Progress): PathState => ({
  cards,
  opened: null,
  progress,
  file: null,
  old: null,
});
export const NO_PATH: PathState = firstPath([], NO_PROGRESS);

/** Lessons with something to reach, and the benches to build at, which end the path. */
export function pathParts(cards: readonly LessonCard[]): { lessons: LessonCard[]; benches: LessonCard[] } {
  return { lessons: cards.filter((card) => !card.free), benches: cards.filter((card) => card.free) };
}

export const marksOf = (progress: Progress, id: string): number => (Object.hasOwn(progress, id) ? progress[id].marks : 0);

/** Whether a lesson of the path is the one that is open. */
export const isOpen = (path: PathState, card: LessonCard): boolean => path.opened?.from === 'path' && path.opened.name === card.file;

/** How many lessons have a mark, and the minutes that the others take. */
export function farOnPath({ cards, progress }: PathState): { done: number; of: number; minutesLeft: number } {
  const { lessons } = pathParts(cards);
  const left = lessons.filter((card) => marksOf(progress, card.id) === 0);
  return { done: lessons.length - left.length, of: lessons.length, minutesLeft: left.reduce((sum, card) => sum + card.minutes, 0) };
}

/** The lesson to go on with: the first without a mark; after the last, the first short of full marks; then the bench. */
export function nextOnPath({ cards, progress }: PathState, full: number): LessonCard | null {
  const { lessons, benches } = pathParts(cards);
  return (
    lessons.find((card) => marksOf(progress, card.id) === 0)
    ?? lessons.find((card) => marksOf(progress, card.id) < full)
    ?? benches[0]
    ?? null
  );
}

export const addressOf = (card: LessonCard): string => addressOfNumber(card.number);
