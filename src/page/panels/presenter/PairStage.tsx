// The two loops side by side, named A and B, with the one scale of both and their two large numbers each.
import { useEffect, useRef } from 'react';
import { say } from '../../../words/say';
import { figure, momentOf, unitOf } from '../../../words/units';
import { dayTold } from './dayWords';
import { figureTold } from './figureWords';
import { usePresented, usePresentedHour, usePresenter } from './presenterStore';

const BANDS = [0, 1, 2, 3, 4, 5, 6, 7, 8];
/** What the two loops are called. */
export const LETTERS = ['A', 'B'] as const;

/** Draws both loops; the answer ends it. */
export type DrawPair = (left: HTMLElement, right: HTMLElement) => () => void;

/** Which quantity colours both waters, between which ends. */
export function Scale() {
  const { store } = usePresenter();
  const shown = usePresented((state) => state.shown);
  if (shown === null) return null;
  const { scale, demonstration } = shown;
  const unit = unitOf(scale.unitKey);
  const show = (value: number): string => figure(value, Number.isInteger(value) ? 0 : scale.decimals);
  return (
    <div className="pair-scale">
      <button type="button" title={say('presenter.turnTint')} onClick={() => store.getState().turnTint(1)}>
        {unit === '' ? say(`tint.${demonstration.tint}`) : say('presenter.tint', { what: say(`tint.${demonstration.tint}`), unit })}
      </button>
      <span className="pair-end">{show(scale.low)}</span>
      <div className="ramp" role="img" aria-label={say('tint.scale', { low: show(scale.low), high: show(scale.high), unit }).trim()}>
        {BANDS.map((n) => (
          <i key={n} style={{ background: `var(--water-${n})` }} />
        ))}
      </div>
      <span className="pair-end">{show(scale.high)}</span>
    </div>
  );
}

function Figures({ side }: { side: 0 | 1 }) {
  const shown = usePresented((state) => state.shown);
  const now_h = usePresentedHour();
  if (shown === null) return null;
  return (
    <dl className="pair-figures">
      {shown.figures.map((one, index) => {
        const { name, place, alike, unit, values } = figureTold(one, shown, now_h);
        return (
          <div key={index}>
            <dd>
              <b data-figure={index} data-side={side}>
                {values[side]}
              </b>
              {unit !== '' && <span>{unit}</span>}
            </dd>
            <dt>
              {alike && <span className="hidden">{name} </span>}
              {alike ? place : place === '' ? name : say('presenter.at', { what: name, stage: place })}
            </dt>
          </div>
        );
      })}
    </dl>
  );
}

export function PairStage({ draw }: { draw: DrawPair }) {
  const shown = usePresented((state) => state.shown);
  const now_h = usePresentedHour();
  const left = useRef<HTMLDivElement>(null);
  const right = useRef<HTMLDivElement>(null);
  useEffect(() => (left.current === null || right.current === null ? undefined : draw(left.current, right.current)), [draw]);
  if (shown === null) return null;
  const { day } = momentOf(now_h);
  const names = [shown.demonstration.leftName, shown.demonstration.rightName];
  return (
    <div className="pair">
      <p className="pair-day">{dayTold(shown, now_h)}</p>
      {([0, 1] as const).map((side) => (
        <section key={side} className="pair-side" aria-label={say('presenter.loop', { letter: LETTERS[side], name: names[side] })}>
          <h2 data-long={names[side].length > 22 || undefined}>
            <span className="letter">{LETTERS[side]}</span> {names[side]}
          </h2>
          <div
            className="pair-picture"
            role="img"
            aria-label={say('presenter.picture', { letter: LETTERS[side], name: names[side], day })}
            ref={side === 0 ? left : right}
          />
          <Figures side={side} />
        </section>
      ))}
    </div>
  );
}
