// Small multiples of the selected stage's water over the lived days, with the comfort band in a green wash.
import { useMemo } from 'react';
import { branchLetter, comparedBranch } from '../../state/run/branches';
import { TINTS, TINT_ORDER } from '../../state/common/tints';
import { fishTankOf } from '../../state/build/planEdits';
import { lastHour } from '../../state/common/selectors';
import type { TintId } from '../../state/common/state';
import { say } from '../../../words/say';
import { stageName } from '../../../words/stageNames';
import { measured } from '../../../words/units';
import { useMedia } from '../common/media';
import { useMoment } from '../common/moment';
import { useLived, usePage } from '../common/pageStore';
import { heightIn, tintReading, traceOf, traceStep } from './traceData';

/** Which quantities give way first when there is room for few. */
const BY_WORTH: readonly TintId[] = ['ammonia', 'nitrite', 'oxygen', 'pH', 'nitrate', 'solids', 'hydrogenSulfide', 'carbonDioxide'];

function shownTints(chosen: TintId, room: number): TintId[] {
  const kept = [chosen, ...BY_WORTH.filter((tint) => tint !== chosen)].slice(0, room);
  return TINT_ORDER.filter((tint) => kept.includes(tint));
}

interface Shown {
  tint: TintId;
  stageId: string;
  stage: string;
  chosen: boolean;
}

/** One quantity: its line is drawn anew only when another point of it has been lived; the number and the dot follow the moment. */
function OneTrace({ tint, stageId, stage, chosen }: Shown) {
  const last_h = useLived((lived) => lastHour(lived.plan));
  const season = useLived((lived) => lived.season);
  const comfort = useLived((lived) => lived.comfort);
  const lived = useLived(({ lived_h }) => Math.floor(lived_h / traceStep(last_h)) * traceStep(last_h));
  const ghost = useLived(comparedBranch);
  const now_h = useMoment();
  const other = ghost?.season ?? null;
  const otherLived = ghost?.lived_h ?? 0;
  const trace = useMemo(
    () => traceOf(season, comfort, tint, stageId, lived, last_h, other === null ? null : { season: other, lived_h: otherLived }),
    [season, comfort, tint, stageId, lived, last_h, other, otherLived],
  );
  const line = useMemo(
    () =>
      trace !== null && (
        <svg viewBox="0 0 1000 100" preserveAspectRatio="none" aria-hidden="true">
          {trace.ghostPath !== '' && <path className="ghost" d={trace.ghostPath} vectorEffect="non-scaling-stroke" />}
          <path d={trace.path} fill="none" stroke="var(--ink)" strokeWidth="2" vectorEffect="non-scaling-stroke" strokeLinejoin="round" />
        </svg>
      ),
    [trace],
  );
  if (trace === null) return null;
  const value = tintReading(season, tint, stageId, now_h);
  const show = (one: number): string => measured(one, TINTS[tint].decimals);
  const values = { what: say(`tint.${tint}`), stage, value: show(value), low: show(trace.low), high: show(trace.high) };
  const told =
    ghost !== null && other !== null && now_h <= ghost.lived_h
      ? say('season.traceGhost', { ...values, branch: branchLetter(ghost.id), other: show(tintReading(other, tint, stageId, now_h)) })
      : say('season.trace', values);
  return (
    <div className="trace" data-chosen={chosen || undefined} role="img" aria-label={told}>
      <div className="trace-head" aria-hidden="true">
        <span>{say(`tint.${tint}`)}</span>
        <b>{show(value)}</b>
      </div>
      <div className="trace-box">
        {trace.ease !== null && (
          <i className="trace-ease" style={{ top: `${100 * trace.ease.top}%`, height: `${100 * (trace.ease.bottom - trace.ease.top)}%` }} />
        )}
        {line}
        <i className="trace-now" style={{ left: `${(100 * now_h) / last_h}%`, top: `${100 * heightIn(trace, value)}%` }} />
      </div>
    </div>
  );
}

export function Traces() {
  const plan = useLived((lived) => lived.plan);
  const season = useLived((lived) => lived.season);
  const selected = usePage((page) => page.view.selected);
  const chosen = usePage((page) => page.view.tint);
  const wide = useMedia('(min-width: 1600px)');
  const middling = useMedia('(min-width: 1200px)');
  const low = useMedia('(max-height: 520px)');
  if (low) return null;
  const holdsWater = season.stages.some((stage) => stage.id === selected && stage.cells > 0);
  const stageId = holdsWater && selected !== null ? selected : fishTankOf(plan);
  if (stageId === null) return null;
  const stage = stageName([...plan.loop, ...plan.side], stageId);
  return (
    <div className="traces" role="group" aria-label={say('season.traces', { stage })}>
      {shownTints(chosen, wide ? 8 : middling ? 6 : 4).map((tint) => (
        <OneTrace key={tint} tint={tint} stageId={stageId} stage={stage} chosen={tint === chosen} />
      ))}
    </div>
  );
}
