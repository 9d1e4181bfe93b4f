// Which prediction stands open at a moment: to be asked when its hour comes, or to be explained when it is due. Pure.
import type { Prediction } from '../../../lessons/lesson';
import type { Plan } from '../../../season/plan';
import { TINT_ORDER, TINTS } from '../common/tints';
import { kindOf } from '../common/selectors';
import type { Opened, View } from '../common/page';
import type { Answer, Question, Speed } from '../common/state';
import type { Lived } from './lived';

type Asking = Pick<Opened, 'lesson' | 'plan' | 'answers' | 'quiet'>;
/** A question and the hour of the season at which it is put. */
export interface Put {
  question: Pick<Question, 'key' | 'part'>;
  hour: number;
}

export function answerTo(answers: readonly Answer[], key: string): Answer | undefined {
  return answers.find((answer) => answer.key === key);
}

/** The prediction an open question is about. */
export function predictionOf({ lesson, question }: Pick<Opened, 'lesson' | 'question'>): Prediction | null {
  return question === null ? null : (lesson.predictions.find(({ key }) => key === question.key) ?? null);
}

/** Whether a prediction can be settled in this loop: the stage it is about stands in it. */
export function canAsk({ measure }: Pick<Prediction, 'measure'>, plan: Plan): boolean {
  return measure.stage === undefined || kindOf(plan, measure.stage) !== null;
}

/** The first question that comes up by an hour and has not been dealt with; what is due goes before what is asked anew. */
export function questionBy({ lesson, plan, answers, quiet }: Asking, hour: number): Put | null {
  if (quiet || lesson.predictions.length === 0) return null;
  let first: Put | null = null;
  const consider = (key: string, part: Question['part'], at: number): void => {
    const before = first === null || at < first.hour || (at === first.hour && part === 'explain' && first.question.part === 'ask');
    if (at <= hour && before) first = { question: { key, part }, hour: at };
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

/** The look at what a question is about: once there is something to see, its stage is selected and its quantity colours the water. */
export function lookFor({ key, part }: Put['question'], { lesson, plan }: Pick<Opened, 'lesson' | 'plan'>, view: View): View {
  const prediction = part === 'ask' ? undefined : lesson.predictions.find((one) => one.key === key);
  if (prediction === undefined) return view;
  const {
    look,
    measure: { variable },
  } = prediction;
  const tint = TINT_ORDER.find((one) => variable !== undefined && TINTS[one].variables.includes(variable)) ?? view.tint;
  return { ...view, tint, selected: kindOf(plan, look) !== null ? look : view.selected };
}

/** A season with a question open: its clock stands. @param resume the speed to go on at */
export function asking<L extends Lived>(lived: L, { key, part }: Put['question'], resume: Speed): L {
  return { ...lived, question: { key, part, resume }, speed: 'paused' };
}
