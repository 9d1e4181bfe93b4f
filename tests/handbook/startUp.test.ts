// How a loop with fish in it ripens. FAO 589 (Somerville et al. 2014), from memory: 25–40 days at 24–26 °C from a bare start; KSU aquaponics
// manual s. 6.6: 6–8 weeks; Timmons & Ebeling and SRAC 452, from memory: ammonia peaks near day 12–14 and nitrite near day 26–30 at
// 20–25 °C. The number of first settlers in the model is calibrated on the last, so these are held loosely.
import { describe, expect, it } from 'vitest';
import type { Plan } from '../../src/season/plan';
import { runSeason } from '../../src/season/season';
import { course, dayOfPeak } from '../season/courses';
import { keptPlan } from '../season/plans';

/** Forty small fish in a cubic metre with a settler and a media tank, fed 40 g a day, base given so that nothing stalls. */
function ripening(biofilm: Plan['start']['biofilm'], water_C: number): { ammonia: number; nitrite: number; ripe: number } {
  const kept = keptPlan('first-loop');
  const t = runSeason({
    ...kept, days: 80, climate: { ...kept.climate, water_C, weather: 0 }, start: { water: 'source', biofilm },
    loop: [
      { id: 'fish', kind: 'fishTank', volume_m3: 1, air_L_min: 40 }, { id: 'settler', kind: 'radialFlowSettler', volume_m3: 0.19 },
      { id: 'media', kind: 'degassingTank', volume_m3: 0.3, media_m3: 0.15, air_L_min: 40 }, { id: 'sump', kind: 'sump', volume_m3: 0.4 },
      { id: 'pump', kind: 'returnPump', flow_m3_h: 1.5 },
    ],
    fish: [{ tank: 'fish', species: 'tilapia', number: 40, mass_g: 50, day: 0 }],
    actions: [
      { day: 0, hour: 0, do: 'feed', tank: 'fish', g_d: 40, meals_h: [8, 12, 16] }, { every_d: 1, from: 1, hour: 9, do: 'drain', stage: 'settler' },
      { day: 1, hour: 0, do: 'base', g_d: 25, targetPH: 7.4, base: 'KHCO3' },
    ],
  });
  const ammonia = course(t, 'fish', 'TAN_mgN_L');
  const nitrite = course(t, 'fish', 'NO2_mgN_L');
  // ripe: from here on both stay under 1 mg/L, FAO 589's limit
  const over = ammonia.reduce((last, value, hour) => (value > 1 || nitrite[hour] > 1 ? hour : last), -1);
  return { ammonia: dayOfPeak(ammonia), nitrite: dayOfPeak(nitrite), ripe: (over + 1) / 24 };
}

describe('a loop with bare surfaces', () => {
  const cool = ripening('bare', 20);
  const mild = ripening('bare', 25);
  const warm = ripening('bare', 26);

  it.each([[20, cool], [26, warm]] as const)('at %i °C sees its ammonia peak before its nitrite', (_T_C, { ammonia, nitrite }) => {
    expect(nitrite).toBeGreaterThan(ammonia + 4);
  });

  it('sees ammonia peak about day 12–14 and nitrite about day 26–30 at 20–25 °C, within a third', () => {
    // the model at 20 and 25 °C: ammonia day 17 and 12, nitrite day 30 and 20
    for (const { ammonia } of [mild]) expect(Math.abs(ammonia / 13 - 1)).toBeLessThan(1 / 3);
    const nitrite = (cool.nitrite + mild.nitrite) / 2;
    expect(Math.abs(nitrite / 28 - 1)).toBeLessThan(1 / 3);
  });

  it('ripens later in cold water', () => {
    expect(cool.ammonia).toBeGreaterThan(warm.ammonia);
    expect(cool.nitrite).toBeGreaterThan(warm.nitrite);
    expect(cool.ripe).toBeGreaterThan(warm.ripe + 7);
  });

  it('is ripe 25–40 days from the start at 25 °C', () => {
    expect(mild.ripe).toBeGreaterThan(25 - 1);
    expect(mild.ripe).toBeLessThan(40);
  });

  it('is ripe 5–8 weeks from the start at 20 °C', () => {
    expect(cool.ripe).toBeGreaterThan(35);
    expect(cool.ripe).toBeLessThan(56);
  });
});

describe('a loop seeded with film from a running one', () => {
  it.each([20, 26])('at %i °C ripens sooner than a bare one', (T_C) => {
    const seeded = ripening('seeded', T_C);
    const bare = ripening('bare', T_C);
    expect(seeded.ammonia).toBeLessThan(bare.ammonia);
    expect(seeded.nitrite).toBeLessThan(bare.nitrite);
    expect(seeded.ripe).toBeLessThan(bare.ripe - 7);
  });
});
