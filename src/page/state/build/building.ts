// Building the loop: placing, taking out, moving, and the part in the hand.
import type { StoreApi } from 'zustand/vanilla';
import type { Plan, StageSpec } from '../../../season/plan';
import { say } from '../../../words/say';
import { kindName, stageName } from '../../../words/stageNames';
import { canShift, isFree, partOf, withPlaced, withoutStage, withShifted } from './planEdits';
import type { PageActions, PageStore } from '../common/state';

type BuildActions = Pick<PageActions, 'place' | 'remove' | 'shift' | 'dragStart' | 'dragMove' | 'dragEnd'>;

/** The name of the stage that stands just ahead of another in a plan. */
function nameBefore(plan: Plan, stageId: string): string {
  const at = plan.loop.findIndex((stage) => stage.id === stageId);
  return stageName(plan.loop, plan.loop[Math.max(0, at - 1)].id);
}

/**
 * @param edit sets a new design, has it checked and keeps the step, told in words
 */
export function createBuilding(store: StoreApi<PageStore>, edit: (plan: Plan, what: string) => void): BuildActions {
  /** A part in hand keeps the sizes it had where it stood last. */
  const partInHand = ({ lesson, plan }: { lesson: NonNullable<PageStore['lesson']>; plan: Plan }, stageId: string): StageSpec | null => partOf(lesson, plan, stageId, store.getState().undoable.map((step) => step.plan));

  /** The design in hand, when it is the time to build and the part may be moved. */
  const inHand = (stageId: string): { lesson: NonNullable<PageStore['lesson']>; plan: Plan } | null => {
    const { lesson, plan, mode } = store.getState();
    return lesson !== null && plan !== null && mode === 'build' && isFree(lesson, stageId) ? { lesson, plan } : null;
  };

  const place = (stageId: string, gap: number): void => {
    const hand = inHand(stageId);
    const part = hand === null ? null : partInHand(hand, stageId);
    if (hand === null || part === null || !(gap >= 1) || gap > hand.plan.loop.length) return;
    const plan = withPlaced(hand.plan, part, gap);
    const what = say('said.placed', { part: stageName(plan.loop, stageId), stage: nameBefore(plan, stageId) });
    edit(plan, what);
    store.setState({ announcement: what });
  };

  const remove = (stageId: string): void => {
    const hand = inHand(stageId);
    const part = hand?.plan.loop.find((stage) => stage.id === stageId);
    if (hand === null || part === undefined) return;
    const what = say('said.takenOut', { part: kindName(part.kind) });
    edit(withoutStage(hand.plan, stageId), what);
    store.setState((state) => ({ selected: state.selected === stageId ? null : state.selected, announcement: what }));
  };

  return {
    place,
    remove,
    shift(stageId, by) {
      const hand = inHand(stageId);
      if (hand === null || !canShift(hand.lesson, hand.plan, stageId, by)) return;
      const plan = withShifted(hand.plan, stageId, by);
      const what = say('said.moved', { part: stageName(plan.loop, stageId), stage: nameBefore(plan, stageId) });
      edit(plan, what);
      store.setState({ announcement: what });
    },
    dragStart(stageId, x, y) {
      const hand = inHand(stageId);
      const stage = hand === null ? null : partInHand(hand, stageId);
      if (hand === null || stage === null) return;
      const from = hand.plan.loop.some((one) => one.id === stageId) ? 'loop' : 'shelf';
      store.setState({ drag: { stage, from, x, y, overGap: null } });
    },
    dragMove(x, y, overGap) {
      const drag = store.getState().drag;
      if (drag !== null) store.setState({ drag: { ...drag, x, y, overGap } });
    },
    dragEnd(drop) {
      const drag = store.getState().drag;
      if (drag === null) return;
      store.setState({ drag: null });
      if (!drop) return;
      if (drag.overGap !== null) place(drag.stage.id, drag.overGap);
      else if (drag.from === 'loop') remove(drag.stage.id);
    },
  };
}
