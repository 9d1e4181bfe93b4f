// A lesson's loop in small: its stages in the order of the water, framed in blue pencil where the learner puts them.
import { stageMiniatures, type Miniature } from '../../../catalogue/icons';
import type { LessonCard } from '../../state/common/contract';

const GAP = 11;
const GROUND = 92;
const HEIGHT = 112;
const SIDE = 24;
/** Room for half a stroke that a miniature has around its stage. */
const EDGE = 3;
/** The water goes back from here, this far from the last stage's right end: where a pump's riser comes down. */
const DRAIN = 5;

const INK = { fill: 'none', stroke: 'var(--ink)', strokeWidth: 2.4, strokeLinecap: 'round', strokeLinejoin: 'round' } as const;

/** A run of pipe: ink, then water. */
function Pipe({ d }: { d: string }) {
  return (
    <>
      <path d={d} {...INK} strokeWidth={7} />
      <path d={d} {...INK} stroke="var(--water-3)" strokeWidth={3} strokeLinecap="butt" />
    </>
  );
}

interface Stood {
  miniature: Miniature;
  placed: boolean;
  x: number;
  width: number;
  top: number;
  foot: number;
}

/** Stands the stages side by side. @returns what they take in all, and their places from 0 on */
function standing(loop: LessonCard['loop']): { stood: Stood[]; total: number } {
  const stood: Stood[] = [];
  let x = 0;
  for (const { kind, placed } of loop) {
    const miniature = stageMiniatures[kind];
    if (miniature === undefined) continue;
    const width = miniature.width - 2 * EDGE;
    const top = GROUND + miniature.top + EDGE;
    stood.push({ miniature, placed, x, width, top, foot: GROUND + miniature.top + miniature.height - EDGE });
    x += width + GAP;
  }
  return { stood, total: Math.max(0, x - GAP) };
}

/** Neighbours that the learner places share a frame. */
function framesOf(stood: readonly Stood[]): { from: number; to: number; top: number }[] {
  const frames: { from: number; to: number; top: number }[] = [];
  stood.forEach((part, index) => {
    const before = frames.at(-1);
    if (!part.placed) return;
    if (before !== undefined && stood[index - 1].placed)
      Object.assign(before, { to: part.x + part.width, top: Math.min(before.top, part.top) });
    else frames.push({ from: part.x, to: part.x + part.width, top: part.top });
  });
  return frames;
}

export function MiniLoop({ loop }: { loop: LessonCard['loop'] }) {
  const { stood, total } = standing(loop);
  if (stood.length === 0) return null;
  const width = Math.max(240, total + 2 * SIDE);
  const left = (width - total) / 2;
  const first = stood[0];
  const last = stood[stood.length - 1];
  const foot = Math.min(last.foot, last.top + GAP);
  return (
    <svg className="mini-loop" viewBox={`0 0 ${width} ${HEIGHT}`} aria-hidden="true">
      <g transform={`translate(${left} 0)`}>
        <Pipe d={`M${last.x + last.width - DRAIN} ${foot}V${HEIGHT - 4}H${first.x - 10}V11H${first.x + 12}V18`} />
        <path d={`M${2 - left} ${GROUND}H${width - 2 - left}`} {...INK} strokeWidth={2.6} />
        {stood.slice(1).map((part, index) => (
          <Pipe
            key={index}
            d={`M${stood[index].x + stood[index].width} ${Math.min(GROUND - 12, Math.max(stood[index].top, part.top) + 10)}H${part.x}`}
          />
        ))}
        {stood.map(({ miniature, x }, index) => (
          <image
            key={index}
            href={miniature.picture}
            x={x - EDGE}
            y={GROUND + miniature.top}
            width={miniature.width}
            height={miniature.height}
          />
        ))}
        {framesOf(stood).map(({ from, to, top }) => (
          <rect
            key={from}
            x={from - 5}
            y={Math.max(2, top - 8)}
            width={to - from + 10}
            height={HEIGHT - 2 - Math.max(2, top - 8) - (to > last.x ? 0 : 14)}
            rx={6}
            {...INK}
            stroke="var(--pencil-blue)"
            strokeWidth={2.6}
            strokeDasharray="7 5"
          />
        ))}
      </g>
    </svg>
  );
}
