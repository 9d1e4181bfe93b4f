// What could not be done, in words for a person: a broken lesson file with the place of each fault, or a failure of the page.
import { say } from '../../../words/say';
import { expectedWords, foundWords, whereWords } from '../../../words/problemWords';
import type { Problem } from '../../state/common/contract';
import { usePage, usePageStore } from './pageStore';

const MOST_SHOWN = 8;

function failureWords(problem: Problem): string {
  const values = { path: whereWords(problem), got: foundWords(problem.got), expected: expectedWords(problem.expected) };
  return problem.line === undefined || problem.path === ''
    ? say('failure.problem', values)
    : say('failure.problemAt', { ...values, line: problem.line });
}

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
          <ul>
            {problems.slice(0, MOST_SHOWN).map((problem, index) => (
              <li key={index}>{failureWords(problem)}</li>
            ))}
          </ul>
          {problems.length > MOST_SHOWN && <p>{say('trouble.more', { n: problems.length - MOST_SHOWN })}</p>}
          <p>{say('failure.lessonHelp')}</p>
        </>
      )}
      <button type="button" className="btn" onClick={() => store.getState().dismissFailure()}>
        {say('failure.dismiss')}
      </button>
    </div>
  );
}
