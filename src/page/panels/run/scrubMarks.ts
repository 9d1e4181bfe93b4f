// Which events stand above the scrubber, in which shape, and which of them have room for their words.
import type { EventKind, SeasonEvent } from '../../state/common/contract';
import { say } from '../../../words/say';

export interface ScrubMark {
  hour: number;
  kind: EventKind;
  shape: 'trouble' | 'hand' | 'event';
  label: string | null;
}

const TROUBLES: ReadonlySet<EventKind> = new Set(['fishDied', 'pumpOff', 'powerOff', 'sludgeFull', 'filterBlocked', 'spilled', 'pumpDry']);
/** Done over and over by routine: shown only when a person's own hand did it. */
const ROUTINE: ReadonlySet<EventKind> = new Set(['fed', 'drained', 'rinsed', 'backwashed', 'toppedUp']);
/** Width of one letter of a label, as a share of the label's own line, px. */
const LETTER_PX = 8.2;

/**
 * One mark a day and kind, with words where they do not run into the words before.
 * @param width_px width of the scrubber on screen
 * @param last_h hours the scrubber spans
 */
export function scrubMarks(events: readonly SeasonEvent[], width_px: number, last_h: number): ScrubMark[] {
  const marks: ScrubMark[] = [];
  const seen = new Set<string>();
  for (const event of events) {
    const trouble = TROUBLES.has(event.kind);
    if (ROUTINE.has(event.kind) && !event.byPerson) continue;
    const key = `${Math.floor(event.hour / 24)} ${event.kind}`;
    if (seen.has(key)) continue;
    seen.add(key);
    marks.push({ hour: event.hour, kind: event.kind, shape: trouble ? 'trouble' : event.byPerson ? 'hand' : 'event', label: null });
  }
  const byWeight = [...marks].sort((a, b) => Number(b.shape === 'trouble') - Number(a.shape === 'trouble') || a.hour - b.hour);
  const taken: { from: number; to: number }[] = [];
  for (const mark of byWeight) {
    const words = say(`event.${mark.kind}`);
    const half = (words.length * LETTER_PX) / 2;
    const middle = Math.min(width_px - half, Math.max(half, (mark.hour / last_h) * width_px));
    if (taken.some((one) => middle - half < one.to + 8 && middle + half > one.from - 8)) continue;
    if (taken.length > 0 && marks.some((other) => other !== mark && other.label === words && Math.abs(other.hour - mark.hour) < last_h / 6))
      continue;
    taken.push({ from: middle - half, to: middle + half });
    mark.label = words;
  }
  return marks;
}
