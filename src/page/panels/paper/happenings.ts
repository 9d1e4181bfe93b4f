// What befell a season that nobody did on purpose, told once for each kind and stage: when first, how often, how many fish. Pure.
import type { EventKind } from '../../state/common/contract';
import { eventsUntil } from '../../state/common/selectors';
import type { SeasonView } from '../../state/common/state';

const UNWISHED: ReadonlySet<EventKind> = new Set(['fishDied', 'powerOff', 'sludgeFull', 'filterBlocked', 'spilled', 'pumpDry']);

export interface Happening {
  kind: EventKind;
  stage: string;
  day: number;
  times: number;
  amount: number;
}

/** @param lived_h hours that were lived */
export function happenings(season: SeasonView, lived_h: number): Happening[] {
  const found = new Map<string, Happening>();
  for (const event of eventsUntil(season, lived_h)) {
    if (!UNWISHED.has(event.kind)) continue;
    const key = `${event.kind} ${event.stage}`;
    const before = found.get(key) ?? { kind: event.kind, stage: event.stage, day: Math.floor(event.hour / 24), times: 0, amount: 0 };
    found.set(key, { ...before, times: before.times + 1, amount: before.amount + event.amount });
  }
  return [...found.values()];
}
