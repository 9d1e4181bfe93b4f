// The bar at the foot while building: whether water can flow, what is doubtful, and the start of the season.
import { feedNow, shelfParts } from '../store/selectors';
import { say, sayOr } from '../words/say';
import { stageName } from '../words/stageNames';
import { figure } from '../words/units';
import type { DesignCheck } from '../store/contract';
import type { Lesson } from '../store/contract';
import type { Plan } from '../store/contract';
import type { Mark } from '../store/state';
import { MarkShape } from './marks';
import { usePage, usePageStore } from './pageStore';

interface Line { mark: Mark; words: string; detail: string }

/** Every value of a problem as it may stand in its words: heights and lifts in whole and tenth figures. */
function shownValues(values: Record<string, number>): Record<string, string> {
  return Object.fromEntries(Object.entries(values).map(([name, value]) => [name, figure(value, Math.abs(value) >= 100 ? 0 : Math.abs(value) >= 10 ? 1 : 2)]));
}

function linesOf(lesson: Lesson, plan: Plan, design: DesignCheck, feed_g_d: number): Line[] {
  const lines: Line[] = design.problems.map((problem) => ({
    mark: 'watch', detail: '',
    words: sayOr(problem.key.startsWith('design.') ? problem.key : `design.${problem.key}`, 'design.unknown', { ...shownValues(problem.values), stage: stageName([...plan.loop, ...plan.side], problem.stage) }),
  }));
  if (lines.length === 0) lines.push({ mark: 'fine', words: say('design.fine'), detail: say('design.fineDetail', { volume: figure(design.totalVolume_m3, 2), lift: figure(design.lift_m, 2) }) });
  const noFeed = say('design.noFeed');
  if (feed_g_d === 0 && !lines.some((line) => line.words === noFeed)) lines.push({ mark: 'watch', words: noFeed, detail: say('design.noFeedDetail') });
  const left = shelfParts(lesson, plan).length;
  if (left > 0) lines.push({ mark: 'watch', words: left === 1 ? say('design.unplacedOne') : say('design.unplaced', { n: left }), detail: say('design.unplacedDetail') });
  return lines;
}

export function BuildBar() {
  const store = usePageStore();
  const lesson = usePage((page) => page.lesson);
  const plan = usePage((page) => page.plan);
  const design = usePage((page) => page.design);
  const feed = usePage(feedNow);
  const busy = usePage((page) => page.busy);
  return (
    <section className="bottom build-bar" aria-label={say('build.check')}>
      <ul className="checks" tabIndex={0} aria-label={say('build.check')}>
        {lesson !== null && plan !== null && design !== null && linesOf(lesson, plan, design, feed).map((line) => (
          <li key={line.words}><MarkShape mark={line.mark} /><div><b>{line.words}</b>{line.detail !== '' && <span className="note">{line.detail}</span>}</div></li>
        ))}
      </ul>
      <button type="button" className="btn go" disabled={plan === null} aria-disabled={busy || undefined} onClick={() => void store.getState().run()}>{say(busy ? 'build.running' : 'build.run')}</button>
    </section>
  );
}
