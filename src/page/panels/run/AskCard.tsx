// A prediction to commit to: what is expected, and why; or neither.
import { useId, useState } from 'react';
import type { Prediction } from '../../state/common/contract';
import { OWN_WORDS_MAX } from '../../state/run/answers';
import { earlierOf } from '../../state/path/keptAnswers';
import { lessonOf } from '../../state/common/selectors';
import { canAsk } from '../../state/run/questions';
import { say } from '../../../words/say';
import { useOpened, usePage, usePageStore } from '../common/pageStore';

/** The reason that is none of those listed. */
const OWN = Symbol('own words');

/** What was expected the last time, and what came of it, where this device has kept it. */
function Earlier({ prediction }: { prediction: Prediction }) {
  const kept = usePage((page) => earlierOf(page.earlier, lessonOf(page)?.id ?? '', prediction.key));
  const text = (key: string | null | undefined): string | undefined => prediction.choices.find((choice) => choice.key === key)?.text;
  const choice = text(kept?.choice);
  const outcome = text(kept?.outcome);
  return choice === undefined || outcome === undefined ? null : <p className="note">{say('ask.earlier', { choice, outcome })}</p>;
}

export function AskCard({ prediction }: { prediction: Prediction }) {
  const store = usePageStore();
  const lesson = useOpened((game) => game.lesson);
  const plan = useOpened((game) => game.plan);
  const all = lesson.predictions.filter((one) => one.askDay === prediction.askDay && canAsk(one, plan));
  const [choice, setChoice] = useState<string | null>(null);
  const [reason, setReason] = useState<string | typeof OWN | null>(null);
  const [words, setWords] = useState('');
  const [lacking, setLacking] = useState(false);
  const name = useId();
  const ready = choice !== null && (reason === OWN ? words.trim() !== '' : reason !== null);
  const commit = (): void => {
    if (!ready || choice === null) setLacking(true);
    else store.getState().predict(choice, typeof reason === 'string' ? reason : null, reason === OWN ? words : '');
  };
  return (
    <>
      <div className="question-scroll" tabIndex={0} role="group" aria-labelledby={`${name}-question`}>
        <p className="question-head">
          <b>{prediction.askDay === 0 ? say('ask.before') : say('ask.during', { day: prediction.askDay })}</b>
          {all.length > 1 && <span className="note">{say('ask.count', { n: all.indexOf(prediction) + 1, all: all.length })}</span>}
        </p>
        <h2 id={`${name}-question`}>{prediction.question}</h2>
        <p className="note">{prediction.dueDay < plan.days ? say('ask.due', { day: prediction.dueDay }) : say('ask.atEnd')}</p>
        <Earlier prediction={prediction} />
        <fieldset className="options short">
          <legend>{say('ask.choice')}</legend>
          {prediction.choices.map(({ key, text }) => (
            <label key={key}>
              <input type="radio" name={`${name}-choice`} checked={choice === key} onChange={() => setChoice(key)} />
              <span>{text}</span>
            </label>
          ))}
        </fieldset>
        <fieldset className="options">
          <legend>{say('ask.reason')}</legend>
          {prediction.explanations.map(({ key, text }) => (
            <label key={key}>
              <input type="radio" name={`${name}-reason`} checked={reason === key} onChange={() => setReason(key)} />
              <span>{text}</span>
            </label>
          ))}
          <label>
            <input type="radio" name={`${name}-reason`} checked={reason === OWN} onChange={() => setReason(OWN)} />
            <span>{say('ask.own')}</span>
          </label>
          {reason === OWN && (
            <textarea
              aria-label={say('ask.ownField')}
              rows={2}
              maxLength={OWN_WORDS_MAX}
              value={words}
              onChange={(event) => setWords(event.target.value)}
            />
          )}
        </fieldset>
      </div>
      <p className="question-lacks" role="alert">
        {lacking && !ready ? say('ask.lacks') : ''}
      </p>
      <div className="row question-buttons">
        <button type="button" className="btn plan" aria-disabled={!ready || undefined} onClick={commit}>
          {say('ask.commit')}
        </button>
        <button type="button" className="btn" onClick={() => store.getState().skipQuestion()}>
          {say('ask.skip')}
        </button>
        <button type="button" className="btn plain-btn" onClick={() => store.getState().askNoMore()}>
          {say('ask.noMore')}
        </button>
      </div>
    </>
  );
}
