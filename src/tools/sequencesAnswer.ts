// What the sequences command answers, as data: a row for each variant, and what the rows come to.
import type { Action } from '../season/plan';
import type { Outcome } from './playVariant';

/** Variants as they were played. The first sequence is the reference. */
export interface Played {
  sequences: { order: string[]; outcome: Outcome }[];
  withoutPart: { part: string; outcome: Outcome }[];
  withoutRoutine: { routine: Action; outcome: Outcome }[];
}

/** Null: not known. refused: why a variant could not be played; only there where it could not. */
export interface Row {
  fishHealth: number | null;
  harvest: number | null;
  marks: number | null;
  handOver: number | null;
  work_h: number | null;
  refused?: { code: string; words: string };
}
export type Sequence = { order: string[] } & Row;

/** A quarter of the sequences is below the first number, a half below the second, a quarter above the third. */
export type Quartiles = [number, number, number] | null;

/** best, worst and rank: by fish health + harvest. shareWithThreeMarks: of the sequences that could be played. */
export interface Summary {
  possible: number;
  played: number;
  refused: number;
  best: Sequence | null;
  worst: Sequence | null;
  quartiles: { fishHealth: Quartiles; harvest: Quartiles };
  shareWithThreeMarks: number | null;
  rankOfReference: number | null;
}

export interface Answer {
  lesson: string | null;
  reference: Sequence;
  sequences: Sequence[];
  withoutPart: ({ part: string } & Row)[];
  withoutRoutine: ({ routine: Action } & Row)[];
  summary: Summary;
}

const THREE_MARKS = 3;
/** What is printed of a number; more would be noise. */
const DIGITS = 7;
const rounded = (value: number): number => Number(value.toPrecision(DIGITS));

export function rowOf({ result, refused }: Outcome): Row {
  if (result === null)
    return { fishHealth: null, harvest: null, marks: null, handOver: null, work_h: null, ...(refused === null ? {} : { refused }) };
  const { fishHealth, harvest, marks, work_h } = result;
  return { fishHealth: rounded(fishHealth), harvest: rounded(harvest), marks, handOver: null, work_h: rounded(work_h) };
}

/** What rows are ranked by; null where it could not be played. */
export const sumOf = ({ fishHealth, harvest }: Row): number | null =>
  fishHealth === null || harvest === null ? null : fishHealth + harvest;

/** Best first; what could not be played last; like ones as they came. */
export const bestFirst = (one: Row, other: Row): number => (sumOf(other) ?? -1) - (sumOf(one) ?? -1);

/** Between two values where a quarter of the row falls between them. */
export function quartilesOf(values: readonly number[]): Quartiles {
  if (values.length === 0) return null;
  const sorted = [...values].sort((a, b) => a - b);
  const at = (share: number): number => {
    const place = share * (sorted.length - 1);
    const below = Math.floor(place);
    return sorted[below] + (place - below) * ((sorted[below + 1] ?? sorted[below]) - sorted[below]);
  };
  return [rounded(at(0.25)), rounded(at(0.5)), rounded(at(0.75))];
}

function summaryOf(reference: Sequence, sequences: readonly Sequence[], possible: number): Summary {
  const ranked = sequences.filter((row) => sumOf(row) !== null).sort(bestFirst);
  const own = sumOf(reference);
  const marked = ranked.filter(({ marks }) => marks !== null);
  const numbers = (what: 'fishHealth' | 'harvest'): number[] => ranked.flatMap((row) => row[what] ?? []);
  return {
    possible,
    played: sequences.length,
    refused: sequences.length - ranked.length,
    best: ranked.at(0) ?? null,
    worst: ranked.at(-1) ?? null,
    quartiles: { fishHealth: quartilesOf(numbers('fishHealth')), harvest: quartilesOf(numbers('harvest')) },
    shareWithThreeMarks: marked.length === 0 ? null : rounded(marked.filter(({ marks }) => marks === THREE_MARKS).length / marked.length),
    rankOfReference: own === null ? null : 1 + ranked.filter((row) => (sumOf(row) ?? 0) > own).length,
  };
}

/** @param possible how many sequences there are in all */
export function answerOf(lesson: string | null, played: Played, possible: number): Answer {
  const sequences = played.sequences.map(({ order, outcome }): Sequence => ({ order, ...rowOf(outcome) }));
  const [reference] = sequences;
  return {
    lesson,
    reference,
    sequences,
    withoutPart: played.withoutPart.map(({ part, outcome }) => ({ part, ...rowOf(outcome) })),
    withoutRoutine: played.withoutRoutine.map(({ routine, outcome }) => ({ routine, ...rowOf(outcome) })),
    summary: summaryOf(reference, sequences, possible),
  };
}
