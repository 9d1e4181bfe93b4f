// The list to choose from: every demonstration that the lessons prepare, and any two branches of the season at hand.
import { useEffect, useState } from 'react';
import { livedOf } from '../../state/common/selectors';
import type { Branch } from '../../state/common/state';
import { branchLetter } from '../../state/run/branches';
import { say } from '../../../words/say';
import { usePage } from '../common/pageStore';
import { usePresented, usePresenter } from './presenterStore';

const NONE: readonly Branch[] = [];

function Branches() {
  const { store } = usePresenter();
  const branches = usePage((page) => livedOf(page)?.branches ?? NONE);
  const present = usePage((page) => livedOf(page)?.present ?? 0);
  const ready = branches.length > 1;
  const [left, setLeft] = useState(0);
  const [right, setRight] = useState(present === 0 ? Math.max(0, branches.length - 1) : present);
  const sides = [
    { name: say('presenter.left'), id: left, set: setLeft },
    { name: say('presenter.right'), id: right, set: setRight },
  ];
  return (
    <section className="chooser-branches" aria-label={say('presenter.branches')}>
      <h2>{say('presenter.branches')}</h2>
      {!ready && <p>{say('presenter.branchesHint')}</p>}
      {ready && (
        <div className="row">
          {sides.map(({ name, id, set }) => (
            <label key={name}>
              {name}{' '}
              <select value={id} onChange={(event) => set(Number(event.target.value))}>
                {branches.map((branch) => (
                  <option key={branch.id} value={branch.id}>
                    {say('branch.name', { branch: branchLetter(branch.id) })}
                  </option>
                ))}
              </select>
            </label>
          ))}
          <button type="button" className="btn" disabled={left === right} onClick={() => void store.getState().showBranches(left, right)}>
            {say('presenter.showBranches')}
          </button>
        </div>
      )}
    </section>
  );
}

export function Chooser({ leave }: { leave: () => void }) {
  const { store } = usePresenter();
  const lessons = usePresented((state) => state.lessons);
  const reading = usePresented((state) => state.reading);
  const busy = usePresented((state) => state.busy);
  const failure = usePresented((state) => state.failure);
  useEffect(() => void store.getState().readAll(), [store]);
  return (
    <div className="chooser scroll" tabIndex={0} role="region" aria-label={say('presenter.choose')}>
      <header className="chooser-head">
        <h1>{say('presenter.choose')}</h1>
        <button type="button" className="btn" title={say('presenter.leaveKey')} onClick={leave}>
          {say('presenter.leave')}
        </button>
      </header>
      <p className="chooser-hint">{say('presenter.chooseHint')}</p>
      {failure !== null && (
        <p className="chooser-failure" role="alert">
          {failure}
        </p>
      )}
      {busy && <p role="status">{say('presenter.busy')}</p>}
      {(lessons ?? []).map((lesson) => (
        <section key={lesson.id} aria-label={lesson.title}>
          <h2>{lesson.title}</h2>
          <ul className="chooser-list plain">
            {lesson.demonstrations.map(({ key, title }) => (
              <li key={key}>
                <button type="button" className="btn" disabled={busy} onClick={() => void store.getState().show(lesson.id, key)}>
                  {title}
                </button>
              </li>
            ))}
          </ul>
        </section>
      ))}
      {reading && <p role="status">{say('presenter.reading')}</p>}
      {!reading && lessons !== null && lessons.length === 0 && <p>{say('presenter.none')}</p>}
      <Branches />
    </div>
  );
}
