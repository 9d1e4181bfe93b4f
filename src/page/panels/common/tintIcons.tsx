// A small ink drawing for each tint.
import type { TintId } from '../../state/common/state';

const line = { fill: 'none', stroke: 'currentColor', strokeWidth: 2, strokeLinecap: 'round', strokeLinejoin: 'round' } as const;
const dot = { fill: 'currentColor' } as const;

const DRAWINGS: Readonly<Record<TintId, React.ReactNode>> = {
  ammonia: <><circle cx="-4" cy="2" r="5" {...line} /><circle cx="4" cy="-4" r="2.6" {...line} /><circle cx="6" cy="4" r="2.6" {...line} /></>,
  nitrite: <path d="M-8 0H0M0 0L7 -6M0 0L7 6" {...line} />,
  nitrate: <path d="M0 1V9M0 1L-8 -5M0 1L8 -5" {...line} />,
  oxygen: <><circle cx="-4" cy="0" r="4.4" {...line} /><circle cx="5" cy="0" r="4.4" {...line} /></>,
  carbonDioxide: <><circle cx="0" cy="0" r="4" {...line} /><circle cx="-8" cy="0" r="2.6" {...line} /><circle cx="8" cy="0" r="2.6" {...line} /></>,
  hydrogenSulfide: <path d="M0 -8L8 0L0 8L-8 0Z" {...line} />,
  solids: <><circle cx="-5" cy="3" r="2.6" {...dot} /><circle cx="3" cy="-4" r="3.2" {...dot} /><circle cx="6" cy="5" r="2" {...dot} /></>,
  pH: <path d="M-8 7H8M-5 7V-1M0 7V-6M5 7V2" {...line} strokeWidth={2.4} />,
};

export function TintIcon({ tint }: { tint: TintId }) {
  return <svg className="tint-icon" viewBox="-13 -13 26 26" aria-hidden="true">{DRAWINGS[tint]}</svg>;
}
