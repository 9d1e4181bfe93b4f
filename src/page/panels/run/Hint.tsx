// The next thing to do, on a blue-pencil card in the corner of the picture; the lesson's own hints unfold from it. It can be put away for
// good.
import { useId, useState } from 'react';
import { hintToBuild, hintToLive, looksFirst, type Hint } from '../../state/common/hints';
import { buildOf, comfortOf, livedOf, planOf, seasonOf } from '../../state/common/selectors';
import { say } from '../../../words/say';
import { LadderList } from './Ladder';
import { useMedia } from '../common/media';
import { useMoment } from '../common/moment';
import { useOpened, usePage, usePageStore } from '../common/pageStore';
import { SignShape } from '../common/icons';

/** What to do next; while a season is lived, by the moment shown. */
function useHint(): Hint | null {
  const build = usePage(buildOf);
  const [plan, season, comfort] = [usePage(planOf), usePage(seasonOf), usePage(comfortOf)];
  const over = usePage(({ game }) => game.mode === 'result');
  const several = usePage((page) => (livedOf(page)?.branches.length ?? 0) > 1);
  const first = usePage((page) => looksFirst(livedOf(page) ?? { lived_h: 0 }));
  const now_h = useMoment();
  if (build !== null) return hintToBuild(build);
  return plan === null || season === null ? null : hintToLive({ plan, season, comfort, now_h }, { over, several, first });
}

export function HintCard() {
  const store = usePageStore();
  const lesson = useOpened((game) => game.lesson);
  const building = useOpened((game) => game.mode === 'build');
  const shown = usePage((page) => page.preferences.hints);
  const hint = useHint();
  const [open, setOpen] = useState(false);
  // On a phone's low picture a running loop is not lain over before it is asked for.
  const low = useMedia('(max-height: 520px)');
  const folds = low && !building;
  const [unfolded, setUnfolded] = useState(false);
  const ladder = useId();
  const { hints } = lesson;
  if (!shown || (hint === null && hints.length === 0)) return null;
  const folded = folds && !unfolded;
  return (
    <>
      <aside className={folded ? 'hint folded' : 'hint'} aria-label={say('hint.title')}>
        {!folded
          && (hint === null ? (
            <p>{say('hint.ladder')}</p>
          ) : (
            <p>
              <b className="hint-next">{say('hint.next')}</b>
              {say(`hint.${hint}`)}
            </p>
          ))}
        {!folded && hints.length > 0 && (
          <button type="button" className="btn ladder-open" aria-expanded={open} aria-controls={ladder} onClick={() => setOpen(!open)}>
            {say('ladder.open')}
          </button>
        )}
        {folds ? (
          <button
            type="button"
            className={folded ? 'btn' : 'btn square'}
            aria-expanded={!folded}
            {...(folded ? {} : { 'aria-label': say('hint.fold'), title: say('hint.fold') })}
            onClick={() => setUnfolded(folded)}
          >
            {folded ? say('hint.unfold') : <SignShape sign="out" />}
          </button>
        ) : (
          <button
            type="button"
            className="btn square"
            aria-label={say('hint.away')}
            title={say('hint.away')}
            onClick={() => store.getState().setHints(false)}
          >
            <SignShape sign="out" />
          </button>
        )}
      </aside>
      {hints.length > 0 && (
        <section id={ladder} className="card hint-ladder" aria-label={say('ladder.title')} hidden={!open} key={lesson.id}>
          <h2>{say('ladder.title')}</h2>
          <LadderList hints={hints} />
          <button type="button" className="btn" onClick={() => setOpen(false)}>
            {say('ladder.close')}
          </button>
        </section>
      )}
    </>
  );
}
