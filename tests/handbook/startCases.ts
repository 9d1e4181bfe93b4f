// A loop that ripens: when its ammonia and nitrite peak, and when both stay low.
import type { Plan } from '../../src/season/plan';
import { runSeason } from '../../src/season/season';
import { course, dayOfPeak } from '../season/courses';
import { keptPlan } from '../season/plans';

/** Forty small fish in a cubic metre with a settler and a media tank, fed 40 g a day, base given so that nothing stalls. */
export function ripening(biofilm: Plan['start']['biofilm'], water_C: number): { ammonia: number; nitrite: number; ripe: number } {
  const kept = keptPlan('first-loop');
  const t = runSeason({
    ...kept,
    days: 80,
    climate: { ...kept.climate, water_C, weather: 0 },
    start: { water: 'source', biofilm },
    loop: [
      { id: 'fish', kind: 'fishTank', volume_m3: 1, air_L_min: 40 },
      { id: 'settler', kind: 'radialFlowSettler', volume_m3: 0.19 },
      { id: 'media', kind: 'degassingTank', volume_m3: 0.3, media_m3: 0.15, air_L_min: 40 },
      { id: 'sump', kind: 'sump', volume_m3: 0.4 },
      { id: 'pump', kind: 'returnPump', flow_m3_h: 1.5 },
    ],
    fish: [{ tank: 'fish', species: 'tilapia', number: 40, mass_g: 50, day: 0 }],
    actions: [
      { day: 0, hour: 0, do: 'feed', tank: 'fish', g_d: 40, meals_h: [8, 12, 16] },
      { every_d: 1, from: 1, hour: 9, do: 'drain', stage: 'settler' },
      { day: 1, hour: 0, do: 'base', g_d: 25, targetPH: 7.4, base: 'KHCO3' },
    ],
  });
  const ammonia = course(t, 'fish', 'TAN_mgN_L');
  const nitrite = course(t, 'fish', 'NO2_mgN_L');
  // ripe: from here on both stay under 1 mg/L, FAO 589's limit
  const over = ammonia.reduce((last, value, hour) => (value > 1 || nitrite[hour] > 1 ? hour : last), -1);
  return { ammonia: dayOfPeak(ammonia), nitrite: dayOfPeak(nitrite), ripe: (over + 1) / 24 };
}
