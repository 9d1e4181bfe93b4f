// What a step tells the class, under the loops: the question, the count of hands, what to look at, what happened.
import { say } from '../../../words/say';
import { figure } from '../../../words/units';
import { measureWords } from '../common/measureWords';
import { Choices } from './Choices';
import { dayTold } from './dayWords';
import { measuredTold } from './figureWords';
import { LETTERS } from './PairStage';
import { usePresented, usePresentedHour } from './presenterStore';

function TurningPoint({ index }: { index: number }) {
  const shown = usePresented((state) => state.shown);
  const now_h = usePresentedHour();
  if (shown === null) return null;
  const day = dayTold(shown, now_h);
  return (
    <>
      <p className="telling-day" data-long={day.length > 7 || undefined}>
        {day}
      </p>
      <p className="telling-words">{shown.demonstration.turningPoints[index]?.say}</p>
    </>
  );
}

/** Right against left: times as much, or per cent of it where it is less. */
function ratioWords(times: number): string {
  return times < 1
    ? say('presenter.share', { n: figure(100 * times, times < 0.0995 ? 1 : 0) })
    : say('presenter.times', { n: figure(times, times < 9.95 ? 1 : 0) });
}

function Outcome() {
  const shown = usePresented((state) => state.shown);
  const outcome = usePresented((state) => state.outcome);
  const votes = usePresented((state) => state.votes);
  if (shown === null) return null;
  if (outcome === null) return <p className="telling-words">{say('presenter.waiting')}</p>;
  const { measure, choices } = shown.demonstration;
  const { values, unit } = measuredTold(measure, outcome.values);
  const all = votes.reduce((sum, n) => sum + n, 0);
  const right = votes[choices.findIndex((choice) => choice.key === outcome.choice)] ?? 0;
  return (
    <>
      <div className="outcome">
        <p className="outcome-values">
          {values.map((value, side) => (
            <span key={side}>
              <span className="letter">{LETTERS[side]}</span> <b data-outcome={side}>{value}</b>
            </span>
          ))}
          <span className="unit">{unit}</span>
        </p>
        <p className="outcome-words">{measureWords(measure, shown.plans[0])}</p>
        <p className="outcome-times">
          <b>{ratioWords(outcome.times)}</b>
          {all > 0 && <span> · {say('presenter.guessed', { n: right, all })}</span>}
        </p>
      </div>
      <Choices part="settled" />
    </>
  );
}

export function Telling() {
  const shown = usePresented((state) => state.shown);
  const index = usePresented((state) => state.step);
  if (shown === null) return null;
  const step = shown.steps[index];
  return (
    <div className="telling" data-step={step.kind}>
      {(step.kind === 'question' || step.kind === 'votes') && (
        <>
          <h3 className="question-words" data-long={shown.demonstration.question.length > 70 || undefined}>
            {shown.demonstration.question}
          </h3>
          <Choices part={step.kind === 'votes' ? 'counting' : 'asked'} />
        </>
      )}
      {step.kind === 'moment' && <TurningPoint index={step.index} />}
      {step.kind === 'reveal' && <Outcome />}
    </div>
  );
}
