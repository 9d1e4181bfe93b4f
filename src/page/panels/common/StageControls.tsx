// What a person may set at a stage: the same controls while building (from the start) and while the season runs (from the next hour).
import { actingHour, airInForce, baseInForce, choreInForce, lampInForce, pumpInForce } from '../../state/run/inForce';
import { feedNow, fishNow, kindOf, percentOfMass } from '../../state/common/selectors';
import type { Chore } from '../../state/common/state';
import type { BaseKind } from '../../state/common/contract';
import { say } from '../../../words/say';
import type { WordKey } from '../../../words/say';
import { figure } from '../../../words/units';
import { useMoment } from './moment';
import { HeaterControl, LightControl } from './LoopControls';
import { NumberControl } from './NumberControl';
import { usePage, usePageStore } from './pageStore';
import { useGuard } from '../run/past';
import { SizeControls } from '../build/SizeControls';
import { StockControl } from './StockControl';
import { can, doses } from '../../state/common/kinds';

function FeedControl() {
  const state = usePageStore().getState();
  usePage((page) => page.plan);
  useMoment();
  const guard = useGuard();
  const fish = fishNow(state);
  const feed = feedNow(state);
  // a slider that reaches a tenth of the fish's own mass, in steps of 50 g
  const max = Math.max(100, Math.ceil(Math.max(feed, 0.1 * fish.number * fish.mass_g) / 50) * 50);
  return (
    <NumberControl label={say('control.feed')} amount="control.feedAmount" variable="feed_g_d" value={feed} min={0} max={max} step={1}
      note={(value) => (fish.number < 0.5 ? say('control.noFish') : say('control.feedShare', { percent: figure(percentOfMass(value, fish), 1) }))} onCommit={(value) => guard(() => state.setFeed(value))} />
  );
}

function AirControl({ stageId, max }: { stageId: string; max: number }) {
  const state = usePageStore().getState();
  const plan = usePage((page) => page.plan);
  useMoment();
  const guard = useGuard();
  const air = plan === null ? 0 : airInForce(plan, stageId, actingHour(state));
  return <NumberControl label={say('control.air')} amount="control.airAmount" variable="air_L_min" value={air} min={0} max={Math.max(max, air, 1)} step={0.5} onCommit={(value) => guard(() => state.setAir(stageId, value))} />;
}

const EVERY_DAYS = [0, 1, 2, 3, 5, 7, 14];

function ChoreControl({ stageId, chore }: { stageId: string; chore: Chore }) {
  const state = usePageStore().getState();
  const plan = usePage((page) => page.plan);
  const building = usePage((page) => page.mode === 'build');
  useMoment();
  const guard = useGuard();
  const every_d = plan === null ? 0 : choreInForce(plan, chore, stageId, actingHour(state));
  const choices = EVERY_DAYS.includes(every_d) ? EVERY_DAYS : [...EVERY_DAYS, every_d].sort((a, b) => a - b);
  return (
    <div className="chore">
      {!building && <button type="button" className="btn" onClick={() => guard(() => state.doChore(stageId, chore))}>{say(`control.${chore}`)}</button>}
      <label>
        <span className="label">{say(`control.${chore}Every`)}</span>
        <select value={every_d} onChange={(event) => {
          const days = Number(event.target.value);
          guard(() => state.setRoutine(stageId, chore, days));
        }}>
          {choices.map((n) => <option key={n} value={n}>{n === 0 ? say('control.never') : n === 1 ? say('control.everyDay') : say('control.everyDays', { n })}</option>)}
        </select>
      </label>
    </div>
  );
}

function PumpControl() {
  const state = usePageStore().getState();
  const plan = usePage((page) => page.plan);
  useMoment();
  const guard = useGuard();
  const on = plan === null || pumpInForce(plan, actingHour(state));
  return (
    <div className="chore">
      <button type="button" className="btn" onClick={() => guard(() => state.setPump(!on))}>{say(on ? 'control.pumpStop' : 'control.pumpStart')}</button>
      <p className="note">{say(on ? 'control.pumpRuns' : 'control.pumpStands')}</p>
    </div>
  );
}

