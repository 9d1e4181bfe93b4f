// The loop as a list: the same order as in the picture, with everything that can be done to it by keyboard and screen reader.
import type { DesignStage } from '../store/contract';
import { canShift, isFree } from '../store/planEdits';
import { say } from '../words/say';
import { stageName } from '../words/stageNames';
import { figure } from '../words/units';
import { StageCautions } from './Cautions';
import { SignShape } from './icons';
import { usePage, usePageStore } from './pageStore';
import { StageControls } from './StageControls';

function levelLine(level: DesignStage | undefined): string {
  if (level === undefined) return '';
  if (level.fall_m < 0) return say('build.lift', { lift: figure(-100 * level.fall_m, 0) });
  if (level.fall_m < 0.005) return say('build.levelOnly', { level: figure(100 * level.level_m, 0) });
  return say('build.level', { level: figure(100 * level.level_m, 0), fall: figure(100 * level.fall_m, 0) });
}

function LoopItem({ id, kind, free }: { id: string; kind: string; free: boolean }) {
  const store = usePageStore();
  const lesson = usePage((page) => page.lesson);
  const plan = usePage((page) => page.plan);
  const level = usePage((page) => page.design?.stages.find((stage) => stage.id === id));
  const open = usePage((page) => page.selected === id);
  if (plan === null || lesson === null) return null;
  const { shift, remove, select } = store.getState();
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
            <button type="button" className="btn square" aria-disabled={!canShift(lesson, plan, id, -1) || undefined} aria-label={say('build.earlier', { stage: name })} title={say('build.earlier', { stage: name })} onClick={() => shift(id, -1)}><SignShape sign="earlier" /></button>
            <button type="button" className="btn square" aria-disabled={!canShift(lesson, plan, id, 1) || undefined} aria-label={say('build.later', { stage: name })} title={say('build.later', { stage: name })} onClick={() => shift(id, 1)}><SignShape sign="later" /></button>
            <button type="button" className="btn square" aria-label={say('build.takeOut', { stage: name })} title={say('build.takeOut', { stage: name })} onClick={() => {
              remove(id);
              // the row is gone: keyboards go on from the head of the list
              document.getElementById('loop-title')?.focus();
            }}><SignShape sign="out" /></button>
          </>
        )}
        <button type="button" className="btn set" aria-expanded={open} aria-label={say('build.set', { stage: name })} onClick={() => select(open ? null : id)}>{say('build.setShort')}</button>
      </div>
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
  const lesson = usePage((page) => page.lesson);
  const plan = usePage((page) => page.plan);
  if (lesson === null || plan === null) return null;
  return (
    <section className="loop-list" aria-labelledby="loop-title">
      <h2 id="loop-title" tabIndex={-1}>{say('build.loop')}</h2>
      <ol>{plan.loop.map((stage) => <LoopItem key={stage.id} id={stage.id} kind={stage.kind} free={isFree(lesson, stage.id)} />)}</ol>
      <p className="note">{say('build.loopHint')}</p>
      {plan.side.length > 0 && (
        <>
          <h3>{say('build.side')}</h3>
          <ul className="plain">{plan.side.map((side) => <LoopItem key={side.id} id={side.id} kind={side.kind} free={false} />)}</ul>
        </>
      )}
    </section>
  );
}
