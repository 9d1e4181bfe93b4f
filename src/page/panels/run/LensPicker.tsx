// Which quantity colours the water, with the fixed scale of that colour and where the fish are at ease.
import { LENSES, LENS_ORDER } from '../../state/common/lenses';
import { say } from '../../../words/say';
import { figure, unitOf } from '../../../words/units';
import { usePage, usePageStore } from '../common/pageStore';
import { LensIcon } from '../common/lensIcons';

const BANDS = [0, 1, 2, 3, 4, 5, 6, 7, 8];

function Scale() {
  const lensId = usePage((page) => page.lens);
  const comfort = usePage((page) => page.comfort);
  const lens = LENSES[lensId];
  const unit = unitOf(lens.unitKey);
  const middle = (lens.low + lens.high) / 2;
  const show = (value: number): string => figure(value, Number.isInteger(value) ? 0 : 1);
  const band = comfort.find((one) => one.applies === 'fish' && (lens.variables.includes(one.variable) || (lens.judged.length === 1 && lens.judged[0] === one.variable)));
  const part = (value: number): number => Math.min(1, Math.max(0, (value - lens.low) / (lens.high - lens.low)));
  const from = part(band?.watchBelow ?? lens.low);
  const to = part(band?.watchAbove ?? lens.high);
  return (
    <div className="lens-scale" role="img" aria-label={say('lens.scale', { low: show(lens.low), high: show(lens.high), unit }).trim()}>
      <div className="ramp">{BANDS.map((n) => <i key={n} style={{ background: `var(--water-${n})` }} />)}</div>
      {band !== undefined && to > from && <div className="ease" style={{ left: `${100 * from}%`, width: `${100 * (to - from)}%` }}><span>{say('lens.atEase')}</span></div>}
      <div className="ends"><span>{show(lens.low)}</span><span>{show(middle)}</span><span>{say('lens.more', { value: show(lens.high) })} {unit}</span></div>
    </div>
  );
}

export function LensPicker() {
  const store = usePageStore();
  const chosen = usePage((page) => page.lens);
  return (
    <section className="lens" aria-label={say('lens.title')}>
      <fieldset>
        <legend>{say('lens.title')}</legend>
        {LENS_ORDER.map((lens) => (
          <label key={lens} className="lens-choice">
            <input type="radio" name="lens" value={lens} checked={chosen === lens} onChange={() => store.getState().setLens(lens)} />
            <LensIcon lens={lens} />
            <span>{say(`lens.${lens}`)}</span>
          </label>
        ))}
      </fieldset>
      <Scale />
    </section>
  );
}
