// Small ink signs on buttons.
const SIGNS = {
  earlier: 'M12 19V5M6 11l6-6 6 6',
  later: 'M12 5v14M6 13l6 6 6-6',
  out: 'M6 6l12 12M18 6L6 18',
  run: 'M7 4.5v15l12-7.5z',
  pause: 'M8 5v14M16 5v14',
  step: 'M5 5v14l9-7zM18 5v14',
  previous: 'M15 5l-7 7 7 7',
  undo: 'M8 4L4 8.5L8 13M4 8.5H13A6 5.8 0 0 1 13 20H8',
  redo: 'M16 4L20 8.5L16 13M20 8.5H11A6 5.8 0 0 0 11 20H16',
  next: 'M9 5l7 7-7 7',
  less: 'M5 12h14',
  closer: 'M15.5 10a5.5 5.5 0 1 1-11 0a5.5 5.5 0 0 1 11 0M14 14l6 6M10 7.5v5M7.5 10h5',
  whole: 'M4 9V4h5M15 4h5v5M20 15v5h-5M9 20H4v-5',
  list: 'M8.5 6H20M8.5 12H20M8.5 18H20M4 6h.3M4 12h.3M4 18h.3',
} as const;

export type Sign = keyof typeof SIGNS;

export function SignShape({ sign }: { sign: Sign }) {
  const filled = sign === 'run' || sign === 'step';
  return (
    <svg className="sign" viewBox="0 0 24 24" aria-hidden="true">
      <path
        d={SIGNS[sign]}
        fill={filled ? 'currentColor' : 'none'}
        stroke="currentColor"
        strokeWidth={sign === 'pause' ? 4 : 2.6}
        strokeLinecap="round"
        strokeLinejoin="round"
      />
    </svg>
  );
}
