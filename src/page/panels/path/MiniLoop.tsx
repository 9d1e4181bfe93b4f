// A lesson's loop in small: its stages in the order of the water, framed in blue pencil where the learner puts them.
import type { ReactNode } from 'react';
import type { LessonCard, StageKind } from '../../state/common/contract';
import { FISH_PICTURE, LETTUCE_PICTURE } from '../common/pictures';

type Family = 'fish' | 'cone' | 'mat' | 'air' | 'bed' | 'tower' | 'sump' | 'pump' | 'lamp';
const FAMILY: Readonly<Partial<Record<StageKind, Family>>> = {
  fishTank: 'fish', radialFlowSettler: 'cone', conicalClarifier: 'cone', swirlSeparator: 'cone', fineFilter: 'mat', drumFilter: 'mat', beadFilter: 'mat', sandFilter: 'mat', cartridgeFilter: 'mat',
  degassingTank: 'air', movingBedBiofilter: 'air', tricklingFilter: 'air', raftBed: 'bed', nftChannel: 'bed', mediaBed: 'bed', tower: 'tower', sump: 'sump', returnPump: 'pump', uvUnit: 'lamp',
};
const WIDTH: Readonly<Record<Family, number>> = { fish: 62, cone: 30, mat: 30, air: 36, bed: 76, tower: 28, sump: 34, pump: 24, lamp: 24 };
const TOP: Readonly<Record<Family, number>> = { fish: 18, cone: 26, mat: 30, air: 34, bed: 46, tower: 20, sump: 72, pump: 78, lamp: 52 };
const GAP = 11;
const GROUND = 92;
const HEIGHT = 112;
const SIDE = 24;

const INK = { fill: 'none', stroke: 'var(--ink)', strokeWidth: 2.4, strokeLinecap: 'round', strokeLinejoin: 'round' } as const;

/** A run of pipe: ink, then water. */
function Pipe({ d }: { d: string }) {
  return <><path d={d} {...INK} strokeWidth={7} /><path d={d} {...INK} stroke="var(--water-3)" strokeWidth={3} strokeLinecap="butt" /></>;
}

function vessel(x: number, top: number, width: number, bottom: number, water: string): ReactNode {
  return (
    <>
      <rect x={x} y={top + 6} width={width} height={bottom - top - 6} fill={water} />
      <path d={`M${x} ${top}V${bottom}H${x + width}V${top}`} {...INK} />
    </>
  );
}

function draw(family: Family, x: number, width: number): ReactNode {
  const top = TOP[family];
  const middle = x + width / 2;
  switch (family) {
    case 'fish': return <>{vessel(x, top, width, GROUND - 2, 'var(--water-4)')}<image href={FISH_PICTURE} x={x + 5} y={top + 22} width={width - 10} height={34} /></>;
    case 'cone': return (
      <>
        <path d={`M${x} ${top + 6}V${GROUND - 24}L${middle - 3} ${GROUND - 2}H${middle + 3}L${x + width} ${GROUND - 24}V${top + 6}Z`} fill="var(--water-3)" />
        <path d={`M${middle - 8} ${GROUND - 12}L${middle - 3} ${GROUND - 3}H${middle + 3}L${middle + 8} ${GROUND - 12}Z`} fill="var(--sludge)" />
        <path d={`M${x} ${top}V${GROUND - 24}L${middle - 3} ${GROUND - 2}H${middle + 3}L${x + width} ${GROUND - 24}V${top}`} {...INK} />
      </>
    );
    case 'mat': return <>{vessel(x, top, width, GROUND - 2, 'var(--water-3)')}<path d={`M${x + 4} ${top + 18}H${x + width - 4}M${x + 4} ${top + 27}H${x + width - 4}M${x + 4} ${top + 36}H${x + width - 4}`} {...INK} stroke="var(--mat)" strokeWidth={6} strokeLinecap="butt" /></>;
    case 'air': return (
      <>
        {vessel(x, top, width, GROUND - 2, 'var(--water-3)')}
        {[0.28, 0.56, 0.8, 0.42, 0.66].map((share, index) => <circle key={share} cx={x + width * share} cy={GROUND - 10 - index * 8} r={2.6 + index * 0.3} fill="var(--card)" stroke="var(--ink)" strokeWidth={1.2} />)}
      </>
    );
    case 'bed': return (
      <>
        {vessel(x, top, width, top + 26, 'var(--water-2)')}
        <path d={`M${x + 7} ${top + 26}V${GROUND}M${x + width - 7} ${top + 26}V${GROUND}`} {...INK} strokeWidth={3.4} stroke="var(--wood)" />
        {[0.2, 0.5, 0.8].map((share) => <image key={share} href={LETTUCE_PICTURE} x={x + width * share - 14} y={top - 17} width={28} height={28} />)}
      </>
    );
    case 'tower': return <>{vessel(x, top, width, GROUND - 2, 'var(--paper-2)')}{[0.24, 0.5, 0.76].map((share) => <image key={share} href={LETTUCE_PICTURE} x={middle - 12} y={top + (GROUND - top) * share - 14} width={24} height={24} />)}</>;
    case 'sump': return vessel(x, top, width, HEIGHT - 4, 'var(--water-2)');
    case 'pump': return <><circle cx={middle} cy={GROUND - 12} r={10} fill="var(--card)" stroke="var(--ink)" strokeWidth={2.4} /><path d={`M${middle - 4} ${GROUND - 18}v12l10 -6z`} fill="var(--ink)" /></>;
    case 'lamp': return <>{vessel(x, top, width, GROUND - 8, 'var(--water-2)')}<path d={`M${middle} ${top + 11}V${GROUND - 14}`} {...INK} stroke="var(--uv)" strokeWidth={5} /></>;
  }
}

