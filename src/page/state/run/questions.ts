// Which prediction stands open at a moment: to be asked when its hour comes, or to be explained when it is due. Pure.
import type { Prediction } from '../../../lessons/lesson';
import type { Plan } from '../../../season/plan';
import { TINT_ORDER, TINTS } from '../common/tints';
import { kindOf } from '../common/selectors';
import type { Answer, PageState, Question } from '../common/state';

export type Asking = Pick<PageState, 'lesson' | 'plan' | 'answers' | 'quiet'>;
/** A question and the hour of the season at which it is put. */
export interface Put { question: Pick<Question, 'key' | 'part'>; hour: number }

/** No question asked, nothing answered: where every season begins. */
export const UNASKED: Pick<PageState, 'answers' | 'question' | 'judged' | 'soFar'> = { answers: [], question: null, judged: null, soFar: null };

export function answerTo(answers: readonly Answer[], key: string): Answer | undefined {
  return answers.find((answer) => answer.key === key);
}

/** The prediction an open question is about. */
export function predictionOf({ lesson, question }: Pick<PageState, 'lesson' | 'question'>): Prediction | null {
  return question === null ? null : lesson?.predictions.find(({ key }) => key === question.key) ?? null;
}

/** Whether a prediction can be settled in this loop: the stage it is about stands in it. */
export function canAsk({ measure }: Pick<Prediction, 'measure'>, plan: Plan | null): boolean {
  return plan === null || measure.stage === undefined || kindOf(plan, measure.stage) !== null;
}

/** The first question that comes up by an hour and has not been dealt with; what is due goes before what is asked anew. */
export function questionBy({ lesson, plan, answers, quiet }: Asking, hour: number): Put | null {
  if (lesson === null || quiet || lesson.predictions.length === 0) return null;
  let first: Put | null = null;
  const consider = (key: string, part: Question['part'], at: number): void => {
    if (at <= hour && (first === null || at < first.hour || (at === first.hour && part === 'explain' && first.question.part === 'ask'))) first = { question: { key, part }, hour: at };
  };
  for (const prediction of lesson.predictions) {
    const { key, askDay, dueDay } = prediction;
    const answer = answerTo(answers, key);
    if (answer === undefined && canAsk(prediction, plan)) consider(key, 'ask', 24 * askDay);
    else if (answer === undefined) continue;
    else if (answer.choice !== null && answer.explained === undefined) consider(key, 'explain', 24 * dueDay);
  }
  return first;
}

/** The page with a question open: the clock stands; once there is something to see, its stage is selected and its quantity colours the water. */
export function asking(state: Pick<PageState, 'lesson' | 'plan' | 'speed' | 'selected' | 'tint'>, { key, part }: Put['question']): Pick<PageState, 'question' | 'speed' | 'selected' | 'tint'> {
  const prediction = part === 'ask' ? undefined : state.lesson?.predictions.find((one) => one.key === key);
  const look = prediction?.look;
  const tint = TINT_ORDER.find((one) => prediction?.measure.variable !== undefined && TINTS[one].variables.includes(prediction.measure.variable)) ?? state.tint;
  return { question: { key, part, resume: state.speed }, speed: 'paused', tint, selected: look !== undefined && state.plan !== null && kindOf(state.plan, look) !== null ? look : state.selected };
}
