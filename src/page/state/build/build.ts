// The page while a loop is built: the design in hand, its history, and what is predicted before its season begins.
import type { Lesson } from '../../../lessons/lesson';
import type { Plan } from '../../../season/plan';
import type { ComfortBand, DesignCheck } from '../../../worker/messages';
import type { Answer, Drag, QuestionBefore, Step } from '../common/state';
import { openingPlan } from './planEdits';

/** Steps of building that can be taken back, and done again; newest last. */
export interface History {
  undoable: readonly Step[];
  redoable: readonly Step[];
}

export interface Build {
  mode: 'build';
  lesson: Lesson;
  /** the design in hand: plan.loop is the order on screen */
  plan: Plan;
  history: History;
  /** levels, falls and comfort bands as the worker checked them last; null before its first answer */
  design: DesignCheck | null;
  comfort: readonly ComfortBand[];
  /** changes made to the loop as given, in a lesson that counts them */
  moved: number | null;
  drag: Drag | null;
  /** predictions made before the season begins, in the order they were answered; quiet: no more are asked for */
  answers: readonly Answer[];
  question: QuestionBefore | null;
  quiet: boolean;
  /** the season of the design is being computed */
  busy: boolean;
}

/** What a design keeps while its season is lived, to be built on afterwards. */
export interface Built {
  plan: Plan;
  history: History;
}

const NO_ANSWERS: readonly Answer[] = [];

type Known = Pick<Build, 'lesson' | 'design' | 'comfort' | 'moved'>;

/** A design with nothing predicted, nothing in the hand and no season on its way. */
function designIn(known: Known, { plan, history }: Built, predicting: boolean): Build {
  const { lesson, design, comfort, moved } = known;
  return {
    mode: 'build',
    lesson,
    plan,
    history,
    design,
    comfort,
    moved,
    drag: null,
    answers: NO_ANSWERS,
    question: null,
    quiet: !predicting,
    busy: false,
  };
}

/** A lesson just opened. @param predicting whether predictions are asked for at all */
export function openedLesson(lesson: Lesson, predicting: boolean): Build {
  return designIn(
    { lesson, design: null, comfort: [], moved: null },
    { plan: openingPlan(lesson), history: { undoable: [], redoable: [] } },
    predicting,
  );
}

/** Back from a season to the design it began with. */
export function builtAgain(known: Known & { built: Built }, predicting: boolean): Build {
  return designIn(known, known.built, predicting);
}

/** The history after one more step: what could be done again is forgotten. */
export function withStep({ plan, history }: Pick<Build, 'plan' | 'history'>, what: string): History {
  return { undoable: [...history.undoable, { plan, what }], redoable: [] };
}
