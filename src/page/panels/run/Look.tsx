// Buttons that bring the selected stage close, and the whole loop back.
import './look.css';
import { looksClose } from '../../state/common/looking';
import { say } from '../../../words/say';
import { SignShape } from '../common/icons';
import { usePage, usePageStore } from '../common/pageStore';

/** Beside what the inspector tells of the stage. */
export function LookButton() {
  const store = usePageStore();
  const close = usePage(looksClose);
  const some = usePage((page) => page.view.selected !== null);
  if (!some) return null;
  return (
    <button type="button" className="btn look" aria-pressed={close} onClick={() => store.getState().lookCloser(!close)}>
      <SignShape sign="closer" />
      {say('look.closer')}
    </button>
  );
}

/** Over the picture, while it shows one stage. */
export function WholeLoop() {
  const store = usePageStore();
  const close = usePage(looksClose);
  if (!close) return null;
  return (
    <button type="button" className="btn whole-loop" onClick={() => store.getState().lookCloser(false)}>
      <SignShape sign="whole" />
      {say('look.whole')}
    </button>
  );
}
