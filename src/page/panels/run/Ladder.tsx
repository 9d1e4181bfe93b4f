// The lesson's own hints, one step at a time: something to notice, something to think of, something to do.
import './ladder.css';
import { useId, useState } from 'react';
import type { Ladder } from '../../state/common/contract';
import { say } from '../../../words/say';

const STEPS = ['notice', 'think', 'do'] as const;

function Rungs({ hint }: { hint: Ladder }) {
  const [open, setOpen] = useState(false);
  const [steps, setSteps] = useState(1);
  const body = useId();
  return (
    <li className="ladder-hint">
      <button type="button" className="btn fold" aria-expanded={open} aria-controls={body} onClick={() => setOpen(!open)}>
        {hint.about}
      </button>
      <div id={body} hidden={!open}>
        <ol className="plain" aria-live="polite">
          {STEPS.slice(0, steps).map((step) => (
            <li key={step}>
              <b>{say(`ladder.${step}`)}</b> {hint[step]}
            </li>
          ))}
        </ol>
        {steps < STEPS.length && (
          <button type="button" className="btn" aria-label={`${say('ladder.next')}: ${hint.about}`} onClick={() => setSteps(steps + 1)}>
            {say('ladder.next')}
          </button>
        )}
      </div>
    </li>
  );
}

export function LadderList({ hints }: { hints: readonly Ladder[] }) {
  return (
    <ul className="plain ladder-list">
      {hints.map((hint) => (
        <Rungs key={hint.about} hint={hint} />
      ))}
    </ul>
  );
}
