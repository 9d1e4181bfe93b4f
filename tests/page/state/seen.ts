// The page as claims look at it: every slice's fields side by side, with what a mode does not have left empty, and all actions.
import type { StoreApi } from 'zustand/vanilla';
import type { Build } from '../../../src/page/state/build/build';
import type { PageStore } from '../../../src/page/state/common/page';
import {
  buildOf,
  comfortOf,
  designOf,
  dragOf,
  hourOf,
  lessonOf,
  livedOf,
  openedOf,
  planOf,
  seasonOf,
  speedOf,
} from '../../../src/page/state/common/selectors';
import type { Lived } from '../../../src/page/state/run/lived';

const NOTHING: readonly never[] = [];

export function seen(store: StoreApi<PageStore>) {
  const page = store.getState();
  const { game, view, preferences } = page;
  const [build, lived, opened] = [buildOf(page), livedOf(page), openedOf(page)];
  const history = build?.history ?? lived?.built.history;
  return {
    ...page,
    ...view,
    ...preferences,
    mode: game.mode,
    lesson: lessonOf(page),
    plan: planOf(page),
    design: designOf(page),
    comfort: comfortOf(page),
    season: seasonOf(page),
    drag: dragOf(page),
    now_h: hourOf(page),
    lived_h: 'lived_h' in game ? game.lived_h : 0,
    speed: speedOf(page),
    busy: opened?.busy ?? false,
    moved: opened?.moved ?? null,
    undoable: history?.undoable ?? NOTHING,
    redoable: history?.redoable ?? NOTHING,
    acts: lived?.acts ?? [],
    branches: lived?.branches ?? [],
    present: lived?.present ?? 0,
    compared: lived?.compared ?? null,
    answers: opened?.answers ?? NOTHING,
    question: opened?.question ?? null,
    quiet: opened?.quiet ?? false,
    judged: lived?.judged ?? null,
    soFar: lived?.soFar ?? null,
    scale: game.mode === 'class' ? game.scale : null,
    told: game.mode === 'class' ? game.told : null,
  };
}

/** Changes what is built, as if the worker or the person had. @throws Error when nothing is built */
export function changeBuild(store: StoreApi<PageStore>, change: Partial<Build>): void {
  const build = buildOf(store.getState());
  if (build === null) throw new Error('nothing is built');
  store.setState({ game: { ...build, ...change } });
}

/** The season that is lived. @throws Error when none is */
export function livedIn(store: StoreApi<PageStore>): Lived {
  const lived = livedOf(store.getState());
  if (lived === null) throw new Error('no season is lived');
  return lived;
}
