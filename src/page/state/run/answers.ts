// Predictions of a season: committed to or skipped, settled by the season's own figures at their due day, and explained.
import type { StoreApi } from 'zustand/vanilla';
import { answerTo, asking, predictionOf, questionBy, UNASKED } from './questions';
import type { Answer, PageActions, PageStore } from '../common/state';

/** Longest reason in a person's own words. */
export const OWN_WORDS_MAX = 200;

type AnswerActions = Pick<PageActions, 'predict' | 'skipQuestion' | 'askNoMore' | 'explain' | 'goOn' | 'setPredicting'>;

const isSettled = (answers: readonly Answer[], key: string): boolean => (answerTo(answers, key)?.settled ?? null) !== null;

export function createAnswers(store: StoreApi<PageStore>): AnswerActions {
  /** To the next question that is open by now, or on with what was under way. */
  const proceed = (): void => {
    const state = store.getState();
    const resume = state.question?.resume ?? 'paused';
    store.setState({ question: null });
    if (state.mode === 'build') {
      void state.run();
      return;
    }
    const next = questionBy(state, state.lived_h);
    if (next !== null) store.setState({ ...asking({ ...state, speed: resume }, next.question) });
    // somebody who looks back meanwhile is left where they are
    else if (state.mode === 'run' && state.now_h >= state.lived_h - 0.5) store.setState({ speed: resume });
  };

  const answerOpen = (answer: Omit<Answer, 'key' | 'settled'>): void => {
    const { question, answers } = store.getState();
    if (question === null || question.part !== 'ask' || answerTo(answers, question.key) !== undefined) return;
    store.setState({ answers: [...answers, { key: question.key, settled: null, ...answer }] });
  };

  const explainOpen = (explained: string | null): void => {
    const { question } = store.getState();
    if (question === null || question.part !== 'explain') return;
    store.setState(({ answers }) => ({ answers: answers.map((answer) => (answer.key === question.key && answer.explained === undefined ? { ...answer, explained } : answer)) }));
  };

  // every season begins with nothing asked
  store.subscribe((now, before) => {
    if (now.lesson !== before.lesson || (now.mode === 'build' && before.mode !== 'build')) store.setState({ ...UNASKED, quiet: !now.predicting });
  });

  // what is lived to its due day is settled, asked about or not
  store.subscribe((now, before) => {
    if (now.lived_h === before.lived_h && now.judged === before.judged) return;
    const { judged, answers, lesson, lived_h } = store.getState();
    if (judged === null || lesson === null) return;
    const dueHour = (key: string): number => 24 * (lesson.predictions.find((prediction) => prediction.key === key)?.dueDay ?? Infinity);
    const open = answers.filter((answer) => answer.choice !== null && answer.settled === null && dueHour(answer.key) <= lived_h);
    if (open.length === 0) return;
    store.setState({ answers: answers.map((answer) => (open.includes(answer) ? { ...answer, settled: judged.predictions.find(({ key }) => key === answer.key) ?? null } : answer)) });
  });

  // acting before the hour of an open question puts it off; one that was settled already is left as it is
  store.subscribe((now, before) => {
    if (now.acts === before.acts || now.mode === 'build' || now.question === null) return;
    const prediction = predictionOf(now);
    if (prediction === null || now.lived_h >= 24 * (now.question.part === 'ask' ? prediction.askDay : prediction.dueDay)) return;
    if (isSettled(now.answers, prediction.key)) explainOpen(null);
    store.setState({ question: null });
  });

  return {
    predict(choice, reason, words) {
      const prediction = predictionOf(store.getState());
      if (prediction === null || !prediction.choices.some(({ key }) => key === choice)) return;
      if (reason !== null && !prediction.explanations.some(({ key }) => key === reason)) return;
      answerOpen({ choice, reason, words: words.trim().slice(0, OWN_WORDS_MAX) });
      proceed();
    },
    skipQuestion() {
      answerOpen({ choice: null, reason: null, words: '' });
      explainOpen(null);
      proceed();
    },
    askNoMore() {
      store.setState({ quiet: true });
      proceed();
    },
    explain(explanation) {
      const state = store.getState();
      const prediction = predictionOf(state);
      if (prediction === null || !isSettled(state.answers, prediction.key)) return;
      if (prediction.explanations.some(({ key }) => key === explanation)) explainOpen(explanation);
    },
    goOn() {
      explainOpen(null);
      proceed();
    },
    setPredicting: (predicting) => store.setState({ predicting, quiet: !predicting }),
  };
}
