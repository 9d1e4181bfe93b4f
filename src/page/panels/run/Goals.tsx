// What counts in a lesson with goals of its own: a button in the brief bar with how many are met so far, and all of it in a dialog.
import './goals.css';
import { useRef } from 'react';
import { hasGoals } from '../../state/run/judging';
import { livedOf, scoresAt, seasonOf } from '../../state/common/selectors';
import { say } from '../../../words/say';
import { MarkAsks } from '../result/MarkAsks';
import { useOpened, usePage } from '../common/pageStore';

export function GoalsButton() {
  const lesson = useOpened((game) => game.lesson);
  const building = useOpened((game) => game.mode === 'build');
  const moved = useOpened((game) => game.moved);
  const season = usePage(seasonOf);
  const state = usePage((page) => livedOf(page)?.soFar ?? null);
  const dialog = useRef<HTMLDialogElement>(null);
  if (lesson.free || !hasGoals(lesson)) return null;
  const scores = season === null || state === null ? null : scoresAt(season, 24 * state.day);
  // the mark to reach next, or the last
  const next = state === null ? undefined : (state.marks.find((mark) => !mark.earned) ?? state.marks.at(-1));
  const asked =
    next === undefined
      ? []
      : [next.fishHealth, next.harvest, ...next.goals.map((goal) => goal.met), ...(next.moves === null ? [] : [next.moves.met])];
  return (
    <>
      <button type="button" className="btn goals-button" onClick={() => dialog.current?.showModal()}>
        {say('goals.button')}
        {building && moved !== null && <span className="note">{say('goals.changed', { n: moved })}</span>}
        {next !== undefined && <span className="note">{say('goals.soFar', { n: asked.filter(Boolean).length, all: asked.length })}</span>}
      </button>
      <dialog ref={dialog} className="card ask" aria-labelledby="goals-title">
        <h2 id="goals-title">{say('goals.title')}</h2>
        <p>{say('goals.whole')}</p>
        {state !== null && <p>{say('goals.until', { day: state.day })}</p>}
        <MarkAsks lesson={lesson} marks={state?.marks ?? null} scores={scores} whole={false} />
        <button type="button" className="btn" onClick={() => dialog.current?.close()}>
          {say('page.close')}
        </button>
      </dialog>
    </>
  );
}
