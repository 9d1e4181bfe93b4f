// How the reference settles what a lesson asks: goals, predictions with their explanations, demonstrations.
import type { Lesson, Plan, Played, Prediction, Settled } from '../../state/common/contract';
import { say } from '../../../words/say';
import { factsOf } from '../../state/common/selectors';
import { usePage } from '../common/pageStore';
import { MarkShape } from '../common/marks';
import { limitWords, measureValue, measureWords, timesWords } from '../common/measureWords';
import { Box, Part } from './pieces';

type Asked = Played['asked'][number];

function Outcome({ prediction, settled, plan }: { prediction: Prediction; settled: Settled; plan: Plan }) {
  const facts = usePage(factsOf);
  return (
    <li>
      <p>
        <b>{prediction.question}</b>
      </p>
      <p>
        {measureWords(prediction.measure, plan)}: <b>{measureValue(prediction.measure, settled.value, facts)}</b>
      </p>
      <ul className="choices-list">
        {prediction.choices.map((choice) => (
          <li key={choice.key}>
            <Box ticked={choice.key === settled.outcome} />
            {choice.key === settled.outcome ? <b>{choice.text}</b> : choice.text}
          </li>
        ))}
      </ul>
      <ul className="evidence">
        {prediction.explanations.map((one) => {
          const found = settled.explanations.find((other) => other.key === one.key);
          if (found === undefined) return null;
          return (
            <li key={one.key}>
              {found.holds ? (
                <MarkShape mark="fine" named={false} />
              ) : (
                <svg className="mark" viewBox="0 0 24 24" aria-hidden="true">
                  <path d="M5 5L19 19M19 5L5 19" stroke="currentColor" strokeWidth="3" strokeLinecap="round" />
                </svg>
              )}
              <span>
                {one.text} <b>{say(found.holds ? 'paper.key.holds' : 'paper.key.holdsNot')}</b>:{' '}
                <span className="sheet-note">
                  {measureWords(one.evidence, plan)} <b>{measureValue(one.evidence, found.value, facts)}</b> (
                  {limitWords(one.evidence, facts)})
                </span>
              </span>
            </li>
          );
        })}
      </ul>
    </li>
  );
}

function Predictions({ lesson, plan, asked }: { lesson: Lesson; plan: Plan; asked: readonly Asked[] }) {
  return (
    <Part id="outcomes" heading="paper.key.predictions" note={say('paper.key.predictionsHow')}>
      <ol className="questions">
        {asked
          .flatMap((one) => (one.kind === 'prediction' ? [one.settled] : []))
          .map((settled) => {
            const prediction = lesson.predictions.find((other) => other.key === settled.key);
            return prediction === undefined ? null : <Outcome key={settled.key} prediction={prediction} settled={settled} plan={plan} />;
          })}
      </ol>
    </Part>
  );
}

function Demonstrations({ lesson, plan, asked }: { lesson: Lesson; plan: Plan; asked: readonly Asked[] }) {
  const facts = usePage(factsOf);
  return (
    <Part id="shown" heading="paper.key.demonstrations">
      <ul className="shown">
        {asked
          .flatMap((one) => (one.kind === 'demonstration' ? [one] : []))
          .map((one) => {
            const shown = lesson.demonstrations.find((other) => other.key === one.key);
            if (shown === undefined) return null;
            const outcome = shown.choices.find((choice) => choice.key === one.outcome)?.text ?? say('paper.key.noOutcome');
            return (
              <li key={one.key}>
                <p>
                  <b>{shown.title}.</b> {shown.question}
                </p>
                {say('paper.key.demonstration', {
                  measure: measureWords(shown.measure, plan),
                  leftName: shown.leftName,
                  rightName: shown.rightName,
                  left: measureValue(shown.measure, one.left, facts),
                  right: measureValue(shown.measure, one.right, facts),
                  times: timesWords(one.times),
                })}{' '}
                <b>{outcome}</b>
              </li>
            );
          })}
      </ul>
    </Part>
  );
}

function Goals({ asked }: { asked: readonly Asked[] }) {
  const facts = usePage(factsOf);
  // a goal that several marks ask is told once
  const goals = asked
    .flatMap((one) => (one.kind === 'goal' ? [one] : []))
    .filter((one, index, all) => all.findIndex((other) => JSON.stringify(other.goal) === JSON.stringify(one.goal)) === index);
  return (
    <Part id="goals" heading="paper.key.goals">
      <ul className="sheet-goals">
        {goals.map((one, index) => (
          <li key={index}>
            {one.goal.text} ({limitWords(one.goal, facts)}): <b>{measureValue(one.goal, one.value, facts)}</b>
          </li>
        ))}
      </ul>
    </Part>
  );
}

export function KeyAnswers({ lesson, plan, played }: { lesson: Lesson; plan: Plan; played: readonly Played[] }) {
  const asked = played.find((one) => one.role === 'reference')?.asked ?? [];
  const has = (kind: Asked['kind']): boolean => asked.some((one) => one.kind === kind);
  return (
    <>
      {has('goal') && <Goals asked={asked} />}
      {has('prediction') && <Predictions lesson={lesson} plan={plan} asked={asked} />}
      {has('demonstration') && <Demonstrations lesson={lesson} plan={plan} asked={asked} />}
    </>
  );
}
