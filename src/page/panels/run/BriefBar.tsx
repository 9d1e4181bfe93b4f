// The bar on top: the lesson and its brief, the scores as they accrue, and what is wrong right now.
import { hasGoals } from '../../state/run/judging';
import { lessonOf, scoresAt } from '../../state/common/selectors';
import { readingAt } from '../../state/run/readings';
import { fishTankOf } from '../../state/build/planEdits';
import { say } from '../../../words/say';
import { figure, valueOf, withUnit } from '../../../words/units';
import { GoalsButton } from './Goals';
import { Help } from '../common/Help';
import { useMoment } from '../common/moment';
import { More } from '../common/More';
import { useBuild, useLived, usePage, usePageStore } from '../common/pageStore';
import { LESSONS_BUTTON } from '../path/lessonsButton';
import { FISH_PICTURE, LETTUCE_PICTURE } from '../common/pictures';
import { ScoreMeter } from './ScoreMeter';
import { Troubles } from './Troubles';

/** Opens the path of lessons; while an author's own file is open, its check too. */
function LessonButtons() {
  const store = usePageStore();
  const file = usePage((page) => page.path.file);
  return (
    <>
      <button type="button" id={LESSONS_BUTTON} className="btn" onClick={() => store.getState().setScreen('lessons')}>
        {say('path.button')}
      </button>
      {file !== null && (
        <button type="button" className="btn" aria-pressed={file.shown} onClick={() => store.getState().showFile(!file.shown)}>
          {say('file.button')}
        </button>
      )}
    </>
  );
}

function Meters() {
  const season = useLived((lived) => lived.season);
  const lesson = useLived((lived) => lived.lesson);
  const plan = useLived((lived) => lived.plan);
  const now_h = useMoment();
  const scores = scoresAt(season, now_h);
  const tank = fishTankOf(plan);
  const { marks, plantsWeight } = lesson.scoring;
  const fishDetail =
    tank === null
      ? say('brief.notYet')
      : say('brief.fishAlive', {
          n: valueOf('number', readingAt(season, tank, 'number', now_h, 'inside')),
          welfare: withUnit('welfare', readingAt(season, tank, 'welfare', now_h, 'inside')),
        });
  const harvestDetail =
    scores === null
      ? say('brief.notYet')
      : say(plantsWeight === 0 ? 'brief.gainOnly' : plantsWeight === 1 ? 'brief.plantsOnly' : 'brief.plantsGain', {
          plants: withUnit('kilograms', scores.plants_kg),
          gain: withUnit('kilograms', scores.gain_kg),
        });
  return (
    <div className="meters">
      <ScoreMeter
        kind="fish"
        name={say('brief.fishHealth')}
        picture={FISH_PICTURE}
        value={scores?.fishHealth ?? null}
        marks={marks.map((one) => one.fishHealth)}
        detail={fishDetail}
      />
      <ScoreMeter
        kind={plantsWeight === 0 ? 'gain' : 'harvest'}
        name={say('brief.harvest')}
        picture={plantsWeight === 0 ? FISH_PICTURE : LETTUCE_PICTURE}
        value={scores?.harvest ?? null}
        marks={marks.map((one) => one.harvest)}
        detail={harvestDetail}
      />
    </div>
  );
}

function Goals() {
  const lesson = useBuild((build) => build.lesson);
  const plan = useBuild((build) => build.plan);
  if (lesson.free) return null;
  if (hasGoals(lesson))
    return (
      <div className="goals more">
        <p className="label">{say('brief.goalsTitle', { n: plan.days })}</p>
        <GoalsButton />
      </div>
    );
  return (
    <dl className="goals">
      <dt>{say('brief.goalsTitle', { n: plan.days })}</dt>
      <dd>
        {say('brief.fishHealth')} {lesson.scoring.marks.map((one) => figure(one.fishHealth, 0)).join(' · ')}
      </dd>
      <dd>
        {say('brief.harvest')} {lesson.scoring.marks.map((one) => figure(one.harvest, 0)).join(' · ')}
      </dd>
    </dl>
  );
}

export function BriefBar() {
  const store = usePageStore();
  const lesson = usePage(lessonOf);
  const mode = usePage((page) => page.game.mode);
  const lived = mode === 'run' || mode === 'result';
  const cardAway = usePage(({ game }) => game.mode === 'result' && game.card === 'away');
  const title = lesson?.title ?? say('page.title');
  return (
    <header className="brief" aria-label={say('brief.region')}>
      <div className="brief-words">
        <div className="brief-title">
          <h1>{mode === 'build' && lesson !== null ? say('brief.build', { title }) : title}</h1>
          {lived && <GoalsButton />}
        </div>
        {lesson !== null && mode === 'build' && (
          <p className="brief-lines">
            {lesson.brief.map((line, index) => (
              <span key={index}>{line} </span>
            ))}
          </p>
        )}
        {lived && <Troubles />}
      </div>
      {mode === 'build' && <Goals />}
      {lived && <Meters />}
      <div className="brief-buttons">
        <LessonButtons />
        <Help />
        <More />
        {lived && (
          <button type="button" className="btn" onClick={() => store.getState().backToBuild()}>
            {say('brief.back')}
          </button>
        )}
        {cardAway && (
          <button type="button" className="btn plan" onClick={() => store.getState().showResult(true)}>
            {say('brief.result')}
          </button>
        )}
      </div>
    </header>
  );
}
