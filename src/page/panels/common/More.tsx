// What is wanted once in a while, behind one button of the bar on top: presenting, paper, cautions.
import { useRef, useState } from 'react';
import { say } from '../../../words/say';
import { CautionsDialog } from './Cautions';
import { usePageStore } from './pageStore';
import { togglePresenter } from '../presenter/presenterToggle';

const MENU = 'more-menu';

export function More() {
  const store = usePageStore();
  const menu = useRef<HTMLDivElement>(null);
  const cautions = useRef<HTMLDialogElement>(null);
  const [open, setOpen] = useState(false);
  const putAway = (): void => menu.current?.hidePopover();
  const present = (): void => {
    putAway();
    togglePresenter(store.getState());
  };
  const warn = (): void => {
    putAway();
    cautions.current?.showModal();
  };
  const paper = (): void => {
    putAway();
    // who comes from the end of a season wants its summary
    if (store.getState().game.mode === 'result') store.getState().choosePaper({ sheet: 'season' });
    store.getState().setScreen('paper');
  };
  return (
    <>
      <button type="button" className="btn" popoverTarget={MENU} aria-expanded={open}>
        {say('more.button')}
      </button>
      <div
        ref={menu}
        id={MENU}
        popover="auto"
        className="card more-menu"
        role="group"
        aria-label={say('more.button')}
        onToggle={(event) => setOpen(event.newState === 'open')}
      >
        <button type="button" className="btn" title={say('presenter.openKey')} onClick={present}>
          {say('presenter.open')}
        </button>
        <button type="button" className="btn" onClick={paper}>
          {say('paper.button')}
        </button>
        <button type="button" className="btn" onClick={warn}>
          {say('caution.all')}
        </button>
      </div>
      <CautionsDialog dialog={cautions} />
    </>
  );
}
