// Asks before something is done that would cost a season's hours or acts; does at once what costs nothing.
import { useCallback, useEffect, useId, useRef, useState, type ReactNode } from 'react';
import type { PageState } from '../../state/common/state';
import { usePageStore } from './pageStore';

export type Deed = () => void;
/** Does a deed, at once or once it was asked for; the other is done where the answer is no. */
export type Guard = (deed: Deed, otherwise?: Deed) => void;
const nothing: Deed = () => undefined;
/** What is asked; the first answer is the usual one. */
export interface Question { title: string; body: string; answers: readonly { words: string; does: boolean }[] }

/**
 * @param needed whether a deed must be asked for, as the page stands
 * @param question in words, as the page stands
 * @returns the guard, and the dialog while something is asked
 */
export function useAskFirst(needed: (page: PageState) => boolean, question: (page: PageState) => Question): { guard: Guard; dialog: ReactNode } {
  const store = usePageStore();
  const [asking, setAsking] = useState<{ deed: Deed; otherwise: Deed } | null>(null);
  const element = useRef<HTMLDialogElement>(null);
  const title = useId();
  const guard = useCallback<Guard>((deed, otherwise = nothing) => {
    if (!needed(store.getState())) {
      deed();
      return;
    }
    store.getState().setSpeed('paused');
    setAsking({ deed, otherwise });
  }, [store, needed]);
  useEffect(() => {
    if (asking !== null && element.current?.open === false) element.current.showModal();
  }, [asking]);
  if (asking === null) return { guard, dialog: null };
  const done = (does: boolean): void => {
    element.current?.close();
    setAsking(null);
    if (does) asking.deed();
    else asking.otherwise();
  };
  const asked = question(store.getState());
  return {
    guard,
    dialog: (
      <dialog ref={element} className="card ask" aria-labelledby={title} onCancel={() => done(false)}>
        <h2 id={title}>{asked.title}</h2>
        <p>{asked.body}</p>
        <div className="row">
          {asked.answers.map(({ words, does }, i) => <button key={words} type="button" className={i === 0 ? 'btn plan' : 'btn'} autoFocus={i === 0} onClick={() => done(does)}>{words}</button>)}
        </div>
      </dialog>
    ),
  };
}
