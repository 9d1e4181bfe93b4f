// Side branches on paper: what stands beside the loop, with blanks for where it takes water and gives it; told in words for the key.
import type { Lesson, Plan, StageKind } from '../../state/common/contract';
import { listText } from '../../../words/language';
import { say } from '../../../words/say';
import { stageName } from '../../../words/stageNames';
import { STAGE_PICTURES } from '../common/pictures';
import { doses, takesSolids } from '../../state/common/kinds';

type Side = Plan['side'][number];

/** The side branches of the lesson's reference. */
export function sidesOf(lesson: Lesson): Side[] {
  return lesson.plan.side.filter((side) => !(lesson.reference.without ?? []).includes(side.id));
}

/** Where a side branch takes and gives, in words; stages are named as the loop has them. */
export function sideWords(side: Side, stages: readonly { id: string; kind: StageKind }[]): string {
  if (doses(side)) return say('paper.side.drips', { to: stageName(stages, side.into) });
  const from = side.takes.filter((id) => stages.some((stage) => stage.id === id)).map((id) => stageName(stages, id));
  const to = stageName(stages, side.returnsTo);
  return from.length === 0 ? say('paper.side.idle', { to }) : say('paper.side.takes', { from: listText(from, 'all'), to });
}

function Blank({ words }: { words: string }) {
  return (
    <span className="write">
      {words}
      <i className="line" />
    </span>
  );
}

/** For the learner: each side branch with its questions, which box of the loop it belongs to. */
export function SideBlanks({ lesson }: { lesson: Lesson }) {
  const sides = sidesOf(lesson);
  const all = [...lesson.plan.loop, ...lesson.shelf, ...lesson.plan.side];
  if (sides.length === 0) return null;
  return (
    <div className="sides">
      <p className="sheet-note">{say('paper.side.beside', { n: sides.length })}</p>
      <ul className="side-list">
        {sides.map((side) => (
          <li key={side.id}>
            <img src={STAGE_PICTURES[side.kind]} alt="" />
            <b>{stageName(all, side.id)}</b>
            {takesSolids(side) && <Blank words={say('paper.side.from')} />}
            <Blank words={say(doses(side) ? 'paper.side.into' : 'paper.side.back')} />
          </li>
        ))}
      </ul>
    </div>
  );
}
