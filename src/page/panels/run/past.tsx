// Asks before a person acts in the past, because a new branch begins there and the hours since are lived again.
import { createContext, useContext, type ReactNode } from 'react';
import { branchLetter } from '../../state/run/branches';
import { actsInPast, actingHour } from '../../state/run/inForce';
import type { PageState } from '../../state/common/page';
import { livedOf } from '../../state/common/selectors';
import { say } from '../../../words/say';
import { momentOf } from '../../../words/units';
import { useAskFirst, type Guard, type Question } from '../common/askFirst';

const GuardContext = createContext<Guard>((deed) => deed());

/** Does a deed at once when it concerns the present, and asks first when it would open a branch among the hours lived. */
export function useGuard(): Guard {
  return useContext(GuardContext);
}

function question(page: PageState): Question | null {
  const lived = livedOf(page);
  if (lived === null || !actsInPast(lived)) return null;
  const { day, clock } = momentOf(actingHour(lived));
  return {
    title: say('past.title'),
    body: say('past.body', {
      moment: say('season.moment', { day, hour: clock }),
      branch: branchLetter(lived.branches.length),
      before: branchLetter(lived.present),
    }),
    answers: [
      { words: say('past.yes'), does: true },
      { words: say('past.no'), does: false },
    ],
  };
}

export function PastGuard({ children }: { children: ReactNode }) {
  const { guard, dialog } = useAskFirst(question);
  return (
    <GuardContext.Provider value={guard}>
      {children}
      {dialog}
    </GuardContext.Provider>
  );
}
