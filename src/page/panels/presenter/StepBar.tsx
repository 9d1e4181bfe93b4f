// The teacher's hand on a demonstration: back and forth, a step for each prepared moment, the clock, and the way out.
import type { Shown } from '../../state/presenter/presenterState';
import type { Step } from '../../state/presenter/presenterSteps';
import { say } from '../../../words/say';
import { SignShape } from '../common/icons';
import { momentTold } from './dayWords';
import { Scale } from './PairStage';
import { usePresented, usePresenter } from './presenterStore';

function stepName(step: Step, shown: Shown): string {
  switch (step.kind) {
    case 'question':
      return say('presenter.stepQuestion');
    case 'votes':
      return say('presenter.stepVotes');
    case 'moment':
      return momentTold(shown, step.index).name;
    case 'reveal':
      return say('presenter.reveal');
  }
}

/** What stands on the small button of a step. */
function stepSign(step: Step, shown: Shown): string {
  switch (step.kind) {
    case 'question':
      return say('presenter.signQuestion');
    case 'votes':
      return say('presenter.signVotes');
    case 'moment':
      return momentTold(shown, step.index).sign;
    case 'reveal':
      return say('presenter.signReveal');
  }
}

/** What comes next, as the large button says it. */
function nextWords(shown: Shown, index: number): string {
  const next = shown.steps[index + 1];
  switch (next?.kind) {
    case 'votes':
      return say('presenter.nextVotes');
    case 'moment':
      return momentTold(shown, next.index).name;
    case 'reveal':
      return say('presenter.nextReveal');
    default:
      return say('presenter.nextOne');
  }
}

function Play() {
  const { store } = usePresenter();
  const runs = usePresented((state) => state.playing || state.toward !== null);
  const name = say(runs ? 'presenter.pause' : 'presenter.play');
  return (
    <button type="button" className="btn square" aria-label={name} title={name} onClick={() => store.getState().play(!runs)}>
      <SignShape sign={runs ? 'pause' : 'run'} />
    </button>
  );
}

export function StepBar({ leave }: { leave: () => void }) {
  const { store } = usePresenter();
  const shown = usePresented((state) => state.shown);
  const at = usePresented((state) => state.step);
  const busy = usePresented((state) => state.busy);
  if (shown === null) return null;
  const next = nextWords(shown, at);
  return (
    <nav className="step-bar" aria-label={say('presenter.steps')}>
      <button
        type="button"
        className="btn square"
        aria-label={say('presenter.backKey')}
        title={say('presenter.backKey')}
        onClick={() => store.getState().back()}
      >
        <SignShape sign="previous" />
      </button>
      <ol className="steps plain">
        {shown.steps.map((step, index) => (
          <li key={index}>
            <button
              type="button"
              aria-current={index === at ? 'step' : undefined}
              aria-label={stepName(step, shown)}
              title={stepName(step, shown)}
              onClick={() => store.getState().goTo(index)}
            >
              {stepSign(step, shown)}
            </button>
          </li>
        ))}
      </ol>
      <Play />
      <Scale />
      <button
        type="button"
        className="btn square"
        aria-label={say('presenter.list')}
        title={say('presenter.list')}
        onClick={() => store.getState().choose()}
      >
        <SignShape sign="list" />
      </button>
      <button type="button" className="btn square" aria-label={say('presenter.leaveKey')} title={say('presenter.leaveKey')} onClick={leave}>
        <SignShape sign="out" />
      </button>
      <button
        type="button"
        className="btn go"
        disabled={busy}
        aria-label={say('presenter.forthKey', { what: next })}
        onClick={() => void store.getState().forth()}
      >
        {busy ? say('presenter.busy') : next} <SignShape sign="next" />
      </button>
    </nav>
  );
}
