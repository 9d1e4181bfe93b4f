// What was changed in a lesson file of an older format, told until it is read.
import { say } from '../../../words/say';
import { usePage, usePageStore } from '../common/pageStore';

export function OldFileNote() {
  const store = usePageStore();
  const old = usePage((page) => page.path.old);
  if (old === null) return null;
  return (
    <div className="card failure" role="status" aria-labelledby="old-title">
      <h2 id="old-title">{say('old.title')}</h2>
      <p>{say('old.format', { format: old.format })}</p>
      {old.renamed.length > 0 && (
        <>
          <p>{say('old.renamed')}</p>
          <ul>
            {old.renamed.map(({ was, is }) => (
              <li key={was}>{say('old.name', { was, is })}</li>
            ))}
          </ul>
        </>
      )}
      <button type="button" className="btn" onClick={() => store.getState().dismissOld()}>
        {say('old.close')}
      </button>
    </div>
  );
}
