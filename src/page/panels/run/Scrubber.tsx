// The days of the season as a rail: lived days can be looked at, marks show what happened when.
import { useLayoutEffect, useMemo, useRef, useState } from 'react';
import { branchLetter } from '../../state/run/branches';
import { eventsUntil, lastHour } from '../../state/common/selectors';
import { say } from '../../../words/say';
import { momentOf } from '../../../words/units';
import { useMoment } from '../common/moment';
import { useLived, usePageStore } from '../common/pageStore';
import { scrubMarks } from './scrubMarks';

export function Scrubber() {
  const store = usePageStore();
  const plan = useLived((lived) => lived.plan);
  const season = useLived((lived) => lived.season);
  const lived = useLived(({ lived_h }) => Math.floor(lived_h));
  const branch = useLived(({ branches, present }) => branches.find((one) => one.id === present && one.from !== null));
  const now_h = useMoment();
  const rail = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(800);
  useLayoutEffect(() => {
    const element = rail.current;
    if (element === null) return undefined;
    const watch = new ResizeObserver(() => setWidth(element.clientWidth));
    watch.observe(element);
    return () => watch.disconnect();
  }, []);
  const last = lastHour(plan);
  const day = Math.floor(lived / 24);
  const marks = useMemo(() => scrubMarks(eventsUntil(season, lived), width, last), [season, lived, width, last]);
  const share = (hour: number): string => `${(100 * hour) / last}%`;
  const { day: shownDay, clock } = momentOf(now_h);
  const weeks = Array.from({ length: Math.floor(last / 168) + 1 }, (_, n) => n * 7);
  return (
    <div className="scrubber">
      <div className="rail" ref={rail}>
        {marks.map(
          (mark) =>
            mark.label !== null && (
              <span
                key={`${mark.hour} ${mark.kind}`}
                className="rail-label"
                data-shape={mark.shape}
                style={{
                  left: `clamp(${(mark.label.length * 8.2) / 2}px, ${share(mark.hour)}, calc(100% - ${(mark.label.length * 8.2) / 2}px))`,
                }}
              >
                {mark.label}
              </span>
            ),
        )}
        <div className="rail-bar">
          <i style={{ width: share(lived) }} />
        </div>
        {branch !== undefined && (
          <i
            className="rail-split"
            title={say('season.split', { branch: branchLetter(branch.id) })}
            style={{ left: share(branch.split_h) }}
          />
        )}
        {weeks.map((week) => (
          <span key={week} className="rail-week" style={{ left: share(week * 24) }}>
            {week}
          </span>
        ))}
        {marks.map((mark) => (
          <i key={`${mark.hour} ${mark.kind}`} className="rail-mark" data-shape={mark.shape} style={{ left: share(mark.hour) }} />
        ))}
        <input
          type="range"
          aria-label={say('season.scrub')}
          min={0}
          max={last}
          step={1}
          value={Math.floor(now_h)}
          aria-valuetext={say('season.momentLived', { day: shownDay, hour: clock, lived: day })}
          onChange={(event) => store.getState().scrub(Number(event.target.value))}
        />
        <i className="rail-now" style={{ left: share(Math.min(last, now_h)) }} />
      </div>
    </div>
  );
}
