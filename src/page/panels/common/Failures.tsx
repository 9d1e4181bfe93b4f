// What could not be done, in words for a person: a broken lesson file with the place of each fault, or a failure of the page.
import { say } from '../../../words/say';
import { usePage, usePageStore } from './pageStore';

const MOST_SHOWN = 8;

export function Failures() {
  const store = usePageStore();
  const problems = usePage((page) => page.problems);
  const failure = usePage((page) => page.failure);
  if (problems.length === 0 && failure === null) return null;
  return (
    <div className="card failure" role="alert">
      <h2>{say(problems.length > 0 ? 'failure.lesson' : 'failure.title')}</h2>
      {failure !== null && <p>{failure}</p>}
      {problems.length > 0 && (
        <>
          <ul>{problems.slice(0, MOST_SHOWN).map((problem, index) => <li key={index}>{problem.line !== undefined && <b>{say('file.line', { line: problem.line })}, </b>}{say('failure.problem', { path: problem.path, got: problem.got, expected: problem.expected })}</li>)}</ul>
          {problems.length > MOST_SHOWN && <p>{say('trouble.more', { n: problems.length - MOST_SHOWN })}</p>}
          <p>{say('failure.lessonHelp')}</p>
        </>
      )}
      <button type="button" className="btn" onClick={() => store.getState().dismissFailure()}>{say('failure.dismiss')}</button>
    </div>
  );
}
