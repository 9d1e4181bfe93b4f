// The picture's names for the pieces of the page's state. Types only, all taken from the store.
import type { PageState, PageStore, SeasonView } from '../../state/common/state';

export type Plan = NonNullable<PageState['plan']>;
export type StageSpec = Plan['loop'][number];
export type SideSpec = Plan['side'][number];
export type DesignCheck = NonNullable<PageState['design']>;
export type DesignStage = DesignCheck['stages'][number];
export type ComfortBand = PageState['comfort'][number];
export type StageCells = SeasonView['stages'][number];

/** All the picture asks of the store: its state with its actions, at any time. */
export interface PageSource { getState(): PageStore }
