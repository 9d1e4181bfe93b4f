// The picture's names for the pieces of the page's state. Types only, all taken from the store.
import type { ComfortBand, DesignCheck, Plan } from '../../state/common/contract';
import type { PageStore } from '../../state/common/page';
import type { SeasonView } from '../../state/common/state';

export type { ComfortBand, DesignCheck, Plan };
export type StageSpec = Plan['loop'][number];
export type SideSpec = Plan['side'][number];
export type DesignStage = DesignCheck['stages'][number];
export type StageCells = SeasonView['stages'][number];

/** All the picture asks of the store: its state with its actions, at any time. */
export interface PageSource {
  getState(): PageStore;
}
