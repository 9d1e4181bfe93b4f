// The choices of the question: read out at first, then counted by hand, tap or key, and at last the one that happened.
import { useEffect, useRef } from 'react';
import { MOST_VOTES } from '../../state/presenter/presenter';
import { say } from '../../../words/say';
import { MarkShape } from '../common/marks';
import { SignShape } from '../common/icons';
import { usePresented, usePresenter } from './presenterStore';

/** How the choices stand: without numbers, to be counted, or counted and settled. */
type Part = 'asked' | 'counting' | 'settled';

function Row({ index, part, most }: { index: number; part: Part; most: number }) {
  const { store } = usePresenter();
  const choice = usePresented((state) => state.shown?.demonstration.choices[index]);
  const votes = usePresented((state) => state.votes[index] ?? 0);
  const outcome = usePresented((state) => state.outcome?.choice ?? null);
  if (choice === undefined) return null;
  const key = index + 1;
  const happened = part === 'settled' && outcome === choice.key;
  const words = (
    <>
      <span className="letter square">{happened ? <MarkShape mark="fine" named={false} /> : key}</span>
      <span className="choice-words">
        {choice.text}
        {happened && <em className="hidden"> {say('presenter.happened')}</em>}
      </span>
    </>
  );
  const bar = part === 'counting' && (
    <span className="vote-bar" aria-hidden="true">
      <i style={{ width: `${most > 0 ? (100 * votes) / most : 0}%` }} />
    </span>
  );
  return (
    <li className="choice" data-happened={happened || undefined}>
      {part === 'counting' ? (
        <button
          type="button"
          className="choice-tap"
          aria-label={say('presenter.voteFor', { key, choice: choice.text })}
          onClick={() => store.getState().vote(index, 1)}
        >
          {words}
          {bar}
        </button>
      ) : (
        <div className="choice-tap">
          {words}
          {bar}
        </div>
      )}
      {part === 'counting' && (
        <>
          <input
            type="number"
            min={0}
            max={MOST_VOTES}
            value={votes}
            aria-label={say('presenter.voteCount', { key, choice: choice.text })}
            onChange={(event) => store.getState().setVotes(index, event.target.valueAsNumber)}
          />
          <button
            type="button"
            className="btn square"
            aria-label={say('presenter.voteLess', { key })}
            disabled={votes === 0}
            onClick={() => store.getState().vote(index, -1)}
          >
            <SignShape sign="less" />
          </button>
        </>
      )}
      {part === 'settled' && <b className="count">{votes}</b>}
    </li>
  );
}

export function Choices({ part }: { part: Part }) {
  const choices = usePresented((state) => state.shown?.demonstration.choices ?? []);
  const votes = usePresented((state) => state.votes);
  const list = useRef<HTMLOListElement>(null);
  useEffect(() => {
    if (part === 'counting') list.current?.focus();
  }, [part]);
  return (
    <ol
      ref={list}
      className="choices-list plain"
      data-many={choices.length > 4 ? 6 : choices.length > 3 ? 4 : undefined}
      tabIndex={-1}
      aria-label={say(part === 'counting' ? 'presenter.votes' : 'presenter.predict')}
    >
      {choices.map((choice, index) => (
        <Row key={choice.key} index={index} part={part} most={Math.max(0, ...votes)} />
      ))}
    </ol>
  );
}
