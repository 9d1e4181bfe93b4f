// Which quantity colours the water, with the fixed scale of that colour and where the fish are at ease.
import { TINTS, TINT_ORDER } from '../../state/common/tints';
import { say } from '../../../words/say';
import { figure, unitOf } from '../../../words/units';
import { useLived, usePage, usePageStore } from '../common/pageStore';
import { TintIcon } from '../common/tintIcons';

const BANDS = [0, 1, 2, 3, 4, 5, 6, 7, 8];

function Scale() {
  const tintId = usePage((page) => page.view.tint);
  const comfort = useLived((lived) => lived.comfort);
  const tint = TINTS[tintId];
  const unit = unitOf(tint.unitKey);
  const middle = (tint.low + tint.high) / 2;
  const show = (value: number): string => figure(value, Number.isInteger(value) ? 0 : 1);
  const band = comfort.find(
    (one) =>
      one.applies === 'fish' && (tint.variables.includes(one.variable) || (tint.judged.length === 1 && tint.judged[0] === one.variable)),
  );
  const part = (value: number): number => Math.min(1, Math.max(0, (value - tint.low) / (tint.high - tint.low)));
  const from = part(band?.watchBelow ?? tint.low);
  const to = part(band?.watchAbove ?? tint.high);
  return (
    <div className="tint-scale" role="img" aria-label={say('tint.scale', { low: show(tint.low), high: show(tint.high), unit }).trim()}>
      <div className="ramp">
        {BANDS.map((n) => (
          <i key={n} style={{ background: `var(--water-${n})` }} />
        ))}
      </div>
      {band !== undefined && to > from && (
        <div className="ease" style={{ left: `${100 * from}%`, width: `${100 * (to - from)}%` }}>
          <span>{say('tint.atEase')}</span>
        </div>
      )}
      <div className="ends">
        <span>{show(tint.low)}</span>
        <span>{show(middle)}</span>
        <span>
          {say('tint.more', { value: show(tint.high) })} {unit}
        </span>
      </div>
    </div>
  );
}

export function TintPicker() {
  const store = usePageStore();
  const chosen = usePage((page) => page.view.tint);
  return (
    <section className="tint" aria-label={say('tint.title')}>
      <fieldset>
        <legend>{say('tint.title')}</legend>
        {TINT_ORDER.map((tint) => (
          <label key={tint} className="tint-choice">
            <input type="radio" name="tint" value={tint} checked={chosen === tint} onChange={() => store.getState().setTint(tint)} />
            <TintIcon tint={tint} />
            <span>{say(`tint.${tint}`)}</span>
          </label>
        ))}
      </fieldset>
      <Scale />
    </section>
  );
}
