// The sign of each tint: the formula or the letters that the trade writes.
import type { TintId } from '../../state/common/state';
import { say } from '../../../words/say';

/** What is called by its sign anyway needs none beside its name. */
export function TintIcon({ tint }: { tint: TintId }) {
  const sign = say(`tintSign.${tint}`);
  if (sign === say(`tint.${tint}`)) return null;
  return (
    <svg className="tint-icon" viewBox="-16 -13 32 26" aria-hidden="true">
      <text y="5" textAnchor="middle" fontSize="14" fontWeight="760" fill="currentColor">{sign}</text>
    </svg>
  );
}
