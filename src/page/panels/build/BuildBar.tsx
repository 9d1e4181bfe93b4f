// The bar at the foot while building: whether water can flow, what is doubtful, and the start of the season.
import { fishToCome, offersChoice, problemsToTell } from '../../state/build/offering';
import { feedNow, shelfParts } from '../../state/common/selectors';
import type { DesignCheck, Lesson, Plan } from '../../state/common/contract';
import type { Mark } from '../../state/common/state';
import { say } from '../../../words/say';
import { withUnit } from '../../../words/units';
import { problemMark, problemWords } from './designWords';
import { SignShape } from '../common/icons';
import { MarkShape } from '../common/marks';
import { useBuild, usePageStore } from '../common/pageStore';

interface Line {
  mark: Mark;
  words: string;
  detail: string;
}

function linesOf(lesson: Lesson, plan: Plan, design: DesignCheck, feed_g_d: number): Line[] {
  const lines: Line[] = problemsToTell(lesson, plan, design).map((problem) => ({
    mark: problemMark(problem),
    detail: '',
    words: problemWords(plan, problem),
  }));
  lines.sort((one, other) => Number(other.mark === 'act') - Number(one.mark === 'act'));
  if (lines.length === 0)
    lines.push({
      mark: 'fine',
      words: say('design.fine'),
      detail: say('design.fineDetail', { volume: withUnit('volume_m3', design.totalVolume_m3), lift: withUnit('lift_m', design.lift_m) }),
    });
  const noFeed = say('design.noFeed');
  const toCome = fishToCome(lesson, plan);
  if (toCome) lines.push({ mark: 'watch', words: say('design.fishToCome'), detail: say('design.fishToComeDetail') });
  if (feed_g_d === 0 && !toCome && !lines.some((line) => line.words === noFeed))
    lines.push({ mark: 'watch', words: noFeed, detail: say('design.noFeedDetail') });
  // where the lesson offers more than is needed, a part left on the shelf is no fault
  const left = offersChoice(lesson) ? 0 : shelfParts(lesson, plan).length;
  if (left > 0) lines.push({ mark: 'watch', words: say('design.unplaced', { n: left }), detail: say('design.unplacedDetail') });
  return lines;
}

export function BuildBar() {
  const store = usePageStore();
  const lesson = useBuild((build) => build.lesson);
  const plan = useBuild((build) => build.plan);
  const design = useBuild((build) => build.design);
  const busy = useBuild((build) => build.busy);
  const undoable = useBuild((build) => build.history.undoable.at(-1));
  const redoable = useBuild((build) => build.history.redoable.at(-1));
  const feed = feedNow(plan, 0);
  return (
    <section className="bottom build-bar" aria-label={say('build.check')}>
      <ul className="checks" tabIndex={0} aria-label={say('build.check')}>
        {design !== null
          && linesOf(lesson, plan, design, feed).map((line) => (
            <li key={line.words}>
              <MarkShape mark={line.mark} />
              <div>
                <b>{line.words}</b>
                {line.detail !== '' && <span className="note">{line.detail}</span>}
              </div>
            </li>
          ))}
      </ul>
      <div className="history">
        <button
          type="button"
          className="btn square"
          aria-label={say('build.undo')}
          title={undoable === undefined ? say('build.undo') : say('build.undoStep', { what: undoable.what })}
          aria-keyshortcuts="Control+Z Meta+Z"
          aria-disabled={undoable === undefined || undefined}
          onClick={() => store.getState().undo()}
        >
          <SignShape sign="undo" />
        </button>
        <button
          type="button"
          className="btn square"
          aria-label={say('build.redo')}
          title={redoable === undefined ? say('build.redo') : say('build.redoStep', { what: redoable.what })}
          aria-keyshortcuts="Control+Shift+Z Meta+Shift+Z"
          aria-disabled={redoable === undefined || undefined}
          onClick={() => store.getState().redo()}
        >
          <SignShape sign="redo" />
        </button>
      </div>
      <button type="button" className="btn go" aria-disabled={busy || undefined} onClick={() => void store.getState().run()}>
        {say(busy ? 'build.running' : 'build.run')}
      </button>
    </section>
  );
}
