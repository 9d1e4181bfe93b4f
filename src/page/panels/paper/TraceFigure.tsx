// One small trace on paper: the course of a quantity over the days, with its unit, round axes and the limits of comfort.
import type { ComfortBand } from '../../state/common/contract';
import type { SeasonView } from '../../state/common/state';
import { isWord, say } from '../../../words/say';
import { figure, unitOf } from '../../../words/units';
import { paperTraceOf, TRACE_BOX } from './paperTrace';

export interface TraceWish {
  variable: string;
  stageId: string;
  stage: string;
}

export function TraceFigure({
  wish,
  season,
  comfort,
  lived_h,
  last_h,
}: {
  wish: TraceWish;
  season: SeasonView;
  comfort: readonly ComfortBand[];
  lived_h: number;
  last_h: number;
}) {
  const trace = paperTraceOf(season, comfort, wish.variable, wish.stageId, lived_h, last_h);
  if (trace === null) return null;
  const key = `variable.${wish.variable}`;
  const what = isWord(key) ? say(key) : wish.variable;
  const unit = unitOf(wish.variable);
  const { width, height, left, right, top, bottom } = TRACE_BOX;
  const shown = (value: number): string => `${figure(value, Math.max(1, trace.ticks[0].decimals))}${unit === '' ? '' : ` ${unit}`}`;
  return (
    <figure className="trace-figure">
      <figcaption>
        <b>{what}</b>
        {unit === '' ? '' : ` ${unit}`} <span>{wish.stage}</span>
      </figcaption>
      <svg
        viewBox={`0 0 ${width} ${height}`}
        role="img"
        aria-label={say('paper.season.traceSaid', {
          what,
          stage: wish.stage,
          day: Math.floor(lived_h / 24),
          low: shown(trace.low),
          high: shown(trace.high),
          last: shown(trace.last),
        })}
      >
        {trace.ticks.map((tick) => (
          <g key={tick.value}>
            <path d={`M${left} ${tick.y}H${width - right}`} className="grid" />
            <text x={left - 4} y={tick.y + 3.4} textAnchor="end">
              {figure(tick.value, tick.decimals)}
            </text>
          </g>
        ))}
        {trace.limits.map((y) => (
          <path key={y} d={`M${left} ${y.toFixed(1)}H${width - right}`} className="limit" />
        ))}
        <path d={`M${left} ${top}V${height - bottom}H${width - right}`} className="axis" />
        <path d={trace.path} className="course" />
        {trace.days.map((tick, index) => (
          <text key={tick.day} x={tick.x} y={height - 4} textAnchor={index === 2 ? 'end' : index === 0 ? 'start' : 'middle'}>
            {tick.day}
          </text>
        ))}
      </svg>
    </figure>
  );
}
