// Small multiples of the selected stage's water over the lived days, with the comfort band in a green wash.
import { branchLetter, comparedBranch } from '../store/branches';
import { LENSES, LENS_ORDER } from '../store/lenses';
import { fishTankOf } from '../store/planEdits';
import { lastHour } from '../store/selectors';
import type { LensId } from '../store/state';
import { say } from '../words/say';
import { stageName } from '../words/stageNames';
import { measured } from '../words/units';
import { useMedia } from './media';
import { useMoment } from './moment';
import { usePage } from './pageStore';
import { lensReading, traceOf } from './traceData';

/** Which quantities give way first when there is room for few. */
const BY_WORTH: readonly LensId[] = ['ammonia', 'nitrite', 'oxygen', 'pH', 'nitrate', 'solids', 'hydrogenSulfide', 'carbonDioxide'];

function shownLenses(chosen: LensId, room: number): LensId[] {
  const kept = [chosen, ...BY_WORTH.filter((lens) => lens !== chosen)].slice(0, room);
  return LENS_ORDER.filter((lens) => kept.includes(lens));
}

export function Traces() {
  const plan = usePage((page) => page.plan);
  const season = usePage((page) => page.season);
  const comfort = usePage((page) => page.comfort);
  const selected = usePage((page) => page.selected);
  const chosen = usePage((page) => page.lens);
  const lived = usePage((page) => Math.floor(page.lived_h / 2) * 2);
  const ghost = usePage(comparedBranch);
  const wide = useMedia('(min-width: 1600px)');
  const middling = useMedia('(min-width: 1200px)');
  const now_h = useMoment();
  if (plan === null || season === null) return null;
  const holdsWater = season.stages.some((stage) => stage.id === selected && stage.cells > 0);
  const stageId = holdsWater && selected !== null ? selected : fishTankOf(plan);
  if (stageId === null) return null;
  const stage = stageName([...plan.loop, ...plan.side], stageId);
  return (
    <div className="traces" role="group" aria-label={say('season.traces', { stage })}>
      {shownLenses(chosen, wide ? 8 : middling ? 6 : 4).map((lens) => {
        const trace = traceOf(season, comfort, lens, stageId, Math.max(lived, now_h), now_h, lastHour(plan), ghost?.season ? { season: ghost.season, lived_h: ghost.lived_h } : null);
        if (trace === null) return null;
        const show = (value: number): string => measured(value, LENSES[lens].decimals);
        const then = ghost?.season && now_h <= ghost.lived_h ? say('season.traceGhost', { branch: branchLetter(ghost.id), value: show(lensReading(ghost.season, lens, stageId, now_h)) }) : '';
        return (
          <div key={lens} className="trace" data-chosen={lens === chosen || undefined} role="img"
            aria-label={say('season.trace', { what: say(`lens.${lens}`), stage, value: show(trace.now.value), low: show(trace.low), high: show(trace.high) }) + then}>
            <div className="trace-head" aria-hidden="true"><span>{say(`lens.${lens}`)}</span><b>{show(trace.now.value)}</b></div>
            <div className="trace-box">
              {trace.ease !== null && <i className="trace-ease" style={{ top: `${100 * trace.ease.top}%`, height: `${100 * (trace.ease.bottom - trace.ease.top)}%` }} />}
              <svg viewBox="0 0 1000 100" preserveAspectRatio="none" aria-hidden="true">{trace.ghostPath !== '' && <path className="ghost" d={trace.ghostPath} vectorEffect="non-scaling-stroke" />}<path d={trace.path} fill="none" stroke="var(--ink)" strokeWidth="2" vectorEffect="non-scaling-stroke" strokeLinejoin="round" /></svg>
              <i className="trace-now" style={{ left: `${100 * trace.now.x}%`, top: `${100 * trace.now.y}%` }} />
            </div>
          </div>
        );
      })}
    </div>
  );
}
