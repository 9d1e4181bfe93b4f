// What a person may set at a stage: the same controls while building (from the start) and while the season runs (from the next hour).
import { airInForce, baseInForce, choreInForce, lampInForce, pumpInForce } from '../../state/run/inForce';
import { catalogueOf, feedNow, fishNow, kindOf, percentOfMass, seasonOf } from '../../state/common/selectors';
import type { Chore } from '../../state/common/state';
import type { BaseKind } from '../../state/common/contract';
import { say } from '../../../words/say';
import type { WordKey } from '../../../words/say';
import { figure } from '../../../words/units';
import { useActingHour, useMoment } from './moment';
import { HeaterControl, LightControl } from './LoopControls';
import { NumberControl } from './NumberControl';
import { useOpened, usePage } from './pageStore';
import { useGuard } from '../run/past';
import { SizeControls } from '../build/SizeControls';
import { StockControl } from './StockControl';
import { can, doses } from '../../state/common/kinds';

function FeedControl() {
  const plan = useOpened((game) => game.plan);
  const season = usePage(seasonOf);
  const setFeed = usePage((page) => page.setFeed);
  const now_h = useMoment();
  const guard = useGuard();
  const fish = fishNow({ plan, season, now_h });
  const feed = feedNow(plan, useActingHour());
  // a slider that reaches a tenth of the fish's own mass, in steps of 50 g
  const max = Math.max(100, Math.ceil(Math.max(feed, 0.1 * fish.number * fish.mass_g) / 50) * 50);
  return (
    <NumberControl
      label={say('control.feed')}
      amount="control.feedAmount"
      variable="feed_g_d"
      value={feed}
      min={0}
      max={max}
      step={1}
      note={(value) =>
        fish.number < 0.5 ? say('control.noFish') : say('control.feedShare', { percent: figure(percentOfMass(value, fish), 1) })
      }
      onCommit={(value) => guard(() => setFeed(value))}
    />
  );
}

function AirControl({ stageId, max }: { stageId: string; max: number }) {
  const plan = useOpened((game) => game.plan);
  const setAir = usePage((page) => page.setAir);
  const guard = useGuard();
  const air = airInForce(plan, stageId, useActingHour());
  return (
    <NumberControl
      label={say('control.air')}
      amount="control.airAmount"
      variable="air_L_min"
      value={air}
      min={0}
      max={Math.max(max, air, 1)}
      step={0.5}
      onCommit={(value) => guard(() => setAir(stageId, value))}
    />
  );
}

const EVERY_DAYS = [0, 1, 2, 3, 5, 7, 14];

function ChoreControl({ stageId, chore }: { stageId: string; chore: Chore }) {
  const plan = useOpened((game) => game.plan);
  const building = useOpened((game) => game.mode === 'build');
  const doChore = usePage((page) => page.doChore);
  const setRoutine = usePage((page) => page.setRoutine);
  const guard = useGuard();
  const every_d = choreInForce(plan, chore, stageId, useActingHour());
  const choices = EVERY_DAYS.includes(every_d) ? EVERY_DAYS : [...EVERY_DAYS, every_d].sort((a, b) => a - b);
  return (
    <div className="chore">
      {!building && (
        <button type="button" className="btn" onClick={() => guard(() => doChore(stageId, chore))}>
          {say(`control.${chore}`)}
        </button>
      )}
      <label>
        <span className="label">{say(`control.${chore}Every`)}</span>
        <select
          value={every_d}
          onChange={(event) => {
            const days = Number(event.target.value);
            guard(() => setRoutine(stageId, chore, days));
          }}
        >
          {choices.map((n) => (
            <option key={n} value={n}>
              {n === 0 ? say('control.never') : say('control.everyDays', { n })}
            </option>
          ))}
        </select>
      </label>
    </div>
  );
}

function PumpControl() {
  const plan = useOpened((game) => game.plan);
  const setPump = usePage((page) => page.setPump);
  const guard = useGuard();
  const on = pumpInForce(plan, useActingHour());
  return (
    <div className="chore">
      <button type="button" className="btn" onClick={() => guard(() => setPump(!on))}>
        {say(on ? 'control.pumpStop' : 'control.pumpStart')}
      </button>
      <p className="note">{say(on ? 'control.pumpRuns' : 'control.pumpStands')}</p>
    </div>
  );
}

const BASES: readonly { base: BaseKind; words: WordKey }[] = [
  { base: 'Ca(OH)2', words: 'control.lime' },
  { base: 'KOH', words: 'control.causticPotash' },
  { base: 'CaCO3', words: 'control.limestone' },
  { base: 'K2CO3', words: 'control.potash' },
  { base: 'NaHCO3', words: 'control.bakingSoda' },
  { base: 'KHCO3', words: 'control.bicarbonate' },
];

function BaseControl() {
  const plan = useOpened((game) => game.plan);
  const setBase = usePage((page) => page.setBase);
  const guard = useGuard();
  const now = baseInForce(plan, useActingHour());
  if (now === null) return null;
  const set = (change: Partial<typeof now>): void => {
    const { base, g_d, targetPH } = { ...now, ...change };
    guard(() => setBase(base, g_d, targetPH));
  };
  return (
    <>
      <label className="field">
        <span className="label">{say('control.base')}</span>
        <select
          value={now.base}
          onChange={(event) => {
            const chosen = BASES.find((one) => one.base === event.target.value);
            if (chosen !== undefined) set({ base: chosen.base });
          }}
        >
          {BASES.map(({ base, words }) => (
            <option key={base} value={base}>
              {say(words)}
            </option>
          ))}
        </select>
      </label>
      <NumberControl
        label={say('control.baseLimit')}
        amount="control.baseAmount"
        variable="dose_g_d"
        value={now.g_d}
        min={0}
        max={Math.max(60, now.g_d)}
        step={0.5}
        onCommit={(g_d) => set({ g_d })}
      />
      <NumberControl
        label={say('control.basePH')}
        amount="control.basePHAmount"
        variable="pH"
        value={now.targetPH}
        min={6}
        max={8}
        step={0.1}
        onCommit={(targetPH) => set({ targetPH })}
      />
    </>
  );
}

function LampControl({ stageId, usual_W }: { stageId: string; usual_W: number }) {
  const plan = useOpened((game) => game.plan);
  const setLamp = usePage((page) => page.setLamp);
  const guard = useGuard();
  const lamp = lampInForce(plan, stageId, useActingHour(), usual_W);
  return (
    <NumberControl
      label={say('control.lamp')}
      amount="control.lampAmount"
      variable="power_W"
      value={lamp}
      min={0}
      max={Math.max(3 * usual_W, lamp)}
      step={1}
      onCommit={(value) => guard(() => setLamp(stageId, value))}
    />
  );
}

/** The controls that the catalogue grants this stage. The sump also holds those of the dosing tank that drips into it. */
export function StageControls({ stageId }: { stageId: string }) {
  const plan = useOpened((game) => game.plan);
  const catalogue = usePage(catalogueOf);
  const building = useOpened((game) => game.mode === 'build');
  const kind = kindOf(plan, stageId);
  const entry = catalogue.find((one) => one.kind === kind);
  if (entry === undefined) return null;
  const dripped = plan.side.some((side) => doses(side) && (side.id === stageId || side.into === stageId));
  const has = (control: (typeof entry.controls)[number]): boolean => entry.controls.includes(control);
  return (
    <div className="controls" key={stageId}>
      {building && (
        <SizeControls
          stageId={stageId}
          elsewhere={[...(has('air') ? ['air_L_min' as const] : []), ...(has('lamp') ? ['lamp_W' as const] : [])]}
        />
      )}
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
