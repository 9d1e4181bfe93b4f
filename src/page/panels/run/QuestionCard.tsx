// The card of a prediction over the picture: asked before its days are lived, or come due. It waits, and can always be left.
import './question.css';
import { useEffect, useRef } from 'react';
import { answerTo, predictionOf } from '../../state/run/questions';
import { say } from '../../../words/say';
import { AskCard } from './AskCard';
import { ExplainCard } from './ExplainCard';
import { useOpened } from '../common/pageStore';

export function QuestionCard() {
  const question = useOpened((game) => game.question);
  const prediction = useOpened(predictionOf);
  const plan = useOpened((game) => game.plan);
  const answer = useOpened((game) => answerTo(game.answers, game.question?.key ?? ''));
  const card = useRef<HTMLElement>(null);
  const was = useRef(question);
  useEffect(() => {
    if (question !== null) card.current?.focus();
    // the card is gone: keyboards go on from the clock
    else if (was.current !== null) document.querySelector<HTMLElement>('[data-toggle-run]')?.focus({ preventScroll: true });
    was.current = question;
  }, [question]);
  if (question === null || prediction === null) return null;
  // the loop is drawn in its order: the card keeps away from the half where there is something to see
  const at = question.part === 'explain' ? plan.loop.findIndex((stage) => stage.id === prediction.look) : -1;
  const side = at >= 0 && at < plan.loop.length / 2 ? 'right' : 'left';
  return (
    <section ref={card} className="card question" tabIndex={-1} aria-label={say('ask.region')} data-part={question.part} data-side={side}>
      {question.part === 'ask' ? (
        <AskCard key={prediction.key} prediction={prediction} />
      ) : (
        answer !== undefined && <ExplainCard key={prediction.key} prediction={prediction} answer={answer} />
      )}
    </section>
  );
}
