// The branches of a season: which there are, where they split, how they score, and which one is lived on or shown as a ghost.
import { useEffect, useRef, useState } from 'react';
import { dayOf } from '../../state/common/clock';
import { scoresAt } from '../../state/common/selectors';
import { branchLetter, comparedBranch } from '../../state/run/branches';
import type { Branch } from '../../state/common/state';
import { say } from '../../../words/say';
import { momentOf, whole } from '../../../words/units';
import { useLived, usePage } from '../common/pageStore';

function beganWords(branch: Branch): string {
  if (branch.from === null) return say('branch.first');
  const { day, clock } = momentOf(branch.split_h);
  return say('branch.split', { before: branchLetter(branch.from), moment: say('season.moment', { day, hour: clock }) });
}

function Row({ branch, present, ghost, onDone }: { branch: Branch; present: boolean; ghost: boolean; onDone: () => void }) {
  const switchTo = usePage((page) => page.switchTo);
  const compareWith = usePage((page) => page.compareWith);
  const name = say('branch.name', { branch: branchLetter(branch.id) });
  return (
    <tr data-present={present || undefined}>
      <th scope="row">
        <i className="branch-line" data-ghost={ghost || undefined} data-present={present || undefined} aria-hidden="true" />
        {name}
        {present && <span className="note">{say('branch.present')}</span>}
        {ghost && <span className="note">{say('branch.ghost')}</span>}
      </th>
      <td>{beganWords(branch)}</td>
      <td>{say('season.day', { day: momentOf(branch.lived_h).day })}</td>
      <td>{whole(branch.scores?.fishHealth ?? NaN)}</td>
      <td>{whole(branch.scores?.harvest ?? NaN)}</td>
      <td>
        {!present && (
          <div className="row">
            <button
              type="button"
              className="btn"
              aria-label={say(ghost ? 'branch.hide' : 'branch.compare', { branch: name })}
              onClick={() => void compareWith(ghost ? null : branch.id)}
            >
              {say(ghost ? 'branch.hideShort' : 'branch.compareShort')}
            </button>
            <button
              type="button"
              className="btn plan"
              aria-label={say('branch.go', { branch: name })}
              onClick={() => {
                onDone();
                void switchTo(branch.id);
              }}
            >
              {say('branch.goShort')}
            </button>
          </div>
        )}
      </td>
    </tr>
  );
}

function BranchDialog({ onClose }: { onClose: () => void }) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  // a day lived more, and the scores may be others
  const day = useLived((lived) => dayOf(lived.lived_h));
  const known = useLived((lived) => lived.branches);
  const season = useLived((lived) => lived.season);
  const present = useLived((lived) => lived.present);
  const ghost = useLived(comparedBranch);
  const branches = known.map((branch) =>
    branch.id === present ? { ...branch, lived_h: 24 * day, scores: scoresAt(season, 24 * day) } : branch,
  );
  return (
    <dialog ref={dialog} className="card ask branches" aria-labelledby="branches-title" onClose={onClose}>
      <h2 id="branches-title">{say('branch.title')}</h2>
      <p>{say('branch.hint')}</p>
      <table>
        <thead>
          <tr>
            <th scope="col">{say('branch.course')}</th>
            <th scope="col">{say('branch.began')}</th>
            <th scope="col">{say('branch.livedHead')}</th>
            <th scope="col">{say('brief.fishHealth')}</th>
            <th scope="col">{say('brief.harvest')}</th>
            <th scope="col">
              <span className="hidden">{say('branch.choose')}</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {branches.map((branch) => (
            <Row
              key={branch.id}
              branch={branch}
              present={branch.id === present}
              ghost={branch.id === ghost?.id}
              onDone={() => dialog.current?.close()}
            />
          ))}
        </tbody>
      </table>
      <button type="button" className="btn" onClick={() => dialog.current?.close()}>
        {say('page.close')}
      </button>
    </dialog>
  );
}

/** Stands beside the clock from the second branch on, with the name of the branch that is lived. */
export function Branches() {
  const several = useLived((lived) => lived.branches.length > 1);
  const present = useLived((lived) => lived.present);
  const ghost = useLived(comparedBranch);
  const [open, setOpen] = useState(false);
  if (!several) return null;
  return (
    <>
      <button
        type="button"
        className="btn log"
        aria-label={say('branch.button', { branch: branchLetter(present) })}
        onClick={() => setOpen(true)}
      >
        <i className="branch-line" data-present aria-hidden="true" />
        {branchLetter(present)}
        {ghost !== null && (
          <>
            <i className="branch-line" data-ghost aria-hidden="true" />
            {branchLetter(ghost.id)}
          </>
        )}
      </button>
      {open && <BranchDialog onClose={() => setOpen(false)} />}
    </>
  );
}
