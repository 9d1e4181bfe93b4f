// Answers to what a lesson asks: a prediction committed to or skipped, an outcome explained, and the way on to the next question.
import type { StoreApi } from 'zustand/vanilla';
import type { PageActions } from '../common/actions';
import type { Opened, PageStore } from '../common/page';
import { openedOf } from '../common/selectors';
import { running } from './lived';
import { asking, lookFor, predictionOf, questionBy } from './questions';
import { answered, explainedBy, isSettled } from './settling';

/** Longest reason in a person's own words. */
export const OWN_WORDS_MAX = 200;

type AnswerActions = Pick<PageActions, 'predict' | 'skipQuestion' | 'askNoMore' | 'explain' | 'goOn' | 'setPredicting'>;

export function createAnswers(store: StoreApi<PageStore>): AnswerActions {
  /** To the next question that is open by now, or on with what was under way. */
  const proceed = (game: Opened): void => {
    if (game.mode === 'build') {
      store.setState({ game: { ...game, question: null } });
      void store.getState().run();
      return;
    }
    const resume = game.question?.resume ?? 'paused';
    const lived = { ...game, question: null };
    const next = questionBy(lived, lived.lived_h);
    if (next !== null)
      store.setState(({ view }) => ({ game: asking(lived, next.question, resume), view: lookFor(next.question, lived, view) }));
    // somebody who looks back meanwhile is left where they are
    else store.setState({ game: lived.mode === 'run' && lived.now_h >= lived.lived_h - 0.5 ? running(lived, resume) : lived });
  };
  /** Does something to the lesson that is open. */
  const withOpened = (act: (game: Opened) => void): void => {
    const game = openedOf(store.getState());
    if (game !== null) act(game);
  };

  return {
    predict: (choice, reason, words) =>
      withOpened((game) => {
        const prediction = predictionOf(game);
        if (prediction === null || !prediction.choices.some(({ key }) => key === choice)) return;
        if (reason !== null && !prediction.explanations.some(({ key }) => key === reason)) return;
        proceed(answered(game, { choice, reason, words: words.trim().slice(0, OWN_WORDS_MAX) }));
      }),
    skipQuestion: () => withOpened((game) => proceed(explainedBy(answered(game, { choice: null, reason: null, words: '' }), null))),
    askNoMore: () => withOpened((game) => proceed({ ...game, quiet: true })),
    explain: (explanation) =>
      withOpened((game) => {
        const prediction = predictionOf(game);
        if (prediction === null || !isSettled(game.answers, prediction.key)) return;
        if (prediction.explanations.some(({ key }) => key === explanation)) store.setState({ game: explainedBy(game, explanation) });
      }),
    goOn: () => withOpened((game) => proceed(explainedBy(game, null))),
    setPredicting: (predicting) =>
      store.setState((page) => {
        const game = openedOf(page);
        return { preferences: { ...page.preferences, predicting }, game: game === null ? page.game : { ...game, quiet: !predicting } };
      }),
  };
}
