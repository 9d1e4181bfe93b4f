// What the worker told of the kinds of stages: the page asks what a stage can do, never which it is.
import type { Capabilities, CatalogueEntry, Plan } from './contract';

let known: ReadonlyMap<string, CatalogueEntry> = new Map();

/** Takes down what the worker told; it is the same for every page, and told before the first lesson opens. */
export function learnKinds(entries: readonly CatalogueEntry[]): void {
  known = new Map(entries.map((entry) => [entry.kind, entry]));
}

/** Whether a kind of stage can do or is something; a kind that nobody told of can do nothing. */
export const can = (kind: string, what: keyof Capabilities): boolean => Boolean(known.get(kind)?.[what]);

/** Where the pump stands in a loop, -1 where there is none. */
export const pumpAt = (loop: readonly { kind: string }[]): number => loop.findIndex((stage) => can(stage.kind, 'pumps'));

type Side = Plan['side'][number];
export type SolidsSide = Extract<Side, { takes: string[] }>;
export type DosingSide = Extract<Side, { into: string }>;

/** What stands at the side either takes what others let out, or drips base into a tank. */
export const takesSolids = (side: Side): side is SolidsSide => 'takes' in side;
export const doses = (side: Side): side is DosingSide => 'into' in side;
