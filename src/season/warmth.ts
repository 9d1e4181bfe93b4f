// The loop's one temperature over a stretch of the day: pinned, or following air, light, heater and pump; and the water that leaves as
// vapour.
import { warmthAfter } from '../model/heat/loopHeat';
import { evaporation_kg_m2_d, shortwave_W_m2 } from '../model/heat/losses';
import { airNow, lightNow } from './climate';
import { lightOf } from './forcing';
import type { RunState } from './runState';
import type { Runtime } from './runtime';

/** Lives the warmth of some hours; sets the temperature that they are reckoned at. */
export function liveWarmth(runtime: Runtime, state: RunState, day: number, from: number, to: number): void {
  const { plan, weather, values } = runtime;
  const middle = (from + to) / 2;
  const air = airNow(plan.climate, weather, day, middle);
  const open = runtime.openWater_m2;
  const hours = to - from;
  const pinned = plan.rig?.hold?.T_C ?? plan.climate.water_C;
  if (pinned !== undefined) {
    state.T_C = pinned;
    state.evaporated += Math.max(0, evaporation_kg_m2_d(pinned, air, values.heat)) * open * (hours / 24);
    return;
  }
  const { T_C, heater_Wh, evaporated_kg } = warmthAfter(
    state.T_C,
    air,
    hours,
    {
      volume_m3: runtime.assembly.cells.reduce((sum, cell) => sum + cell.volume, 0),
      open_m2: open,
      wall_m2: runtime.wall_m2,
      shortwave_W_m2: shortwave_W_m2(lightOf(runtime, state, day), values.heat) * lightNow(plan.climate, middle),
      heaters: state.powerOn
        ? Object.values(state.heaters)
            .filter(({ power_W }) => power_W > 0)
            .map(({ power_W, target_C }) => ({ target_C, max_W: power_W }))
        : [],
      pump_W: state.run.power_W,
    },
    values.heat,
  );
  state.T_C = Math.min(42, Math.max(0.5, T_C));
  state.energy_kWh += heater_Wh / 1000;
  state.evaporated += Math.max(0, evaporated_kg);
}
