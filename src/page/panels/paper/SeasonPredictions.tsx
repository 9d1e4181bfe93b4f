// What the learner predicted and why, beside what the season brought and which explanations its figures bear out.
import type { Lesson, Plan, Prediction, Settled } from '../../state/common/contract';
import { say } from '../../../words/say';
import { factsOf } from '../../state/common/selectors';
import { useLived, usePage } from '../common/pageStore';
import { measureValue, measureWords } from '../common/measureWords';
import { Part } from './pieces';

const textOf = (list: readonly { key: string; text: string }[], key: string | null): string =>
  list.find((one) => one.key === key)?.text ?? '–';

function Row({
  prediction,
  plan,
  settled,
  said,
  reason,
  explained,
}: {
  prediction: Prediction;
  plan: Plan;
  settled: Settled | null;
  said: string;
  reason: string;
  explained: string;
}) {
  const facts = usePage(factsOf);
  const holding =
    settled === null
      ? []
      : prediction.explanations.filter((one) => settled.explanations.some((other) => other.key === one.key && other.holds));
  return (
    <tr>
      <th scope="row">{prediction.question}</th>
      <td>
        {said}
        {reason !== '' && (
          <span className="sheet-note">
            {say('paper.learner.because')}: {reason}
          </span>
        )}
      </td>
      <td>
        {settled === null ? (
          '–'
        ) : (
          <>
            <b>{textOf(prediction.choices, settled.outcome)}</b>
            <span className="sheet-note">
              {measureWords(prediction.measure, plan)}: {measureValue(prediction.measure, settled.value, facts)}
            </span>
          </>
        )}
      </td>
      <td>
        {settled === null ? '–' : holding.length === 0 ? say('paper.season.bearsNone') : holding.map((one) => one.text).join(' ')}
        {explained !== '' && <span className="sheet-note">{say('paper.season.explained', { text: explained })}</span>}
      </td>
    </tr>
  );
}

/** @param over whether the whole season was lived: only then is what nobody answered settled */
export function SeasonPredictions({ lesson, plan, over }: { lesson: Lesson; plan: Plan; over: boolean }) {
  const answers = useLived((lived) => lived.answers);
  const judged = useLived((lived) => lived.judged);
  return (
    <Part id="predictions" heading="paper.season.predictions">
      <table className="sheet-table predictions-table">
        <thead>
          <tr>
            <th scope="col">{say('paper.season.question')}</th>
            <th scope="col">{say('paper.season.said')}</th>
            <th scope="col">{say('paper.season.was')}</th>
            <th scope="col">{say('paper.season.bears')}</th>
          </tr>
        </thead>
        <tbody>
          {lesson.predictions.map((prediction) => {
            const answer = answers.find((one) => one.key === prediction.key);
            const settled = answer?.settled ?? (over ? (judged?.predictions.find((one) => one.key === prediction.key) ?? null) : null);
            const reason =
              answer === undefined
                ? ''
                : answer.words !== ''
                  ? answer.words
                  : answer.reason === null
                    ? ''
                    : textOf(prediction.explanations, answer.reason);
            return (
              <Row
                key={prediction.key}
                prediction={prediction}
                plan={plan}
                settled={settled}
                said={
                  answer === undefined || answer.choice === null ? say('paper.season.skipped') : textOf(prediction.choices, answer.choice)
                }
                reason={reason}
                explained={typeof answer?.explained === 'string' ? textOf(prediction.explanations, answer.explained) : ''}
              />
            );
          })}
        </tbody>
      </table>
    </Part>
  );
}
