// One temperature for all the loop's water: how it follows the air, light, heater and pump over a stretch of time.
import { density_kg_m3 } from '../hydraulics/pipe';
import type { HeatNumbers } from '../parameters/values';
import { evaporation_kg_m2_d, evaporativeLoss_W_m2 } from './losses';
import type { Heater } from './thermostat';
import { poolAfter } from './thermostat';

/** What of the loop counts for its warmth, and what acts on it during the stretch. */
export interface LoopHeat {
  /** all water, above 0 */
  volume_m3: number;
  /** water open to the air; rafts and lids cover the rest */
  open_m2: number;
  /** walls and floors that water wets and air touches; covered surface counts here too */
  wall_m2: number;
  /** short-wave power over the bed, see shortwave_W_m2 */
  shortwave_W_m2?: number;
  /** all heaters of the loop, wherever they hang: its water has one warmth */
  heaters?: readonly Heater[];
  /** electrical power of the pump */
  pump_W?: number;
}

export interface Warmth {
  T_C: number;
  /** energy the heater used, Wh */
  heater_Wh: number;
  /** water evaporated, kg; below 0 where dew fell */
  evaporated_kg: number;
}

/** Longest stretch over which the vapour pressure is taken as straight in temperature, h. */
const STRETCH_H = 3;
/** A loop shut off from the air would divide by nothing. */
const LEAST_LOSS_W_K = 1e-6;
const SECONDS_PER_HOUR = 3600;
const HOURS_PER_DAY = 24;

/** Heat the water holds, J/K. */
export const capacity_J_K = (T_C: number, volume_m3: number, k: HeatNumbers): number => density_kg_m3(T_C) * k.waterHeat * volume_m3;

/** Loss over surface and walls for each degree above the air, W/K, evaporation apart. */
export const dryLoss_W_K = (loop: LoopHeat, k: HeatNumbers): number =>
  (k.surfaceConvection + k.surfaceRadiation) * loop.open_m2 + k.wallLoss * loop.wall_m2;

/** Change of evaporation's loss for each degree, W/K, about a temperature. */
function wetLoss_W_K(T_C: number, air_C: number, loop: LoopHeat, k: HeatNumbers): number {
  return loop.open_m2 * (evaporativeLoss_W_m2(T_C + 0.5, air_C, k) - evaporativeLoss_W_m2(T_C - 0.5, air_C, k));
}

/** Time in which the loop makes good 63 % of a difference from the air, d. Heater apart. */
export const lag_d = (T_C: number, loop: LoopHeat, k: HeatNumbers): number =>
  capacity_J_K(T_C, loop.volume_m3, k) / (dryLoss_W_K(loop, k) + wetLoss_W_K(T_C, T_C, loop, k)) / (SECONDS_PER_HOUR * HOURS_PER_DAY);

/**
 * Water temperature after some hours beside air of one temperature, with what heating and evaporation took.
 * Exact in the heater and the dry losses; the vapour pressure is made straight anew every three hours. Never unstable.
 * @param T_C, air_C 0 to 45; freezing is not reckoned with
 * @param hours 0 or more
 */
export function warmthAfter(T_C: number, air_C: number, hours: number, loop: LoopHeat, k: HeatNumbers): Warmth {
  const stretches = Math.ceil(hours / STRETCH_H);
  const out: Warmth = { T_C, heater_Wh: 0, evaporated_kg: 0 };
  const steady_W = k.lightTaken * (loop.shortwave_W_m2 ?? 0) * loop.open_m2 + k.pumpWarmth * (loop.pump_W ?? 0);
  const dry = dryLoss_W_K(loop, k);
  for (let i = 0; i < stretches; i++) {
    const seconds = (hours / stretches) * SECONDS_PER_HOUR;
    const wet = wetLoss_W_K(out.T_C, air_C, loop, k);
    const wetNow = evaporativeLoss_W_m2(out.T_C, air_C, k) * loop.open_m2;
    const pool = {
      capacity_J_K: capacity_J_K(out.T_C, loop.volume_m3, k),
      gain_W: steady_W + dry * air_C - wetNow + wet * out.T_C,
      loss_W_K: Math.max(dry + wet, LEAST_LOSS_W_K),
    };
    const { T_C: after, mean_C } = poolAfter(out.T_C, seconds, pool, loop.heaters ?? [], k.heaterBand);
    // What the heaters gave is what the balance lacks without it.
    const heater_J = pool.capacity_J_K * (after - out.T_C) - (pool.gain_W - pool.loss_W_K * mean_C) * seconds;
    out.heater_Wh += loop.heaters && loop.heaters.length > 0 ? Math.max(0, heater_J) / SECONDS_PER_HOUR : 0;
    out.evaporated_kg += (evaporation_kg_m2_d(mean_C, air_C, k) * loop.open_m2 * hours) / stretches / HOURS_PER_DAY;
    out.T_C = after;
  }
  return out;
}

/** Water temperature after some hours, °C; see warmthAfter. */
export const temperatureAfter = (T_C: number, air_C: number, hours: number, loop: LoopHeat, k: HeatNumbers): number =>
  warmthAfter(T_C, air_C, hours, loop, k).T_C;
