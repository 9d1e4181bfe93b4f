// Building the loop: placing, taking out, moving, and the part in the hand.
import type { StoreApi } from 'zustand/vanilla';
import type { Plan, StageSpec } from '../../../season/plan';
import { say } from '../../../words/say';
import { kindName, stageName } from '../../../words/stageNames';
import type { PageActions } from '../common/actions';
import type { PageStore } from '../common/page';
import { buildOf } from '../common/selectors';
import type { Build } from './build';
import type { EditDesign } from './designing';
import { canShift, isFree, partOf, withPlaced, withoutStage, withShifted } from './planEdits';

type BuildActions = Pick<PageActions, 'place' | 'remove' | 'shift' | 'dragStart' | 'dragMove' | 'dragEnd'>;

/** The name of the stage that stands just ahead of another in a plan. */
function nameBefore(plan: Plan, stageId: string): string {
  const at = plan.loop.findIndex((stage) => stage.id === stageId);
  return stageName(plan.loop, plan.loop[Math.max(0, at - 1)].id);
}

/** A part in hand keeps the sizes it had where it stood last. */
function partInHand({ lesson, plan, history }: Build, stageId: string): StageSpec | null {
  return partOf(
    lesson,
    plan,
    stageId,
    history.undoable.map((step) => step.plan),
  );
}

export function createBuilding(store: StoreApi<PageStore>, edit: EditDesign): BuildActions {
  /** The design in hand, when it is the time to build and the part may be moved. */
  const handOn = (stageId: string): Build | null => {
    const build = buildOf(store.getState());
    return build !== null && isFree(build.lesson, stageId) ? build : null;
  };

  const place = (build: Build, stageId: string, gap: number): void => {
    const part = partInHand(build, stageId);
    if (part === null || !(gap >= 1) || gap > build.plan.loop.length) return;
    const plan = withPlaced(build.plan, part, gap);
    const what = say('said.placed', { part: stageName(plan.loop, stageId), stage: nameBefore(plan, stageId) });
    edit(build, plan, what, { announcement: what });
  };

  const remove = (build: Build, stageId: string): void => {
    const part = build.plan.loop.find((stage) => stage.id === stageId);
    if (part === undefined) return;
    const what = say('said.takenOut', { part: kindName(part.kind) });
    const { view } = store.getState();
    edit(build, withoutStage(build.plan, stageId), what, {
      announcement: what,
      view: { ...view, selected: view.selected === stageId ? null : view.selected },
    });
  };

  return {
    place(stageId, gap) {
      const build = handOn(stageId);
      if (build !== null) place(build, stageId, gap);
    },
    remove(stageId) {
      const build = handOn(stageId);
      if (build !== null) remove(build, stageId);
    },
    shift(stageId, by) {
      const build = handOn(stageId);
      if (build === null || !canShift(build.lesson, build.plan, stageId, by)) return;
      const plan = withShifted(build.plan, stageId, by);
      const what = say('said.moved', { part: stageName(plan.loop, stageId), stage: nameBefore(plan, stageId) });
      edit(build, plan, what, { announcement: what });
    },
    dragStart(stageId, x, y) {
      const build = handOn(stageId);
      const stage = build === null ? null : partInHand(build, stageId);
      if (build === null || stage === null) return;
      const from = build.plan.loop.some((one) => one.id === stageId) ? 'loop' : 'shelf';
      store.setState({ game: { ...build, drag: { stage, from, x, y, overGap: null } } });
    },
    dragMove(x, y, overGap) {
      const build = buildOf(store.getState());
      if (build !== null && build.drag !== null) store.setState({ game: { ...build, drag: { ...build.drag, x, y, overGap } } });
    },
    dragEnd(drop) {
      const build = buildOf(store.getState());
      if (build === null || build.drag === null) return;
      const { drag } = build;
      const letGo = { ...build, drag: null };
      if (drop && drag.overGap !== null) place(letGo, drag.stage.id, drag.overGap);
      else if (drop && drag.from === 'loop') remove(letGo, drag.stage.id);
      // nothing was done with it
      if (buildOf(store.getState())?.drag === drag) store.setState({ game: letGo });
    },
  };
}
