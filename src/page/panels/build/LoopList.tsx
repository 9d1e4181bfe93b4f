// The loop as a list: the same order as in the picture, with everything that can be done to it by keyboard and screen reader.
import type { DesignStage } from '../../state/common/contract';
import { canShift, isFree } from '../../state/build/planEdits';
import { say } from '../../../words/say';
import { stageName } from '../../../words/stageNames';
import { withUnit } from '../../../words/units';
import { StageCautions } from '../common/Cautions';
import { problemMark, problemWords } from './designWords';
import { SignShape } from '../common/icons';
import { MarkShape } from '../common/marks';
import { useBuild, usePage } from '../common/pageStore';
import { StageControls } from '../common/StageControls';

const height = (metres: number): string => withUnit('height_cm', 100 * metres);

function levelLine(level: DesignStage | undefined): string {
  if (level === undefined) return '';
  if (level.fall_m < 0) return say('build.lift', { lift: height(-level.fall_m) });
  if (level.fall_m < 0.005) return say('build.levelOnly', { level: height(level.level_m) });
  return say('build.level', { level: height(level.level_m), fall: height(level.fall_m) });
}

function LoopItem({ id, kind, free }: { id: string; kind: string; free: boolean }) {
  const shift = usePage((page) => page.shift);
  const remove = usePage((page) => page.remove);
  const select = usePage((page) => page.select);
  const lesson = useBuild((build) => build.lesson);
  const plan = useBuild((build) => build.plan);
  const design = useBuild((build) => build.design);
  const open = usePage((page) => page.view.selected === id);
  const level = design?.stages.find((stage) => stage.id === id);
  const problems = (design?.problems ?? []).filter((problem) => problem.stage === id);
  const name = stageName([...plan.loop, ...plan.side], id);
  return (
    <li className="loop-item" data-stage={id} data-open={open || undefined}>
      <div className="loop-head">
        <div className="loop-name">
          <b>{name}</b>
          <span className="note">{levelLine(level)}</span>
        </div>
        {free && (
          <>
            <button
              type="button"
              className="btn square"
              aria-disabled={!canShift(lesson, plan, id, -1) || undefined}
              aria-label={say('build.earlier', { stage: name })}
              title={say('build.earlier', { stage: name })}
              onClick={() => shift(id, -1)}
            >
              <SignShape sign="earlier" />
            </button>
            <button
              type="button"
              className="btn square"
              aria-disabled={!canShift(lesson, plan, id, 1) || undefined}
              aria-label={say('build.later', { stage: name })}
              title={say('build.later', { stage: name })}
              onClick={() => shift(id, 1)}
            >
              <SignShape sign="later" />
            </button>
            <button
              type="button"
              className="btn square"
              aria-label={say('build.takeOut', { stage: name })}
              title={say('build.takeOut', { stage: name })}
              onClick={() => {
                remove(id);
                // the row is gone: keyboards go on from the head of the list
                document.getElementById('loop-title')?.focus();
              }}
            >
              <SignShape sign="out" />
            </button>
          </>
        )}
        <button
          type="button"
          className="btn set"
          aria-expanded={open}
          aria-label={say('build.set', { stage: name })}
          onClick={() => select(open ? null : id)}
        >
          {say('build.setShort')}
        </button>
      </div>
      {problems.length > 0 && (
        <ul className="loop-problems">
          {problems.map((problem) => (
            <li key={problem.key}>
              <MarkShape mark={problemMark(problem)} />
              <span>{problemWords(plan, problem)}</span>
            </li>
          ))}
        </ul>
      )}
      {open && (
        <div className="loop-body">
          <StageControls stageId={id} />
          <StageCautions kind={kind} />
        </div>
      )}
    </li>
  );
}

export function LoopList() {
  const lesson = useBuild((build) => build.lesson);
  const plan = useBuild((build) => build.plan);
  return (
    <section className="loop-list" aria-labelledby="loop-title">
      <h2 id="loop-title" tabIndex={-1}>
        {say('build.loop')}
      </h2>
      <ol>
        {plan.loop.map((stage) => (
          <LoopItem key={stage.id} id={stage.id} kind={stage.kind} free={isFree(lesson, stage.id)} />
        ))}
      </ol>
      <p className="note">{say('build.loopHint')}</p>
      {plan.side.length > 0 && (
        <>
          <h3>{say('build.side')}</h3>
          <ul className="plain">
            {plan.side.map((side) => (
              <LoopItem key={side.id} id={side.id} kind={side.kind} free={false} />
            ))}
          </ul>
        </>
      )}
    </section>
  );
}
