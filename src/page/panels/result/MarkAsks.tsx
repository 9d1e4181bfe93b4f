// What each mark asks, and how a season answered it: scores, the lesson's own goals with their numbers, and changes to the loop as given.
import type { Lesson, MarkMet, ProcessFacts, Scores } from '../../state/common/contract';
import { say } from '../../../words/say';
import { figure, whole } from '../../../words/units';
import { MarkShape } from '../common/marks';
import { factsOf } from '../../state/common/selectors';
import { usePage } from '../common/pageStore';
import { limitWords, measureValue } from '../common/measureWords';

type Rule = Lesson['scoring']['marks'][number];
interface Line {
  asks: string;
  value: string | null;
  met: boolean | null;
}

/** One line for everything a mark asks. @param met null before anything was judged */
export function linesOf(
  rule: Rule,
  met: MarkMet | null,
  scores: Pick<Scores, 'fishHealth' | 'harvest'> | null,
  facts: ProcessFacts | null,
): Line[] {
  const score = (what: 'fishHealth' | 'harvest'): Line => ({
    asks: say('goals.score', { what: say(`brief.${what}`), limit: figure(rule[what], 0) }),
    value: scores === null ? null : whole(scores[what]),
    met: met?.[what] ?? null,
  });
  const goals = (rule.goals ?? []).map((goal, index): Line => {
    const found = met?.goals[index];
    return {
      // most goals name their limit themselves
      asks: /\d/.test(goal.text) ? goal.text : say('goals.goal', { text: goal.text, limits: limitWords(goal, facts) }),
      met: found === undefined || Number.isNaN(found.value) ? null : found.met,
      value: found === undefined ? null : Number.isNaN(found.value) ? say('goals.noNumber') : measureValue(goal, found.value, facts),
    };
  });
  const moved = met?.moves ?? null;
  const moves: Line[] =
    rule.moves === undefined
      ? []
      : [
          {
            asks: say('goals.moves', { n: rule.moves }),
            value: moved === null ? null : say('goals.made', { n: moved.made }),
            met: moved?.met ?? null,
          },
        ];
  return [score('fishHealth'), score('harvest'), ...goals, ...moves];
}

function Asked({ line }: { line: Line }) {
  return (
    <li>
      {line.met === true ? (
        <MarkShape mark="fine" named={false} />
      ) : (
        <span className="mark not" aria-hidden="true">
          {line.met === false ? '✕' : '·'}
        </span>
      )}
      <span>
        {line.asks}
        {line.value !== null && (
          <>
            : <b>{line.value}</b>
          </>
        )}
        {line.met !== null && <span className="hidden">, {say(line.met ? 'goals.met' : 'goals.missed')}</span>}
      </span>
    </li>
  );
}

/** @param whole whether the season is over, so that a mark is reached or not */
export function MarkAsks({
  lesson,
  marks,
  scores,
  whole: over,
}: {
  lesson: Lesson;
  marks: readonly MarkMet[] | null;
  scores: Scores | null;
  whole: boolean;
}) {
  const facts = usePage(factsOf);
  return (
    <ol className="plain mark-asks">
      {lesson.scoring.marks.map((rule, index) => {
        const met = marks?.[index] ?? null;
        return (
          <li key={index}>
            <p className="label">
              {over && met !== null
                ? say(met.earned ? 'result.reachedMark' : 'result.missedMark', { n: index + 1 })
                : say('goals.mark', { n: index + 1 })}
            </p>
            <ul className="plain">
              {linesOf(rule, met, scores, facts).map((line) => (
                <Asked key={line.asks} line={line} />
              ))}
            </ul>
          </li>
        );
      })}
    </ol>
  );
}
