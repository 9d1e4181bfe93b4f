// The cards of the learner's sheet: the lesson's stages out of their order, each with its letter. Pure; the same for the same lesson and
// version.
import type { Lesson, StageSpec } from '../../state/common/contract';
import { shuffled } from '../../state/paper/shuffle';

export interface Card {
  letter: string;
  stage: StageSpec;
  stray: boolean;
}
export interface Cards {
  /** where the water starts; it is told */
  first: StageSpec | null;
  /** the stages to put in order, shuffled, with those the reference leaves over */
  cards: Card[];
  /** boxes to fill after the first */
  boxes: number;
}

export const versionLetter = (version: number): string => String.fromCharCode(65 + version);

export function cardsOf(lesson: Lesson, version: number): Cards {
  const known = [...lesson.plan.loop, ...lesson.shelf];
  const right = lesson.reference.order.flatMap((id) => known.filter((stage) => stage.id === id).slice(0, 1));
  const [first, ...others] = right;
  const strays = lesson.shelf.filter((part) => !lesson.reference.order.includes(part.id));
  const order = shuffled(others, strays, `${lesson.plan.seed} ${version}`, (stage) => stage.kind);
  return {
    first: first ?? null,
    boxes: others.length,
    cards: order.map((stage, index) => ({ letter: versionLetter(index), stage, stray: strays.includes(stage) })),
  };
}
