// The lesson plan: forty-five minutes on one page, made from what the lesson itself holds.
import { CLASS_MINUTES, lessonSteps, minutesShort, type StepKind } from '../../state/paper/lessonSteps';
import type { Lesson } from '../../state/common/contract';
import { VERSIONS } from '../../state/paper/sheets';
import { say } from '../../../words/say';
import { versionLetter } from './cards';
import { CautionBox, Part, SheetHead } from './pieces';

/** How many mistakes, turning points and hints a page has room for. */
const MOST_TOLD = 3;

function Details({ kind, lesson }: { kind: StepKind; lesson: Lesson }) {
  const short = minutesShort(lesson);
  switch (kind) {
    case 'predict':
      return (
        <ul>
          {lesson.predictions.map((prediction) => (
            <li key={prediction.key}>{prediction.question}</li>
          ))}
        </ul>
      );
    case 'show': {
      const shown = lesson.demonstrations.at(0);
      return (
        <ul>
          {shown?.turningPoints.slice(0, MOST_TOLD).map((moment, index) => (
            <li key={index}>{say('paper.step.show.moment', { day: moment.day, say: moment.say })}</li>
          ))}
        </ul>
      );
    }
    case 'run':
      return short > 0 ? <p>{say('paper.step.run.short', { minutes: Math.round(lesson.minutes), short })}</p> : null;
    case 'explain':
      return lesson.mistakes.length > 0 ? (
        <p>
          {say('paper.step.explain.mistakes', {
            list: lesson.mistakes.slice(0, MOST_TOLD).map((mistake) => say('paper.quoted', { text: mistake.title })),
          })}
        </p>
      ) : null;
    case 'open':
    case 'order':
    case 'exit':
      return null;
  }
}

function stepWords(kind: StepKind, lesson: Lesson): string {
  const shown = lesson.demonstrations.at(0);
  return say(`paper.step.${kind}.how`, { days: lesson.plan.days, title: shown?.title ?? '', question: shown?.question ?? '' });
}

function Steps({ lesson }: { lesson: Lesson }) {
  return (
    <table className="sheet-table steps">
      <tbody>
        {lessonSteps(lesson).map(({ kind, from, minutes }) => (
          <tr key={kind}>
            <td className="span">
              {say('paper.plan.span', { from, to: from + minutes })}
              <span className="step-bar">
                <i style={{ left: `${(100 * from) / CLASS_MINUTES}%`, width: `${(100 * minutes) / CLASS_MINUTES}%` }} />
              </span>
            </td>
            <th scope="row">{say(`paper.step.${kind}`)}</th>
            <td>
              {stepWords(kind, lesson)}
              <Details kind={kind} lesson={lesson} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

export function LessonPlanSheet({ lesson }: { lesson: Lesson }) {
  const needs = [say('paper.plan.computers'), say('paper.plan.sheets', { last: versionLetter(VERSIONS - 1) }), say('paper.plan.key')];
  if (lesson.demonstrations.length > 0) needs.push(say('paper.plan.projector'));
  return (
    <>
      <SheetHead title={lesson.title} sub={say('paper.plan.sub', { minutes: CLASS_MINUTES })} />
      <dl className="plan-facts">
        {lesson.aim !== '' && (
          <div>
            <dt>{say('paper.plan.aim')}</dt>
            <dd>{lesson.aim}</dd>
          </div>
        )}
        {lesson.teaches !== '' && (
          <div>
            <dt>{say('paper.plan.teaches')}</dt>
            <dd>{lesson.teaches}</dd>
          </div>
        )}
        <div>
          <dt>{say('paper.plan.materials')}</dt>
          <dd>
            <ul className="run-on">
              {needs.map((need) => (
                <li key={need}>{need}</li>
              ))}
            </ul>
          </dd>
        </div>
      </dl>
      <Part id="steps" heading="paper.plan.steps">
        <Steps lesson={lesson} />
      </Part>
      <div className="sheet-columns">
        {lesson.hints.length > 0 && (
          <Part id="stuck" heading="paper.plan.stuck">
            <ul>
              {lesson.hints.slice(0, MOST_TOLD).map((hint, index) => (
                <li key={index}>{say('paper.plan.hint', { about: hint.about, notice: hint.notice, think: hint.think })}</li>
              ))}
            </ul>
          </Part>
        )}
        {lesson.caveats.length > 0 && (
          <Part id="caveats" heading="paper.plan.caveats">
            <ul>
              {lesson.caveats.map((line, index) => (
                <li key={index}>{line}</li>
              ))}
            </ul>
          </Part>
        )}
      </div>
      <CautionBox kinds={[...lesson.plan.loop, ...lesson.shelf, ...lesson.plan.side].map((stage) => stage.kind)} />
    </>
  );
}
