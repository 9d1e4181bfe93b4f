// A prediction come due: what was expected beside what the water did, an explanation to choose, and what the figures say to each.
import { useEffect, useId, useRef, useState } from 'react';
import type { Plan, Prediction, Settled, Statement } from '../../state/common/contract';
import { factsOf, kindOf } from '../../state/common/selectors';
import type { Answer } from '../../state/common/state';
import { say } from '../../../words/say';
import { stageName } from '../../../words/stageNames';
import { MarkShape } from '../common/marks';
import { useLived, usePage } from '../common/pageStore';
import { limitWords, measureValue, measureWords } from '../common/measureWords';

/** All bands the number may fall into, in their order: the one expected and the one it came to. */
export function Bands({ prediction, answer, settled, value }: { prediction: Prediction; answer: Answer; settled: Settled; value: string }) {
  return (
    <ol className="bands">
      {prediction.choices.map(({ key, text }) => (
        <li key={key} data-yours={key === answer.choice || undefined} data-came={key === settled.outcome || undefined}>
          <span className="band-text">{text}</span>
          {key === answer.choice && <span className="band-tag band-yours">{say('explain.you')}</span>}
          {key === settled.outcome && (
            <span className="band-tag band-came">
              {say('explain.water')} <b>{value}</b>
            </span>
          )}
        </li>
      ))}
    </ol>
  );
}

function outcomeWords(prediction: Prediction, answer: Answer, settled: Settled, measure: string, value: string): string {
  if (settled.outcome === null) return say('explain.none', { measure });
  if (settled.outcome === answer.choice) return say('explain.right', { measure, value });
  return say('explain.wrong', { measure, value, choice: prediction.choices.find(({ key }) => key === answer.choice)?.text ?? '' });
}

/** Each explanation with the figure that bears it out or does not. */
function Figures({ prediction, answer, settled, plan }: { prediction: Prediction; answer: Answer; settled: Settled; plan: Plan }) {
  const facts = usePage(factsOf);
  const stands = ({ stage }: Statement): boolean => stage === undefined || kindOf(plan, stage) !== null;
  const inOxygen = prediction.explanations.some(
    ({ evidence: { process } }) => process !== undefined && (facts?.units[process]?.includes('COD') ?? false),
  );
  const head = useRef<HTMLHeadingElement>(null);
  // the button that asked for them is gone: keyboards go on from here
  useEffect(() => {
    head.current?.focus({ preventScroll: true });
    head.current?.scrollIntoView({ block: 'start' });
  }, []);
  return (
    <>
      <h3 ref={head} tabIndex={-1}>
        {say('explain.figures')}
      </h3>
      <ul className="plain figures">
        {prediction.explanations.map(({ key, text, evidence }) => {
          const found = settled.explanations.find((one) => one.key === key);
          if (found === undefined) return null;
          return (
            <li key={key} data-holds={found.holds || undefined}>
              {found.holds ? (
                <MarkShape mark="fine" named={false} />
              ) : (
                <span className="not" aria-hidden="true">
                  ✕
                </span>
              )}
              <div>
                <p>
                  {text} <b>{say(found.holds ? 'explain.holds' : 'explain.fails')}</b>
                  {key === answer.explained && <span className="band-tag band-yours">{say('explain.chosen')}</span>}
                </p>
                <p className="note">
                  {!stands(evidence)
                    ? say('explain.noStage')
                    : say('explain.evidence', {
                        measure: measureWords(evidence, plan),
                        value: measureValue(evidence, found.value, facts),
                        limits: limitWords(evidence, facts),
                      })}
                </p>
              </div>
            </li>
          );
        })}
      </ul>
      {inOxygen && <p className="note">{say('explain.cod')}</p>}
    </>
  );
}

function Outcome({ prediction, answer, settled, plan }: { prediction: Prediction; answer: Answer; settled: Settled; plan: Plan }) {
  const facts = usePage(factsOf);
  const value = measureValue(prediction.measure, settled.value, facts);
  return (
    <>
      <Bands prediction={prediction} answer={answer} settled={settled} value={value} />
      <p className="question-outcome">{outcomeWords(prediction, answer, settled, measureWords(prediction.measure, plan), value)}</p>
    </>
  );
}

/** What may explain it. */
function Explanations({
  prediction,
  answer,
  stage,
  chosen,
  onChoose,
}: {
  prediction: Prediction;
  answer: Answer;
  stage: string | null;
  chosen: string | null;
  onChoose: (key: string) => void;
}) {
  const name = useId();
  return (
    <>
      <fieldset className="options">
        <legend>{stage === null ? say('explain.whyOnly') : say('explain.why', { stage })}</legend>
        {prediction.explanations.map(({ key, text }) => (
          <label key={key}>
            <input type="radio" name={name} checked={chosen === key} onChange={() => onChoose(key)} />
            <span>
              {text}
              {key === answer.reason && <em className="note"> ({say('explain.yourReason')})</em>}
            </span>
          </label>
        ))}
      </fieldset>
      {answer.words !== '' && <p className="note">{say('explain.ownReason', { words: answer.words })}</p>}
    </>
  );
}

export function ExplainCard({ prediction, answer }: { prediction: Prediction; answer: Answer }) {
  const explain = usePage((page) => page.explain);
  const goOn = usePage((page) => page.goOn);
  const plan = useLived((lived) => lived.plan);
  const [chosen, setChosen] = useState<string | null>(null);
  const [lacking, setLacking] = useState(false);
  const name = useId();
  const { settled } = answer;
  const stages = [...plan.loop, ...plan.side];
  const stage = stages.some(({ id }) => id === prediction.look) ? stageName(stages, prediction.look) : null;
  const explained = typeof answer.explained === 'string';
  return (
    <>
      <div className="question-scroll" tabIndex={0} role="group" aria-labelledby={name}>
        <p className="question-head">
          <b>{prediction.dueDay < plan.days ? say('explain.head', { day: prediction.dueDay }) : say('explain.headEnd')}</b>
        </p>
        <h2 id={name}>{prediction.question}</h2>
        {settled === null ? (
          <p role="status">{say('explain.working')}</p>
        ) : (
          <Outcome prediction={prediction} answer={answer} settled={settled} plan={plan} />
        )}
        {settled !== null && !explained && (
          <Explanations prediction={prediction} answer={answer} stage={stage} chosen={chosen} onChoose={setChosen} />
        )}
        {settled !== null && explained && <Figures prediction={prediction} answer={answer} settled={settled} plan={plan} />}
      </div>
      <p className="question-lacks" role="alert">
        {lacking && chosen === null ? say('explain.lacks') : ''}
      </p>
      <div className="row question-buttons">
        {explained ? (
          <button type="button" className="btn plan" onClick={() => goOn()}>
            {say('explain.goOn')}
          </button>
        ) : (
          <>
            <button
              type="button"
              className="btn plan"
              aria-disabled={chosen === null || settled === null || undefined}
              onClick={() => (chosen === null ? setLacking(true) : explain(chosen))}
            >
              {say('explain.see')}
            </button>
            <button type="button" className="btn" onClick={() => goOn()}>
              {say('explain.without')}
            </button>
          </>
        )}
      </div>
    </>
  );
}
