// The next thing to do, on a blue-pencil card in the corner of the picture; the lesson's own hints unfold from it. It can be put away for good.
import { useId, useState } from 'react';
import { hintOf } from '../store/hints';
import { say } from '../words/say';
import { LadderList } from './Ladder';
import { useMedia } from './media';
import { useMoment } from './moment';
import { usePage, usePageStore } from './pageStore';
import { SignShape } from './icons';

export function HintCard() {
  const store = usePageStore();
  const now_h = useMoment();
  const lesson = usePage((page) => page.lesson);
  const shown = usePage((page) => page.hints);
  usePage((page) => page.plan);
  usePage((page) => page.design);
  usePage((page) => page.mode);
  usePage((page) => page.branches);
  const [open, setOpen] = useState(false);
  // On a phone's low picture a running loop is not lain over before it is asked for.
  const low = useMedia('(max-height: 520px)');
  const running = usePage((page) => page.mode !== 'build');
  const [unfolded, setUnfolded] = useState(false);
  const ladder = useId();
  const hint = hintOf(store.getState(), now_h);
  const hints = lesson?.hints ?? [];
  if (!shown || lesson === null || (hint === null && hints.length === 0)) return null;
  if (low && running && !unfolded && !open) {
    return (
      <aside className="hint folded" aria-label={say('hint.title')}>
        <button type="button" className="btn" aria-expanded={false} onClick={() => setUnfolded(true)}>{say('hint.unfold')}</button>
      </aside>
    );
  }
  const fold = low && running;
  return (
    <>
      <aside className="hint" aria-label={say('hint.title')}>
        {hint === null ? <p>{say('hint.ladder')}</p> : <p><b>{say('hint.next')}</b> {say(`hint.${hint}`)}</p>}
        {hints.length > 0 && <button type="button" className="btn ladder-open" aria-expanded={open} aria-controls={ladder} onClick={() => setOpen(!open)}>{say('ladder.open')}</button>}
        <button type="button" className="btn square" aria-label={say(fold ? 'hint.fold' : 'hint.away')} title={say(fold ? 'hint.fold' : 'hint.away')} onClick={() => (fold ? setUnfolded(false) : store.getState().setHints(false))}><SignShape sign="out" /></button>
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
