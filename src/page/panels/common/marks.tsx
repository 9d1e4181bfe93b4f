// Tick, triangle, diamond: the shapes that say whether a number matters. Colour never speaks alone.
import type { Mark } from '../../state/common/state';
import { say } from '../../../words/say';

const SHAPES: Readonly<Record<Mark, React.ReactNode>> = {
  fine: <path d="M4 12l5 6L20 5" fill="none" stroke="var(--good)" strokeWidth="3.4" strokeLinecap="round" strokeLinejoin="round" />,
  watch: (
    <>
      <path d="M12 2.5L22.5 21H1.5Z" fill="var(--amber)" stroke="var(--ink)" strokeWidth="2" strokeLinejoin="round" />
      <path d="M12 9v6M12 18v.3" stroke="var(--ink)" strokeWidth="2.6" strokeLinecap="round" />
    </>
  ),
  act: (
    <>
      <path d="M12 1.5L22.5 12L12 22.5L1.5 12Z" fill="var(--pencil-red)" stroke="var(--ink)" strokeWidth="2" />
      <path d="M12 7v6M12 16.6v.3" stroke="var(--card)" strokeWidth="2.8" strokeLinecap="round" />
    </>
  ),
};

export function MarkShape({ mark, named = true }: { mark: Mark; named?: boolean }) {
  return (
    <svg
      className="mark"
      viewBox="0 0 24 24"
      role={named ? 'img' : undefined}
      aria-label={named ? say(`sign.${mark}`) : undefined}
      aria-hidden={named ? undefined : true}
    >
      {SHAPES[mark]}
    </svg>
  );
}

/** One of the marks of the result: a leaf stamp, inked when earned, dashed when not. */
export function Stamp({ earned }: { earned: boolean }) {
  return (
    <svg className="stamp" viewBox="0 0 64 64" aria-hidden="true">
      <path
        d="M32 6C52 14 58 36 44 56C30 58 12 50 8 30C14 18 22 10 32 6Z"
        fill={earned ? 'var(--leaf)' : 'none'}
        stroke={earned ? 'var(--leaf-ink)' : 'var(--ink-2)'}
        strokeWidth="3.4"
        strokeLinejoin="round"
        strokeDasharray={earned ? undefined : '6 5'}
      />
      {earned && (
        <path d="M42 54C36 40 30 28 22 18M33 34l-14-1M37 42l-1-15" fill="none" stroke="var(--card)" strokeWidth="3" strokeLinecap="round" />
      )}
    </svg>
  );
}
