// The bar on top: the lesson and its brief, the scores as they accrue, and what is wrong right now.
import { useRef } from 'react';
import { scoresAt } from '../store/selectors';
import { readingAt } from '../store/readings';
import { fishTankOf } from '../store/planEdits';
import { say } from '../words/say';
import { figure, valueOf, withUnit } from '../words/units';
import { AllCautions } from './Cautions';
import { Help } from './Help';
import { useMoment } from './moment';
import { usePage, usePageStore } from './pageStore';
import { FISH_PICTURE, LETTUCE_PICTURE } from './pictures';
import { ScoreMeter } from './ScoreMeter';
import { Troubles } from './Troubles';

function OpenFile() {
  const store = usePageStore();
  const field = useRef<HTMLInputElement>(null);
  const open = async (file: File): Promise<void> => {
    try {
      await store.getState().openLesson(file.name, await file.text());
    } catch (error) {
      store.getState().reportFailure(say('failure.read', { message: error instanceof Error ? error.message : String(error) }));
    }
  };
  return (
    <>
      <button type="button" className="btn" onClick={() => field.current?.click()}>{say('brief.openFile')}</button>
      <input ref={field} type="file" accept=".json,application/json" hidden data-lesson-file onChange={(event) => {
        const file = event.target.files?.[0];
        event.target.value = '';
        if (file !== undefined) void open(file);
      }} />
    </>
  );
}

function Meters() {
  const season = usePage((page) => page.season);
  const lesson = usePage((page) => page.lesson);
  const plan = usePage((page) => page.plan);
  const now_h = useMoment();
  if (lesson === null || plan === null) return null;
  const scores = season === null ? null : scoresAt(season, now_h);
  const tank = fishTankOf(plan);
  const { marks } = lesson.scoring;
  const fishDetail = season === null || tank === null ? say('brief.notYet') : say('brief.fishAlive', {
    n: valueOf('number', readingAt(season, tank, 'number', now_h, 'inside')), welfare: withUnit('welfare', readingAt(season, tank, 'welfare', now_h, 'inside')),
  });
  const harvestDetail = scores === null ? say('brief.notYet') : say('brief.plantsGain', { plants: withUnit('kilograms', scores.plants_kg), gain: withUnit('kilograms', scores.gain_kg) });
  return (
    <div className="meters">
      <ScoreMeter kind="fish" name={say('brief.fishHealth')} picture={FISH_PICTURE} value={scores?.fishHealth ?? null} marks={marks.map((one) => one.fishHealth)} detail={fishDetail} />
      <ScoreMeter kind="harvest" name={say('brief.harvest')} picture={LETTUCE_PICTURE} value={scores?.harvest ?? null} marks={marks.map((one) => one.harvest)} detail={harvestDetail} />
    </div>
  );
}

function Goals() {
  const lesson = usePage((page) => page.lesson);
  const plan = usePage((page) => page.plan);
  if (lesson === null || plan === null) return null;
  return (
    <dl className="goals">
      <dt>{say('brief.goalsTitle', { days: plan.days })}</dt>
      <dd>{say('brief.fishHealth')} {lesson.scoring.marks.map((one) => figure(one.fishHealth, 0)).join(' · ')}</dd>
      <dd>{say('brief.harvest')} {lesson.scoring.marks.map((one) => figure(one.harvest, 0)).join(' · ')}</dd>
    </dl>
  );
}

export function BriefBar({ resultHidden, onShowResult }: { resultHidden: boolean; onShowResult: () => void }) {
  const store = usePageStore();
  const lesson = usePage((page) => page.lesson);
  const mode = usePage((page) => page.mode);
  const title = lesson?.title ?? say('page.title');
  return (
    <header className="brief" aria-label={say('brief.region')}>
      <div className="brief-words">
        <h1>{mode === 'build' && lesson !== null ? say('brief.build', { title }) : title}</h1>
        {lesson !== null && mode === 'build' && <p className="brief-lines">{lesson.brief.map((line, index) => <span key={index}>{line} </span>)}</p>}
        {mode !== 'build' && <Troubles />}
      </div>
      {mode === 'build' ? <Goals /> : <Meters />}
      <div className="brief-buttons">
        <Help />
        <AllCautions />
        {mode === 'build' ? <OpenFile /> : <button type="button" className="btn" onClick={() => store.getState().backToBuild()}>{say('brief.back')}</button>}
        {mode === 'result' && resultHidden && <button type="button" className="btn plan" onClick={onShowResult}>{say('brief.result')}</button>}
      </div>
    </header>
  );
}
