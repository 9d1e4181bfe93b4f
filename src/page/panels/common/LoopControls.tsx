// What concerns the whole loop rather than one stage: its heater, kept at the sump, and the light on all beds.
import { heaterInForce, lightInForce } from '../../state/run/inForce';
import { say } from '../../../words/say';
import { withUnit } from '../../../words/units';
import { useActingHour } from './moment';
import { NumberControl } from './NumberControl';
import { useOpened, usePage } from './pageStore';
import { useGuard } from '../run/past';

/** Where the heater's slider begins when none was set: what it keeps counts only once it has power. */
const NO_HEATER = { power_W: 0, target_C: 24 };

/** Power at most and target of the heater. Only for loops whose water is not held at one temperature by the lesson. */
export function HeaterControl() {
  const plan = useOpened((game) => game.plan);
  const setHeater = usePage((page) => page.setHeater);
  const hour = useActingHour();
  const guard = useGuard();
  const now = heaterInForce(plan, hour) ?? NO_HEATER;
  return (
    <>
      <NumberControl
        label={say('control.heater')}
        amount="control.heaterAmount"
        variable="power_W"
        value={now.power_W}
        min={0}
        max={Math.max(2000, now.power_W)}
        step={10}
        note={(value) => (value === 0 ? say('control.heaterOff') : '')}
        onCommit={(value) => guard(() => setHeater(value, now.target_C))}
      />
      <NumberControl
        label={say('control.heaterKeeps')}
        amount="control.heaterKeepsAmount"
        variable="T_C"
        value={now.target_C}
        min={5}
        max={35}
        step={0.5}
        onCommit={(value) => guard(() => setHeater(now.power_W, value))}
      />
    </>
  );
}

/** Daily light on the beds: the climate's until a person sets it. */
export function LightControl() {
  const plan = useOpened((game) => game.plan);
  const setLight = usePage((page) => page.setLight);
  const hour = useActingHour();
  const guard = useGuard();
  const set = lightInForce(plan, hour);
  const sky = plan.climate.light_mol_m2_d;
  return (
    <NumberControl
      label={say('control.light')}
      amount="control.lightAmount"
      variable="light_mol_m2_d"
      value={set ?? sky}
      min={0}
      max={Math.max(40, set ?? sky)}
      step={1}
      note={() => (set === null ? say('control.lightClimate', { value: withUnit('light_mol_m2_d', sky) }) : say('control.lightSet'))}
      onCommit={(value) => guard(() => setLight(value))}
    />
  );
}
