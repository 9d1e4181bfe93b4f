// Asks once before a season that is under way and was acted in is left, for another lesson or by the browser's Back button: what was done
// there would be gone.
import { createContext, useContext, type ReactNode } from 'react';
import { underWay } from '../../state/run/branches';
import type { PageState } from '../../state/common/page';
import { say } from '../../../words/say';
import { momentOf } from '../../../words/units';
import { useAskFirst, type Guard, type Question } from '../common/askFirst';
import { useBackAsks } from './backButton';

const LeaveContext = createContext<Guard>((go) => go());

/** Goes at once where nothing would be lost, and asks first where a season would. */
export function useLeave(): Guard {
  return useContext(LeaveContext);
}

function question({ game }: PageState): Question | null {
  if (game.mode !== 'run' || !underWay({ game })) return null;
  return {
    title: say('leave.title'),
    body: say('leave.body', { title: game.lesson.title, day: momentOf(game.lived_h).day }),
    answers: [
      { words: say('leave.stay'), does: false },
      { words: say('leave.go'), does: true },
    ],
  };
}

export function LeaveGuard({ children }: { children: ReactNode }) {
  const { guard, dialog } = useAskFirst(question);
  useBackAsks(guard);
  return (
    <LeaveContext.Provider value={guard}>
      {children}
      {dialog}
    </LeaveContext.Provider>
  );
}