const BASES: readonly { base: BaseKind; words: WordKey }[] = [
  { base: 'Ca(OH)2', words: 'control.lime' }, { base: 'KOH', words: 'control.causticPotash' }, { base: 'CaCO3', words: 'control.limestone' },
  { base: 'K2CO3', words: 'control.potash' }, { base: 'NaHCO3', words: 'control.bakingSoda' }, { base: 'KHCO3', words: 'control.bicarbonate' },
];

function BaseControl() {
  const state = usePageStore().getState();
  const plan = usePage((page) => page.plan);
  useMoment();
  const guard = useGuard();
  const now = plan === null ? null : baseInForce(plan, actingHour(state));
  if (now === null) return null;
  const set = (change: Partial<typeof now>): void => {
    const { base, g_d, targetPH } = { ...now, ...change };
    guard(() => state.setBase(base, g_d, targetPH));
  };
  return (
    <>
      <label className="field">
        <span className="label">{say('control.base')}</span>
        <select value={now.base} onChange={(event) => {
          const chosen = BASES.find((one) => one.base === event.target.value);
          if (chosen !== undefined) set({ base: chosen.base });
        }}>
          {BASES.map(({ base, words }) => <option key={base} value={base}>{say(words)}</option>)}
        </select>
      </label>
      <NumberControl label={say('control.baseLimit')} amount="control.baseAmount" variable="dose_g_d" value={now.g_d} min={0} max={Math.max(60, now.g_d)} step={0.5} onCommit={(g_d) => set({ g_d })} />
      <NumberControl label={say('control.basePH')} amount="control.basePHAmount" variable="pH" value={now.targetPH} min={6} max={8} step={0.1} onCommit={(targetPH) => set({ targetPH })} />
    </>
  );
}

function LampControl({ stageId, usual_W }: { stageId: string; usual_W: number }) {
  const state = usePageStore().getState();
  const plan = usePage((page) => page.plan);
  useMoment();
  const guard = useGuard();
  const lamp = plan === null ? usual_W : lampInForce(plan, stageId, actingHour(state), usual_W);
  return <NumberControl label={say('control.lamp')} amount="control.lampAmount" variable="power_W" value={lamp} min={0} max={Math.max(3 * usual_W, lamp)} step={1} onCommit={(value) => guard(() => state.setLamp(stageId, value))} />;
}

/** The controls that the catalogue grants this stage. The sump also holds those of the dosing tank that drips into it. */
export function StageControls({ stageId }: { stageId: string }) {
  const plan = usePage((page) => page.plan);
  const catalogue = usePage((page) => page.catalogue);
  const building = usePage((page) => page.mode === 'build');
  const kind = plan === null ? null : kindOf(plan, stageId);
  const entry = catalogue.find((one) => one.kind === kind);
  if (plan === null || entry === undefined) return null;
  const dripped = plan.side.some((side) => doses(side) && (side.id === stageId || side.into === stageId));
  const has = (control: (typeof entry.controls)[number]): boolean => entry.controls.includes(control);
  return (
    <div className="controls" key={stageId}>
      {building && <SizeControls stageId={stageId} elsewhere={[...(has('air') ? ['air_L_min' as const] : []), ...(has('lamp') ? ['lamp_W' as const] : [])]} />}
      {kind !== null && can(kind, 'keepsFish') && <StockControl tank={stageId} />}
      {has('feed') && <FeedControl />}
      {has('air') && <AirControl stageId={stageId} max={entry.airMax_L_min} />}
      {has('drain') && <ChoreControl stageId={stageId} chore="drain" />}
      {has('rinse') && <ChoreControl stageId={stageId} chore="rinse" />}
      {has('backwash') && <ChoreControl stageId={stageId} chore="backwash" />}
      {has('lamp') && <LampControl stageId={stageId} usual_W={entry.sizes.lamp_W?.usual ?? 0} />}
      {has('pump') && !building && <PumpControl />}
      {(has('base') || dripped) && <BaseControl />}
      {kind !== null && can(kind, 'lowest') && plan.climate.water_C === undefined && <HeaterControl />}
      {entry.group === 'growPlants' && <LightControl />}
    </div>
  );
}
