// What the water of one stage gains or loses on its way through, over a whole day, and which tint tells a lesson best. Pure.
import type { Lesson, Measure } from '../../../lessons/lesson';
import type { Plan } from '../../../season/plan';
import { TINTS, TINT_ORDER } from '../common/tints';
import { inletOf, readingAt } from './readings';
import type { TintId, SeasonView } from '../common/state';

export interface Change {
  tint: TintId;
  in: number;
  out: number;
}

/** Differences smaller than this share of the larger number are not told. */
const NOTABLE_SHARE = 0.05;
/** Traces are weighed against this share of the tint's scale, so that nothing against nothing is no change. */
const TRACE_SHARE = 0.05;

/** Mean over the hours of a day of a tint quantity that leaves a stage. */
function leaving(view: SeasonView, tint: TintId, stageId: string, day: number): number {
  let sum = 0;
  for (let hour = 1; hour <= 24; hour += 1)
    for (const variable of TINTS[tint].variables) sum += readingAt(view, stageId, variable, day * 24 + hour, 'out');
  return sum / 24;
}

/** How much a change weighs: its share of the larger number; for pH, whole units. */
function weightOf({ tint, in: before, out: after }: Change): number {
  if (tint === 'pH') return Math.abs(after - before);
  const { low, high } = TINTS[tint];
  return Math.abs(after - before) / Math.max(before, after, TRACE_SHARE * (high - low));
}

/** What changes most from the stage before to the stage's outlet, largest share first; none for a stage without water of its own. */
export function changesAt(view: SeasonView, plan: Plan, stageId: string, day: number, most: number): Change[] {
  const from = inletOf(plan, stageId);
  if (from === null) return [];
  return TINT_ORDER.map((tint): Change => ({ tint, in: leaving(view, tint, from, day), out: leaving(view, tint, stageId, day) }))
    .filter((change) => weightOf(change) >= NOTABLE_SHARE)
    .sort((a, b) => weightOf(b) - weightOf(a))
    .slice(0, most);
}

/** Variables that a tint shows or is judged by. */
function tintOf(measure: Measure): TintId | null {
  if (measure.variable === 'alkalinity_meq_L') return 'pH';
  return (
    TINT_ORDER.find((tint) => [...TINTS[tint].variables, ...TINTS[tint].judged].some((variable) => variable === measure.variable)) ?? null
  );
}

/** The tint that most of a lesson's own measures read: of its mistakes, predictions and goals. Ammonia where none says. */
export function tintOfLesson(lesson: Pick<Lesson, 'mistakes' | 'predictions' | 'scoring'>): TintId {
  const asked: Measure[] = [
    ...lesson.mistakes.flatMap((mistake) => mistake.shows),
    ...lesson.predictions.map((one) => one.measure),
    ...lesson.scoring.marks.flatMap((mark) => mark.goals ?? []),
  ];
  const votes = new Map<TintId, number>();
  for (const measure of asked) {
    const tint = tintOf(measure);
    if (tint !== null) votes.set(tint, (votes.get(tint) ?? 0) + 1);
  }
  return [...votes].sort((a, b) => b[1] - a[1])[0]?.[0] ?? 'ammonia';
}
