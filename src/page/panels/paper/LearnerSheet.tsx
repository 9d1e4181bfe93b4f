// The learner's sheet: stages to put in order with blanks, what each is for, what stands beside the loop, and predictions to make before
// anything runs.
import type { Lesson } from '../../state/common/contract';
import { say } from '../../../words/say';
import { kindName, stageName } from '../../../words/stageNames';
import { STAGE_PICTURES } from '../common/pictures';
import { cardsOf, versionLetter, type Cards } from './cards';
import { Arrow, Box, CautionBox, Part, Ring, SheetHead } from './pieces';
import { SideBlanks } from './SideBranches';

function Blanks({ cards }: { cards: Cards }) {
  return (
    <ol className="blanks">
      {cards.first !== null && (
        <li>
          <figure>
            <Ring>{1}</Ring>
            <span className="blank told">{kindName(cards.first.kind)}</span>
          </figure>
        </li>
      )}
      {Array.from({ length: cards.boxes }, (_, index) => (
        <li key={index}>
          <Arrow />
          <figure>
            <Ring>{index + 2}</Ring>
            <span className="blank" />
          </figure>
        </li>
      ))}
      <li className="strip-back">
        <Arrow />
        {say('paper.learner.back')}
      </li>
    </ol>
  );
}

function CardList({ cards, lesson }: { cards: Cards; lesson: Lesson }) {
  const all = [...lesson.plan.loop, ...lesson.shelf];
  return (
    <ul className="cards">
      {cards.cards.map(({ letter, stage }) => (
        <li key={stage.id}>
          <Ring>{letter}</Ring>
          <img src={STAGE_PICTURES[stage.kind]} alt="" />
          <div>
            <b>{stageName(all, stage.id)}</b>
            <p>{say('paper.learner.what')}</p>
            <i className="line" />
            <i className="line" />
          </div>
        </li>
      ))}
    </ul>
  );
}

function Predictions({ lesson }: { lesson: Lesson }) {
  return (
    <Part id="predict" heading="paper.learner.predict" note={say('paper.learner.predictHow')}>
      <ol className="questions">
        {lesson.predictions.map((prediction) => (
          <li key={prediction.key}>
            <p>
              <b>{prediction.question}</b>{' '}
              <span className="sheet-note">
                {prediction.askDay > 0
                  ? say('paper.learner.asked', { ask: prediction.askDay, day: prediction.dueDay })
                  : say('paper.learner.due', { day: prediction.dueDay })}
              </span>
            </p>
            <ul className="choices-list">
              {prediction.choices.map((choice) => (
                <li key={choice.key}>
                  <Box />
                  {choice.text}
                </li>
              ))}
            </ul>
            <p className="write">
              {say('paper.learner.because')}
              <i className="line" />
            </p>
            <p className="write">
              {say('paper.learner.after')}
              <i className="line" />
            </p>
          </li>
        ))}
      </ol>
    </Part>
  );
}

export function LearnerSheet({ lesson, version }: { lesson: Lesson; version: number }) {
  const cards = cardsOf(lesson, version);
  const strays = cards.cards.filter((card) => card.stray).length;
  const given = lesson.given ?? [];
  const all = [...lesson.plan.loop, ...lesson.shelf];
  return (
    <>
      <SheetHead title={lesson.title} sub={say('paper.learner.sub', { version: versionLetter(version) })} named />
      <p className="sheet-brief">{lesson.brief.join(' ')}</p>
      <Part
        id="order"
        heading="paper.learner.order"
        note={[say('paper.learner.orderHow'), ...(strays === 0 ? [] : [say('paper.learner.strays', { n: strays })])]}
      >
        {given.length > lesson.plan.loop.length && (
          <p className="sheet-note">{say('paper.learner.given', { loop: given.map((id) => stageName(all, id)).join(' → ') })}</p>
        )}
        <Blanks cards={cards} />
        <CardList cards={cards} lesson={lesson} />
        <SideBlanks lesson={lesson} />
      </Part>
      {lesson.predictions.length > 0 && <Predictions lesson={lesson} />}
      <CautionBox kinds={[...all, ...lesson.plan.side].map((stage) => stage.kind)} />
    </>
  );
}
