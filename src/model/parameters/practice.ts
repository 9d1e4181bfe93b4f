// What people do and what surrounds the loop: meals, dosing, draining, rinsing, power, evaporation, starts.
import type { ParameterGroup } from './parameter';

export const practice = {
  mealStretch: { value: 1.3, unit: 'times', low: 1.1, high: 1.6, source: 'a meal can exceed its even share of the day’s appetite', flag: 'assumption' },
  uneatenFast: { value: 0.85, unit: 'share of COD', low: 0.7, high: 0.95, source: 'feed softens and rots within days', flag: 'assumption' },
  uneatenInert: { value: 0.1, unit: 'share of COD', low: 0.04, high: 0.15, source: 'fibre and ash of feed', flag: 'assumption' },
  dosingLag: { value: 0.75, unit: 'd', low: 0.4, high: 1.5, source: 'damping, so that a dosing rule does not hunt', flag: 'assumption' },
  dosingBand: { value: 0.4, unit: 'pH', low: 0.2, high: 0.8, source: 'full dose below the target by half of this, none above by half', flag: 'assumption' },
  airPower: { value: 1.2, unit: 'W per L/min', low: 0.7, high: 2, source: 'small air pumps, from memory', flag: 'memory' },
  lampLoss: { value: 1.1, unit: 'times lamp power', low: 1, high: 1.3, source: 'ballast of a lamp, from memory', flag: 'memory' },
  drainedShare: { value: 0.97, unit: 'share', low: 0.9, high: 1, source: 'sludge that leaves with an opened cone', flag: 'assumption' },
  rinsedShare: { value: 0.92, unit: 'share', low: 0.8, high: 0.98, source: 'caught solids that a rinse takes out', flag: 'assumption' },
  rinsedNitrifiers: { value: 0.15, unit: 'share', low: 0.05, high: 0.3, source: 'nitrifying film lost in a rinse', flag: 'assumption' },
  rinsedHeterotrophs: { value: 0.3, unit: 'share', low: 0.15, high: 0.5, source: 'heterotrophic film lost in a rinse', flag: 'assumption' },
  rinseWater: { value: 0.5, unit: 'share of volume', low: 0.3, high: 1, source: 'water used to rinse', flag: 'assumption' },
  rootsTaken: { value: 0.6, unit: 'share', low: 0.4, high: 0.9, source: 'root solids that leave with cut plants', flag: 'assumption' },
  seededShare: { value: 0.02, unit: 'share of capacity', low: 0.005, high: 0.05, source: 'film brought in from a running loop', flag: 'assumption' },
  matureShare: { value: 0.75, unit: 'share of capacity', low: 0.5, high: 0.95, source: 'film of a loop that has run for months', flag: 'assumption' },
  ammoniaTransfer: { value: 0.02, unit: 'share of oxygen', low: 0.005, high: 0.05, source: 'ammonia is held by the gas film', flag: 'assumption' },
} as const satisfies ParameterGroup;
