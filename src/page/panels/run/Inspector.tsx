// The selected stage while a season runs: its water, what fills or lives in it, its controls and its cautions.
import { readingAt } from '../../state/run/readings';
import { kindOf, selectable } from '../../state/common/selectors';
import type { SeasonView } from '../../state/common/state';
import { say } from '../../../words/say';
import { stageName } from '../../../words/stageNames';
import { figure, volumeOf } from '../../../words/units';
import { StageCautions } from '../common/Cautions';
import { Facts } from './Facts';
import { SignShape } from '../common/icons';
import { LookButton } from './Look';
import { useMoment } from '../common/moment';
import { useLived, usePage, usePageStore } from '../common/pageStore';
import { PumpFacts } from './PumpFacts';
import { StageControls } from '../common/StageControls';
import { WaterTable } from './WaterTable';
import { WhyHere } from './Why';
import { can } from '../../state/common/kinds';

function StageChooser({ shown }: { shown: string | null }) {
  const store = usePageStore();
  const plan = useLived((lived) => lived.plan);
  const stages = selectable(plan);
  const at = stages.findIndex((stage) => stage.id === shown);
  const go = (by: number): void => store.getState().select(stages[(Math.max(0, at) + by + stages.length) % stages.length].id);
  return (
    <div className="stage-chooser">
      <button type="button" className="btn square" aria-label={say('inspect.previous')} onClick={() => go(-1)}>
        <SignShape sign="previous" />
      </button>
      <select
        aria-label={say('inspect.choose')}
        value={shown ?? ''}
        onChange={(event) => store.getState().select(event.target.value === '' ? null : event.target.value)}
      >
        {shown === null && <option value="">–</option>}
        {stages.map((stage) => (
          <option key={stage.id} value={stage.id}>
            {stageName(stages, stage.id)}
          </option>
        ))}
      </select>
      <button type="button" className="btn square" aria-label={say('inspect.next')} onClick={() => go(1)}>
        <SignShape sign="next" />
      </button>
    </div>
  );
}

/** How much water a stage holds, and how long it stays at the flow of the moment. */
function Size({ view, stageId, volume_m3 }: { view: SeasonView; stageId: string; volume_m3: number | undefined }) {
  const now_h = useMoment();
  if (volume_m3 === undefined) return null;
  const flow_m3_d = readingAt(view, stageId, 'flow_m3_d', now_h, 'out');
  const volume = volumeOf(volume_m3);
  return (
    <p className="note">
      {flow_m3_d > 0
        ? say('inspect.size', { volume, minutes: figure((volume_m3 / flow_m3_d) * 1440, 0) })
        : say('inspect.still', { volume })}
    </p>
  );
}

export function Inspector() {
  const plan = useLived((lived) => lived.plan);
  const season = useLived((lived) => lived.season);
  const design = useLived((lived) => lived.design);
  const selected = usePage((page) => page.view.selected);
  const kind = selected === null ? null : kindOf(plan, selected);
  const level = design?.stages.find((stage) => stage.id === selected);
  const holdsWater = season.stages.some((stage) => stage.id === selected && stage.cells > 0);
  return (
    <section className="inspector" aria-label={say('inspect.region')}>
      <StageChooser shown={kind === null ? null : selected} />
      {selected === null || kind === null ? (
        <p className="note">{say('inspect.none')}</p>
      ) : (
        <>
          <div className="where">
            <LookButton />
            {holdsWater && <Size view={season} stageId={selected} volume_m3={level?.volume_m3} />}
          </div>
          {holdsWater && (
            <>
              <WhyHere stageId={selected} />
              <WaterTable stageId={selected} />
              <Facts view={season} stageId={selected} kind={kind} plan={plan} />
            </>
          )}
          {can(kind, 'pumps') && design !== null && <PumpFacts view={season} plan={plan} design={design} />}
          {!holdsWater && !can(kind, 'pumps') && <p className="note">{say('inspect.noWater')}</p>}
          <StageControls stageId={selected} />
          <StageCautions kind={kind} />
        </>
      )}
    </section>
  );
}
