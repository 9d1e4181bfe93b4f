// Asks before something is done that would cost a season's hours or acts; does at once what costs nothing.
import { useCallback, useEffect, useId, useRef, useState, type ReactNode } from 'react';
import type { PageState } from '../../state/common/page';
import { usePageStore } from './pageStore';

export type Deed = () => void;
/** Does a deed, at once or once it was asked for; the other is done where the answer is no. */
export type Guard = (deed: Deed, otherwise?: Deed) => void;
const nothing: Deed = () => undefined;
/** What is asked; the first answer is the usual one. */
export interface Question {
  title: string;
  body: string;
  answers: readonly { words: string; does: boolean }[];
}

/**
 * @param question what is to be asked as the page stands, in words; null where a deed costs nothing
 * @returns the guard, and the dialog while something is asked
 */
export function useAskFirst(question: (page: PageState) => Question | null): { guard: Guard; dialog: ReactNode } {
  const store = usePageStore();
  const [asking, setAsking] = useState<{ asked: Question; deed: Deed; otherwise: Deed } | null>(null);
  const element = useRef<HTMLDialogElement>(null);
  const title = useId();
  const guard = useCallback<Guard>(
    (deed, otherwise = nothing) => {
      const asked = question(store.getState());
      if (asked === null) {
        deed();
        return;
      }
      store.getState().setSpeed('paused');
      setAsking({ asked, deed, otherwise });
    },
    [store, question],
  );
  useEffect(() => {
    if (asking !== null && element.current?.open === false) element.current.showModal();
  }, [asking]);
  if (asking === null) return { guard, dialog: null };
  const { asked, deed, otherwise } = asking;
  const done = (does: boolean): void => {
    element.current?.close();
    setAsking(null);
    if (does) deed();
    else otherwise();
  };
  return {
    guard,
    dialog: (
      <dialog ref={element} className="card ask" aria-labelledby={title} onCancel={() => done(false)}>
        <h2 id={title}>{asked.title}</h2>
        <p>{asked.body}</p>
        <div className="row">
          {asked.answers.map(({ words, does }, i) => (
            <button key={words} type="button" className={i === 0 ? 'btn plan' : 'btn'} autoFocus={i === 0} onClick={() => done(does)}>
              {words}
            </button>
          ))}
        </div>
      </dialog>
    ),
  };
}
