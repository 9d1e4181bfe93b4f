// Asks before a person acts in the past, because a new branch begins there and the hours since are lived again.
import { createContext, useCallback, useContext, useEffect, useRef, useState, type ReactNode } from 'react';
import { branchLetter } from '../store/branches';
import { actsInPast, actingHour } from '../store/inForce';
import { say } from '../words/say';
import { momentOf } from '../words/units';
import { usePageStore } from './pageStore';

type Guard = (deed: () => void) => void;
const GuardContext = createContext<Guard>((deed) => deed());

/** Does a deed at once when it concerns the present, and asks first when it would open a branch among the hours lived. */
export function useGuard(): Guard {
  return useContext(GuardContext);
}

export function PastGuard({ children }: { children: ReactNode }) {
  const store = usePageStore();
  const [deed, setDeed] = useState<(() => void) | null>(null);
  const dialog = useRef<HTMLDialogElement>(null);
  const guard = useCallback<Guard>((wanted) => {
    if (!actsInPast(store.getState())) {
      wanted();
      return;
    }
    store.getState().setSpeed('paused');
    setDeed(() => wanted);
  }, [store]);
  useEffect(() => {
    if (deed !== null) dialog.current?.showModal();
  }, [deed]);
  const done = (act: boolean): void => {
    dialog.current?.close();
    if (act) deed?.();
    setDeed(null);
  };
  const { branches, present } = store.getState();
  const { day, clock } = momentOf(actingHour(store.getState()));
  return (
    <GuardContext.Provider value={guard}>
      {children}
      {deed !== null && (
        <dialog ref={dialog} className="card ask" aria-labelledby="past-title" onCancel={() => setDeed(null)}>
          <h2 id="past-title">{say('past.title')}</h2>
          <p>{say('past.body', { moment: say('season.moment', { day, hour: clock }), branch: branchLetter(branches.length), before: branchLetter(present) })}</p>
          <div className="row">
            <button type="button" className="btn plan" onClick={() => done(true)}>{say('past.yes')}</button>
            <button type="button" className="btn" onClick={() => done(false)}>{say('past.no')}</button>
          </div>
        </dialog>
      )}
    </GuardContext.Provider>
  );
}
