// Asks once before another lesson takes the place of a season that is under way and was acted in: what was done there would be gone.
import { createContext, useCallback, useContext, useEffect, useId, useRef, useState, type ReactNode } from 'react';
import { underWay } from '../../store/branches';
import { say } from '../../words/say';
import { momentOf } from '../../words/units';
import { usePageStore } from '../pageStore';

type Leave = (go: () => void) => void;
const LeaveContext = createContext<Leave>((go) => go());

/** Goes at once where nothing would be lost, and asks first where a season would. */
export function useLeave(): Leave {
  return useContext(LeaveContext);
}

export function LeaveGuard({ children }: { children: ReactNode }) {
  const store = usePageStore();
  const [wish, setWish] = useState<(() => void) | null>(null);
  const dialog = useRef<HTMLDialogElement>(null);
  const title = useId();
  const leave = useCallback<Leave>((go) => {
    if (!underWay(store.getState())) {
      go();
      return;
    }
    store.getState().setSpeed('paused');
    setWish(() => go);
  }, [store]);
  useEffect(() => {
    if (wish !== null) dialog.current?.showModal();
  }, [wish]);
  const done = (goes: boolean): void => {
    dialog.current?.close();
    setWish(null);
    if (goes) wish?.();
  };
  const { lesson, lived_h } = store.getState();
  return (
    <LeaveContext.Provider value={leave}>
      {children}
      {wish !== null && (
        <dialog ref={dialog} className="card ask" aria-labelledby={title} onCancel={() => setWish(null)}>
          <h2 id={title}>{say('leave.title')}</h2>
          <p>{say('leave.body', { title: lesson?.title ?? '', day: momentOf(lived_h).day })}</p>
          <div className="row">
            <button type="button" className="btn plan" autoFocus onClick={() => done(false)}>{say('leave.stay')}</button>
            <button type="button" className="btn" onClick={() => done(true)}>{say('leave.go')}</button>
          </div>
        </dialog>
      )}
    </LeaveContext.Provider>
  );
}
