// The predictions of a season in its result: what was expected, what came, and whether the explanation holds.
import type { Lesson, Prediction } from '../../state/common/contract';
import { canAsk } from '../../state/run/questions';
import type { Answer } from '../../state/common/state';
import { say } from '../../../words/say';
import { factsOf } from '../../state/common/selectors';
import { useLived, usePage } from '../common/pageStore';
import { measureValue } from '../common/measureWords';

function PredictionRow({ prediction, answer }: { prediction: Prediction; answer: Answer }) {
  const facts = usePage(factsOf);
  const { settled, explained } = answer;
  const text = (key: string | null): string => prediction.choices.find((choice) => choice.key === key)?.text ?? '';
  const explanation = prediction.explanations.find(({ key }) => key === explained);
  const holds = settled?.explanations.find(({ key }) => key === explained)?.holds ?? false;
  return (
    <li>
      <p>{prediction.question}</p>
      <p>
        {say('result.expected', { choice: text(answer.choice) })} ·{' '}
        {settled === null
          ? say('result.unsettled')
          : settled.outcome === null
            ? say('result.cameNone')
            : say('result.came', { outcome: text(settled.outcome), value: measureValue(prediction.measure, settled.value, facts) })}
        {settled !== null && settled.outcome !== null && (
          <>
            {' '}
            · <b>{say(settled.outcome === answer.choice ? 'result.asExpected' : 'result.otherwise')}</b>
          </>
        )}
      </p>
      {explanation !== undefined && settled !== null && (
        <p>{say(holds ? 'result.explainedRight' : 'result.explainedWrong', { text: explanation.text })}</p>
      )}
    </li>
  );
}

export function ResultPredictions({ lesson }: { lesson: Lesson }) {
  const answers = useLived((lived) => lived.answers);
  const plan = useLived((lived) => lived.plan);
  const made = answers.filter((answer) => answer.choice !== null);
  if (made.length === 0) return null;
  const skipped = lesson.predictions.filter((prediction) => canAsk(prediction, plan)).length - made.length;
  return (
    <>
      <h3>{say('result.predictions')}</h3>
      <ul className="plain result-predictions">
        {made.map((answer) => {
          const prediction = lesson.predictions.find(({ key }) => key === answer.key);
          return prediction === undefined ? null : <PredictionRow key={answer.key} prediction={prediction} answer={answer} />;
        })}
      </ul>
      {skipped > 0 && <p className="note">{say('result.skipped', { n: skipped })}</p>}
    </>
  );
}
