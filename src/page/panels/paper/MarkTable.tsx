// What each mark asks and what the season reached, as the worker judged it. Shown once the season is over.
import type { Lesson, MarkMet, Plan } from '../../state/common/contract';
import { listText } from '../../../words/language';
import { say } from '../../../words/say';
import { figure } from '../../../words/units';
import { MarkShape } from '../common/marks';
import { factsOf } from '../../state/common/selectors';
import { useLived, usePage } from '../common/pageStore';
import { limitWords, measureValue } from '../common/measureWords';

/** Every goal once, with the marks that ask for it. */
function goalsOf(marks: readonly MarkMet[]): { text: string; limits: MarkMet['goals'][number]; marks: number[] }[] {
  const found: { text: string; limits: MarkMet['goals'][number]; marks: number[] }[] = [];
  marks.forEach((mark, index) =>
    mark.goals.forEach((goal) => {
      const before = found.find((one) => JSON.stringify(one.limits.goal) === JSON.stringify(goal.goal));
      if (before === undefined) found.push({ text: goal.goal.text, limits: goal, marks: [index + 1] });
      else before.marks.push(index + 1);
    }),
  );
  return found;
}

export function MarkTable({ lesson }: { lesson: Lesson; plan: Plan }) {
  const judged = useLived((lived) => lived.judged);
  const facts = usePage(factsOf);
  if (judged === null) return null;
  const verdict = (met: boolean) => (
    <span className="verdict">
      {met ? <MarkShape mark="fine" named={false} /> : <span className="mark" aria-hidden="true" />}
      {say(met ? 'result.reached' : 'result.notReached')}
    </span>
  );
  return (
    <table className="sheet-table marks-table">
      <tbody>
        {lesson.scoring.marks.map((mark, index) => {
          const met = judged.marks.at(index);
          const moves = met?.moves ?? null;
          const scores = { fish: figure(mark.fishHealth, 0), harvest: figure(mark.harvest, 0) };
          return (
            <tr key={index}>
              <th scope="row">{say('paper.season.asks', { n: index + 1 })}</th>
              <td>
                {moves === null || mark.moves === undefined
                  ? say('paper.season.scores', scores)
                  : say('paper.season.scoresMoves', { ...scores, most: mark.moves, made: moves.made })}
              </td>
              <td>{verdict(met?.earned ?? false)}</td>
            </tr>
          );
        })}
        {goalsOf(judged.marks).map((goal, index) => (
          <tr key={`goal ${index}`}>
            <th scope="row">{say('paper.season.goalAsks', { n: goal.marks.length, marks: listText(goal.marks.map(String), 'all') })}</th>
            <td>
              {say('goals.goal', { text: goal.text, limits: limitWords(goal.limits.goal, facts) })}:{' '}
              <b>{measureValue(goal.limits.goal, goal.limits.value, facts)}</b>
            </td>
            <td>{verdict(goal.limits.met)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
