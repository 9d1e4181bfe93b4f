// The next thing to do, on a blue-pencil card in the corner of the picture; the lesson's own hints unfold from it. It can be put away for good.
import { useId, useState } from 'react';
import { hintOf } from '../../state/common/hints';
import { say } from '../../../words/say';
import { LadderList } from './Ladder';
import { useMedia } from '../common/media';
import { useMoment } from '../common/moment';
import { usePage, usePageStore } from '../common/pageStore';
import { SignShape } from '../common/icons';

export function HintCard() {
  const store = usePageStore();
  const now_h = useMoment();
  const lesson = usePage((page) => page.lesson);
  const shown = usePage((page) => page.hints);
  usePage((page) => page.plan);
  usePage((page) => page.design);
  const mode = usePage((page) => page.mode);
  usePage((page) => page.branches);
  const [open, setOpen] = useState(false);
  // On a phone's low picture a running loop is not lain over before it is asked for.
  const low = useMedia('(max-height: 520px)');
  const folds = low && mode !== 'build';
  const [unfolded, setUnfolded] = useState(false);
  const ladder = useId();
  const hint = hintOf(store.getState(), now_h);
  const hints = lesson?.hints ?? [];
  if (!shown || lesson === null || (hint === null && hints.length === 0)) return null;
  const folded = folds && !unfolded;
  return (
    <>
      <aside className={folded ? 'hint folded' : 'hint'} aria-label={say('hint.title')}>
        {!folded && (hint === null ? <p>{say('hint.ladder')}</p> : <p><b className="hint-next">{say('hint.next')}</b>{say(`hint.${hint}`)}</p>)}
        {!folded && hints.length > 0 && <button type="button" className="btn ladder-open" aria-expanded={open} aria-controls={ladder} onClick={() => setOpen(!open)}>{say('ladder.open')}</button>}
        {folds ? (
          <button type="button" className={folded ? 'btn' : 'btn square'} aria-expanded={!folded} {...(folded ? {} : { 'aria-label': say('hint.fold'), title: say('hint.fold') })} onClick={() => setUnfolded(folded)}>
            {folded ? say('hint.unfold') : <SignShape sign="out" />}
          </button>
        ) : <button type="button" className="btn square" aria-label={say('hint.away')} title={say('hint.away')} onClick={() => store.getState().setHints(false)}><SignShape sign="out" /></button>}
      </aside>
      {hints.length > 0 && (
        <section id={ladder} className="card hint-ladder" aria-label={say('ladder.title')} hidden={!open} key={lesson.id}>
          <h2>{say('ladder.title')}</h2>
          <LadderList hints={hints} />
          <button type="button" className="btn" onClick={() => setOpen(false)}>{say('ladder.close')}</button>
        </section>
      )}
    </>
  );
}