export function MiniLoop({ loop }: { loop: LessonCard['loop'] }) {
  const parts = loop.flatMap(({ kind, placed }) => {
    const family = FAMILY[kind];
    return family === undefined ? [] : [{ family, placed }];
  });
  if (parts.length === 0) return null;
  const total = parts.reduce((sum, { family }) => sum + WIDTH[family], 0) + GAP * (parts.length - 1);
  const width = Math.max(240, total + 2 * SIDE);
  const stood: { family: Family; placed: boolean; x: number; width: number }[] = [];
  for (const part of parts) {
    const before = stood.at(-1);
    stood.push({ ...part, x: before === undefined ? (width - total) / 2 : before.x + before.width + GAP, width: WIDTH[part.family] });
  }
  const first = stood[0];
  const last = stood[stood.length - 1];
  const frames: { from: number; to: number; top: number }[] = [];
  stood.forEach((part, index) => {
    const before = frames.at(-1);
    if (!part.placed) return;
    if (before !== undefined && stood[index - 1].placed) Object.assign(before, { to: part.x + part.width, top: Math.min(before.top, TOP[part.family]) });
    else frames.push({ from: part.x, to: part.x + part.width, top: TOP[part.family] });
  });
  const foot = last.family === 'sump' ? HEIGHT - 6 : last.family === 'bed' ? TOP.bed + 26 : GROUND - (last.family === 'lamp' ? 8 : 2);
  return (
    <svg className="mini-loop" viewBox={`0 0 ${width} ${HEIGHT}`} aria-hidden="true">
      <Pipe d={`M${last.x + last.width / 2} ${foot}V${HEIGHT - 4}H${first.x - 10}V11H${first.x + 12}V18`} />
      <path d={`M2 ${GROUND}H${width - 2}`} {...INK} strokeWidth={2.6} />
      {stood.slice(1).map((part, index) => <Pipe key={index} d={`M${stood[index].x + stood[index].width} ${Math.min(GROUND - 12, Math.max(TOP[stood[index].family], TOP[part.family]) + 10)}H${part.x}`} />)}
      {stood.map((part, index) => <g key={index}>{draw(part.family, part.x, part.width)}</g>)}
      {frames.map(({ from, to, top }) => <rect key={from} x={from - 5} y={Math.max(2, top - 8)} width={to - from + 10} height={HEIGHT - 2 - Math.max(2, top - 8) - (to > last.x ? 0 : 14)} rx={6} {...INK} stroke="var(--pencil-blue)" strokeWidth={2.6} strokeDasharray="7 5" />)}
    </svg>
  );
}
