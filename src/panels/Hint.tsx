// The next thing to do, on a blue-pencil card in the corner of the picture; it can be put away for good.
import { hintOf } from '../store/hints';
import { say } from '../words/say';
import { useMoment } from './moment';
import { usePage, usePageStore } from './pageStore';
import { SignShape } from './icons';

export function HintCard() {
  const store = usePageStore();
  const now_h = useMoment();
  usePage((page) => page.plan);
  usePage((page) => page.mode);
  usePage((page) => page.hints);
  usePage((page) => page.branches);
  const hint = hintOf(store.getState(), now_h);
  if (hint === null) return null;
  return (
    <aside className="hint" aria-label={say('hint.title')}>
      <p><b>{say('hint.next')}</b> {say(`hint.${hint}`)}</p>
      <button type="button" className="btn square" aria-label={say('hint.away')} title={say('hint.away')} onClick={() => store.getState().setHints(false)}><SignShape sign="out" /></button>
    </aside>
  );
}
