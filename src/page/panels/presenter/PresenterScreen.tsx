// Presenter mode, for a projector: the list of demonstrations, or two loops in step with what is asked and told about them.
import './presenter.css';
import { useCallback, useEffect, useRef } from 'react';
import type { Presenter } from '../../state/presenter/presenterState';
import { say } from '../../../words/say';
import { usePageStore } from '../common/pageStore';
import { Chooser } from './Chooser';
import { PairStage, type DrawPair } from './PairStage';
import { usePresenterKeys } from './presenterKeys';
import { PresenterProvider, usePresented } from './presenterStore';
import { StepBar } from './StepBar';
import { Telling } from './Telling';

function Room({ draw }: { draw: DrawPair }) {
  const page = usePageStore();
  const shown = usePresented((state) => state.shown);
  const said = usePresented((state) => state.announcement);
  const failure = usePresented((state) => state.failure);
  const place = useRef<HTMLElement>(null);
  const leave = useCallback(() => page.getState().setScreen('loop'), [page]);
  usePresenterKeys(leave);
  const which = shown === null ? null : `${shown.from} ${shown.demonstration.key}`;
  useEffect(() => place.current?.focus(), [which]);
  return (
    <main className="presenter" tabIndex={-1} ref={place} aria-label={say('presenter.region')}>
      {shown === null ? (
        <Chooser leave={leave} />
      ) : (
        <>
          <h1 className="hidden">{shown.demonstration.title}</h1>
          <PairStage draw={draw} />
          {failure === null ? (
            <Telling />
          ) : (
            <p className="telling chooser-failure" role="alert">
              {failure}
            </p>
          )}
          <StepBar leave={leave} />
        </>
      )}
      <div className="hidden" role="status" aria-live="polite">
        {said}
      </div>
    </main>
  );
}

/** @param draw draws both loops into two elements of the page */
export function PresenterScreen({ presenter, draw }: { presenter: Presenter; draw: DrawPair }) {
  return (
    <PresenterProvider presenter={presenter}>
      <Room draw={draw} />
    </PresenterProvider>
  );
}
