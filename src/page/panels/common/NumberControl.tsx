// A slider and a number for one setting; what is being dragged or typed takes hold when it is let go.
import { useEffect, useEffectEvent, useId, useRef, useState } from 'react';
import { say, type WordKey } from '../../../words/say';
import { fromShown, stepShown, toShown, unitOf } from '../../../words/units';

interface Props {
  label: string;
  /** name of the number field, with a place for its unit */
  amount: WordKey;
  /** the quantity by which the words know its units; it is shown converted, and handed on in metric */
  variable: string;
  /** metric */
  value: number;
  min: number;
  max: number;
  step: number;
  /** a further line for the value being chosen */
  note?: (value: number) => string;
  onCommit: (value: number) => void;
}

/** Rounded to a step, without the dust of binary fractions. */
const toStep = (value: number, step: number): number => Number((Math.round(value / step) * step).toFixed(4));

export function NumberControl({ label, amount, variable, note, onCommit, ...metric }: Props) {
  const unit = unitOf(variable);
  const step = stepShown(variable, metric.step);
  const inUnits = (number: number): number => (step === metric.step ? number : toStep(toShown(variable, number), step));
  const [value, min, max] = [inUnits(metric.value), inUnits(metric.min), inUnits(metric.max)];
  const [draft, setDraft] = useState<number | null>(null);
  const [typed, setTyped] = useState<string | null>(null);
  const slider = useRef<HTMLInputElement>(null);
  const hand = (shownValue: number): void => onCommit(fromShown(variable, shownValue));
  const name = useId();
  const shown = draft ?? value;

  const letGo = useEffectEvent((chosen: number) => {
    hand(chosen);
    setDraft(null);
  });
  useEffect(() => {
    const element = slider.current;
    if (element === null) return undefined;
    // the native "change" comes once, when the slider is let go
    const changed = (): void => letGo(Number(element.value));
    element.addEventListener('change', changed);
    return () => element.removeEventListener('change', changed);
  }, []);

  const commitTyped = (): void => {
    const wanted = typed === null || typed.trim() === '' ? NaN : Number(typed);
    setTyped(null);
    setDraft(null);
    if (Number.isFinite(wanted) && Math.abs(wanted - value) > step / 1000) hand(Math.min(max, Math.max(min, wanted)));
  };

  return (
    <div className="number-control" role="group" aria-labelledby={name}>
      <div className="number-head">
        <span id={name} className="label">
          {label}
        </span>
        <input
          type="number"
          aria-label={say(amount, { unit })}
          min={min}
          max={max}
          step={step}
          value={typed ?? String(shown)}
          onChange={(event) => {
            setTyped(event.target.value);
            const wanted = Number(event.target.value);
            if (Number.isFinite(wanted) && event.target.value !== '') setDraft(Math.min(max, Math.max(min, wanted)));
          }}
          onBlur={commitTyped}
          onKeyDown={(event) => {
            if (event.key !== 'Enter') return;
            // a question may open now: this key must not answer it
            event.preventDefault();
            commitTyped();
          }}
        />
        <span className="unit">{unit}</span>
      </div>
      <input
        ref={slider}
        type="range"
        aria-labelledby={name}
        min={min}
        max={max}
        step={step}
        value={shown}
        aria-valuetext={`${shown} ${unit}`}
        style={{ '--part': `${(100 * (Math.min(max, shown) - min)) / (max - min)}%` } as React.CSSProperties}
        onChange={(event) => setDraft(Number(event.target.value))}
      />
      {note !== undefined && <p className="note">{note(fromShown(variable, shown))}</p>}
    </div>
  );
}
