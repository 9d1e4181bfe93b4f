// The teacher's key: the reference order with reasons from the model's own season, what each mistake does, how predictions and
// demonstrations come out.
import type { Lesson, Plan } from '../../state/common/contract';
import { TINTS } from '../../state/common/tints';
import type { LessonKey } from '../../state/paper/sheets';
import { changesAt, tintOfLesson, type Change } from '../../state/run/stageWork';
import { whyAt } from '../../state/run/why';
import { say } from '../../../words/say';
import { stageName } from '../../../words/stageNames';
import { measured, unitOf, whole } from '../../../words/units';
import { factsOf } from '../../state/common/selectors';
import { usePage } from '../common/pageStore';
import { whySentence } from '../run/whyWords';
import { cardsOf, versionLetter } from './cards';
import { KeyAnswers } from './KeyAnswers';
import { MistakeList } from './MistakeList';
import { CautionBox, LoopStrip, Part, Ring, SheetHead } from './pieces';
import { sideWords } from './SideBranches';

const MOST_CHANGES = 2;

function changeWords({ tint, in: before, out: after }: Change): string {
  const decimals = Math.min(2, TINTS[tint].decimals + 1);
  const unit = unitOf(TINTS[tint].unitKey);
  const values = { what: say(`tint.${tint}`), before: measured(before, decimals), after: measured(after, decimals) };
  return unit === '' ? say('paper.key.changed', values) : say('paper.key.changedIn', { ...values, unit });
}

function Why({ found, stageId, lesson }: { found: LessonKey; stageId: string; lesson: Lesson }) {
  const facts = usePage(factsOf);
  if (facts === null) return null;
  const tint = tintOfLesson(lesson);
  const water_m3 = found.season.stages.reduce((sum, stage) => sum + stage.volume_m3, 0);
  const told = whyAt(found.season, facts, found.plan, stageId, found.plan.days * 24, tint);
  if (told.length === 0) return <>{say('paper.key.nothing')}</>;
  return (
    <>
      {told.map((why) => (
        <span key={why.topic}>
          {whySentence(why, tint, water_m3).map((piece, index) => (index % 2 === 1 ? <b key={index}>{piece}</b> : piece))}{' '}
        </span>
      ))}
    </>
  );
}

function OrderTable({ found, lesson, version }: { found: LessonKey; lesson: Lesson; version: number }) {
  const { plan, season } = found;
  const letters = new Map(cardsOf(lesson, version).cards.map((card) => [card.stage.id, card.letter]));
  const all = [...plan.loop, ...plan.side];
  const lastDay = plan.days - 1;
  const holds = (id: string): boolean => season.stages.some((stage) => stage.id === id && stage.cells > 0);
  return (
    <table className="sheet-table order-table">
      <thead>
        <tr>
          <th scope="col">{say('paper.key.place')}</th>
          <th scope="col">{say('paper.key.stage')}</th>
          <th scope="col">{say('paper.key.card')}</th>
          <th scope="col">{say('paper.key.change')}</th>
          <th scope="col">{say('paper.key.why')}</th>
        </tr>
      </thead>
      <tbody>
        {all.map((stage, index) => {
          const changes = index < plan.loop.length && holds(stage.id) ? changesAt(season, plan, stage.id, lastDay, MOST_CHANGES) : [];
          return (
            <tr key={stage.id}>
              <td>{index < plan.loop.length ? <Ring>{index + 1}</Ring> : null}</td>
              <th scope="row">
                {stageName(all, stage.id)}
                {index >= plan.loop.length && <span className="sheet-note"> {say('paper.key.side')}</span>}
              </th>
              <td>{letters.get(stage.id) ?? '–'}</td>
              <td>
                {holds(stage.id) && index < plan.loop.length
                  ? changes.length === 0
                    ? say('paper.key.little')
                    : changes.map((change) => (
                        <span key={change.tint} className="change">
                          {changeWords(change)}
                        </span>
                      ))
                  : '–'}
              </td>
              <td>
                {say(`stage.${stage.kind}.does`)}{' '}
                {plan.side.filter((side) => side.id === stage.id).map((side) => `${sideWords(side, plan.loop)} `)}
                {holds(stage.id) && (
                  <>
                    {' '}
                    <Why found={found} stageId={stage.id} lesson={lesson} />
                  </>
                )}
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

function LeftOver({ lesson, plan }: { lesson: Lesson; plan: Plan }) {
  const left = lesson.shelf.filter((part) => !plan.loop.some((stage) => stage.id === part.id));
  if (left.length === 0) return null;
  return (
    <p className="sheet-note">
      {say('paper.key.notUsed', { stages: left.map((part) => stageName([...lesson.plan.loop, ...lesson.shelf], part.id)) })}
    </p>
  );
}

export function KeySheet({ lesson, found, version }: { lesson: Lesson; found: LessonKey; version: number }) {
  const { plan, played } = found;
  const reference = played.find((one) => one.role === 'reference');
  return (
    <>
      <SheetHead title={lesson.title} sub={say('paper.key.sub', { version: versionLetter(version) })}>
        {reference !== undefined && (
          <p className="sheet-result">
            {say('paper.key.result', {
              fish: whole(reference.fishHealth),
              harvest: whole(reference.harvest),
              n: reference.marks,
              all: lesson.scoring.marks.length,
            })}
          </p>
        )}
      </SheetHead>
      <LoopStrip stages={plan.loop} />
      <Part id="order" heading="paper.key.order" note={say('paper.key.orderHow', { day: plan.days - 1, days: plan.days })}>
        <OrderTable found={found} lesson={lesson} version={version} />
        <LeftOver lesson={lesson} plan={plan} />
      </Part>
      {lesson.mistakes.length > 0 && <MistakeList plan={plan} played={played} />}
      <KeyAnswers lesson={lesson} plan={plan} played={played} />
      <p className="sheet-note">{say('paper.key.from', { model: plan.model, seed: plan.seed })}</p>
      <CautionBox kinds={[...plan.loop, ...plan.side].map((stage) => stage.kind)} />
    </>
  );
}
