// What is wrong at a moment, worst first: comfort bands against readings, and what happened in the last day. Pure.
import type { ComfortBand } from '../../../worker/messages';
import type { EventKind } from '../../../season/trajectory';
import { pumpInForce } from './inForce';
import { readingAt } from './readings';
import { eventsUntil } from '../common/selectors';
import type { Plan } from '../../../season/plan';
import type { Mark, SeasonView } from '../common/state';
import { can, pumpAt } from '../common/kinds';

export interface BandTrouble {
  kind: 'band';
  mark: 'watch' | 'act';
  stage: string;
  applies: ComfortBand['applies'];
  variable: string;
  value: number;
  limit: number;
  side: 'below' | 'above';
}
export interface EventTrouble {
  kind: 'event';
  mark: 'watch' | 'act';
  stage: string;
  event: EventKind;
  amount: number;
}
export type Trouble = BandTrouble | EventTrouble;

type Verdict = { mark: Mark; limit: number; side: 'below' | 'above' };

/** The mark a value earns against a band. */
export function markAgainst(band: ComfortBand, value: number): Mark {
  const { watchBelow, actBelow, watchAbove, actAbove } = band;
  if ((actBelow !== undefined && value < actBelow) || (actAbove !== undefined && value > actAbove)) return 'act';
  if ((watchBelow !== undefined && value < watchBelow) || (watchAbove !== undefined && value > watchAbove)) return 'watch';
  return 'fine';
}

/** The same with the limit it is past; there is none when it is fine. */
export function verdictOf(band: ComfortBand, value: number): Verdict {
  const mark = markAgainst(band, value);
  if (mark === 'fine') return { mark, limit: NaN, side: 'above' };
  const below = mark === 'act' ? band.actBelow : band.watchBelow;
  const above = mark === 'act' ? band.actAbove : band.watchAbove;
  return below !== undefined && value < below ? { mark, limit: below, side: 'below' } : { mark, limit: above ?? NaN, side: 'above' };
}

/** Whether a band speaks about a stage of this kind: fish live in fish tanks, roots hang in beds. */
export function bandApplies(band: ComfortBand, kind: string): boolean {
  return band.applies === 'fish' ? can(kind, 'keepsFish') : can(kind, 'grows');
}

/** The mark of one variable at one stage now; fine where no band speaks about it. */
export function markAt(view: SeasonView, comfort: readonly ComfortBand[], stageId: string, variable: string, now_h: number): Mark {
  const kind = view.stages.find((stage) => stage.id === stageId)?.kind ?? '';
  let worst: Mark = 'fine';
  for (const band of comfort) {
    if (band.variable !== variable || !bandApplies(band, kind)) continue;
    const mark = markAgainst(band, readingAt(view, stageId, variable, now_h, 'inside'));
    if (mark === 'act' || (mark === 'watch' && worst === 'fine')) worst = mark;
  }
  return worst;
}

/** How far past its limit, as a ratio ≥ 1, so that unlike quantities can be ranked. */
function excess(trouble: Trouble): number {
  if (trouble.kind === 'event') return 1;
  const { value, limit, side } = trouble;
  if (side === 'above') return limit > 0 ? value / limit : 1 + value;
  return value > 0 ? limit / value : Infinity;
}

/** Events that are troubles for a day, or as long as they last. */
export const EVENT_MARKS: Partial<Record<EventKind, 'watch' | 'act'>> = {
  fishDied: 'act',
  powerOff: 'act',
  sludgeFull: 'watch',
  filterBlocked: 'watch',
  spilled: 'act',
  pumpDry: 'act',
};

/** A season at a moment. */
export interface SeasonAt {
  plan: Plan;
  season: SeasonView;
  comfort: readonly ComfortBand[];
  now_h: number;
}

function eventTroubles({ plan, season, now_h }: SeasonAt): EventTrouble[] {
  const found = new Map<string, EventTrouble>();
  for (const event of eventsUntil(season, now_h)) {
    const mark = EVENT_MARKS[event.kind];
    if (event.kind === 'powerOn') found.delete('powerOff');
    if (mark === undefined || (event.kind !== 'powerOff' && event.hour < now_h - 24)) continue;
    const key = event.kind === 'powerOff' ? 'powerOff' : `${event.kind} ${event.stage}`;
    const amount = event.amount + (event.kind === 'fishDied' ? (found.get(key)?.amount ?? 0) : 0);
    found.set(key, { kind: 'event', mark, stage: event.stage, event: event.kind, amount });
  }
  const pump = plan.loop[pumpAt(plan.loop)];
  if (pump !== undefined && !pumpInForce(plan, now_h))
    found.set('pumpOff', { kind: 'event', mark: 'act', stage: pump.id, event: 'pumpOff', amount: 0 });
  return [...found.values()];
}

/** The worst first; of like ones what happened before what is measured, then what is furthest past its limit. */
function worstFirst(a: Trouble, b: Trouble): number {
  return (
    Number(b.mark === 'act') - Number(a.mark === 'act') || Number(b.kind === 'event') - Number(a.kind === 'event') || excess(b) - excess(a)
  );
}

/** Everything wrong at a moment of a season, worst first. */
export function troublesNow(at: SeasonAt): Trouble[] {
  const { season, comfort, now_h } = at;
  const troubles: Trouble[] = eventTroubles(at);
  for (const stage of season.stages) {
    for (const band of comfort) {
      if (stage.cells === 0 || !bandApplies(band, stage.kind)) continue;
      const value = readingAt(season, stage.id, band.variable, now_h, 'inside');
      const { mark, limit, side } = verdictOf(band, value);
      if (mark !== 'fine')
        troubles.push({ kind: 'band', mark, stage: stage.id, applies: band.applies, variable: band.variable, value, limit, side });
    }
  }
  return troubles.sort(worstFirst);
}
