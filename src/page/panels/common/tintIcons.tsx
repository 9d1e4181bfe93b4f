// The sign of each tint: the formula or the letters that the trade writes.
import type { TintId } from '../../state/common/state';
import { say } from '../../../words/say';

/** A name that holds its sign needs none beside it. */
export function TintIcon({ tint }: { tint: TintId }) {
  const sign = say(`tintSign.${tint}`);
  if (say(`tint.${tint}`).includes(sign)) return null;
  return (
    <svg className="tint-icon" viewBox="-16 -13 32 26" aria-hidden="true">
      <text y="5" textAnchor="middle" fontSize="14" fontWeight="760" fill="currentColor">
        {sign}
      </text>
    </svg>
  );
}
