// Help on demand: units, hints, the keys, and what the words of the trade mean.
import { useRef } from 'react';
import { english } from '../../../words/english';
import { languageTag } from '../../../words/language';
import { isWord, say, sayOr, type WordKey } from '../../../words/say';
import { LadderList } from '../run/Ladder';
import type { UnitSystem } from '../../../words/units';
import { lessonOf } from '../../state/common/selectors';
import { AllCautions } from './Cautions';
import { usePage, usePageStore } from './pageStore';

const SYSTEMS: readonly { system: UnitSystem; words: WordKey }[] = [
  { system: 'metric', words: 'help.metric' },
  { system: 'us', words: 'help.us' },
];
const KEYS: readonly WordKey[] = ['help.keySpace', 'help.keyUndo', 'help.keyScrub', 'help.keyLook', 'help.keyTab'];

const TERM = 'term.';

/** Terms in the order of the language's alphabet. */
function terms(): { key: string; term: string; meaning: string }[] {
  const keys = Object.keys(english)
    .filter(isWord)
    .filter((key) => key.startsWith(TERM));
  return keys
    .map((key) => ({ key, term: say(key), meaning: sayOr(`meaning.${key.slice(TERM.length)}`, key) }))
    .sort((a, b) => a.term.localeCompare(b.term, languageTag()));
}

function Choices() {
  const store = usePageStore();
  const units = usePage((page) => page.preferences.units);
  const hints = usePage((page) => page.preferences.hints);
  const predicting = usePage((page) => page.preferences.predicting);
  return (
    <div className="row">
      <fieldset className="choices">
        <legend className="label">{say('help.units')}</legend>
        {SYSTEMS.map(({ system, words }) => (
          <label key={system}>
            <input type="radio" name="units" checked={units === system} onChange={() => store.getState().setUnits(system)} />
            {say(words)}
          </label>
        ))}
      </fieldset>
      <label className="choices">
        <input type="checkbox" checked={hints} onChange={(event) => store.getState().setHints(event.target.checked)} />
        {say('help.hints')}
      </label>
      <label className="choices">
        <input type="checkbox" checked={predicting} onChange={(event) => store.getState().setPredicting(event.target.checked)} />
        {say('ask.setting')}
      </label>
    </div>
  );
}

export function Help() {
  const dialog = useRef<HTMLDialogElement>(null);
  const lesson = usePage(lessonOf);
  return (
    <>
      <button type="button" className="btn" onClick={() => dialog.current?.showModal()}>
        {say('help.button')}
      </button>
      <dialog ref={dialog} className="card ask help" aria-labelledby="help-title">
        <h2 id="help-title">{say('help.title')}</h2>
        <Choices />
        {lesson !== null && lesson.hints.length > 0 && (
          <>
            <h3>{say('ladder.title')}</h3>
            <LadderList key={lesson.id} hints={lesson.hints} />
          </>
        )}
        <h3>{say('help.keys')}</h3>
        <ul>
          {KEYS.map((key) => (
            <li key={key}>{say(key)}</li>
          ))}
        </ul>
        <h3>{say('help.terms')}</h3>
        <dl className="terms">
          {terms().map(({ key, term, meaning }) => (
            <div key={key}>
              <dt>{term}</dt>
              <dd>{meaning}</dd>
            </div>
          ))}
        </dl>
        <div className="row">
          <button type="button" className="btn" onClick={() => dialog.current?.close()}>
            {say('page.close')}
          </button>
          <AllCautions />
        </div>
      </dialog>
    </>
  );
}
