// How life and light are drawn: fish by number and mass, leaves by mass, roots by their mat, the day by its hour, water by its flow.
import { describe, expect, it } from 'vitest';
import { courseOf, STEP } from '../../../src/page/picture/water/course';
import { fouling, leafScale, leafSize } from '../../../src/page/picture/life/crop';
import { coverOf, daylight, type Daylight } from '../../../src/page/picture/weather/daylight';
import { broken, placeNames } from '../../../src/page/picture/marks/names';
import { dashSpeed } from '../../../src/page/picture/kit/flow';
import { fishScale, fishShown, MOST_FISH } from '../../../src/page/picture/life/fishSize';

describe('fish', () => {
  it('shown are an even share of those alive', () => {
    expect([60, 45, 30, 5, 1, 0].map((alive) => fishShown(alive, 60))).toEqual([12, 9, 6, 1, 1, 0]);
  });

  it('are shown one by one when they are few, and never in a crowd', () => {
    expect(fishShown(7, 8)).toBe(7);
    expect(fishShown(5000, 5000)).toBe(MOST_FISH);
  });

  it('grow longer with the cube root of their mass', () => {
    expect(fishScale(400) / fishScale(50)).toBeCloseTo(2, 6);
    expect(fishScale(100)).toBeGreaterThan(fishScale(50));
  });
});

describe('plants', () => {
  const FULL_g_m2 = 180;

  it('pass through four sizes', () => {
    expect([0, 0.2, 0.5, 0.9].map((share) => leafSize(share * FULL_g_m2, FULL_g_m2))).toEqual([1, 2, 3, 4]);
  });

  it('never jump by more than an eighth within a size', () => {
    for (let mass = 0; mass <= FULL_g_m2 * 1.5; mass += 5) {
      expect(leafScale(mass, FULL_g_m2)).toBeGreaterThanOrEqual(0.88 - 1e-9);
      expect(leafScale(mass, FULL_g_m2)).toBeLessThanOrEqual(1.12 + 1e-9);
    }
  });

  it('show fouled roots for a thick mat and for poor health alike', () => {
    expect(fouling(0, 1, 0)).toBe(0);
    expect(fouling(30, 1, 0)).toBe(1);
    expect(fouling(0, 0.2, 0)).toBeCloseTo(0.8, 9);
    expect(fouling(3, 0.9, 0.6)).toBeCloseTo(0.6, 9);
  });
});

describe('daylight', () => {
  const at = (hour: number, length = 14, cover = 0): Daylight =>
    daylight({ hour, dayLength_h: length, cover, sun: 0, colour: 0, alpha: 0 });

  it('washes nothing at noon and most things at night', () => {
    expect(at(12)).toMatchObject({ sun: 1, alpha: 0 });
    expect(at(0).alpha).toBeGreaterThan(0.2);
    expect(at(0).sun).toBeCloseTo(-1, 9);
  });

  it('rises and sets half a day length from noon', () => {
    expect(at(5).sun).toBeCloseTo(0, 9);
    expect(at(19).sun).toBeCloseTo(0, 9);
    expect(at(9, 4).sun).toBeLessThan(0);
  });

  it('never jumps from one minute to the next', () => {
    for (const cover of [0, 0.5, 1])
      for (let minute = 0; minute < 1440; minute += 1)
        expect(Math.abs(at((minute + 1) / 60, 14, cover).alpha - at(minute / 60, 14, cover).alpha)).toBeLessThan(0.03);
  });

  it('is duller the less light the day has, and no other at night', () => {
    expect(coverOf(1.3)).toBe(0);
    expect(coverOf(0.3)).toBe(1);
    expect(coverOf(0.9)).toBeGreaterThan(coverOf(1));
    expect(at(12, 14, 1).alpha).toBeGreaterThan(at(12, 14, 0.4).alpha);
    expect(at(12, 14, 0.4).alpha).toBeGreaterThan(0);
    expect(at(1, 14, 1)).toMatchObject({ alpha: at(1).alpha, colour: at(1).colour });
  });
});

describe('pipes', () => {
  it('show no dashes where nothing flows, and faster ones for more flow', () => {
    expect(dashSpeed(0)).toBe(0);
    expect(dashSpeed(0.01)).toBeGreaterThan(0);
    expect(dashSpeed(60)).toBeGreaterThan(dashSpeed(20));
  });

  it('are sampled at even steps along the flow, round bends too', () => {
    const { xs, ys, bends, straights } = courseOf([0, 0, 100, 0, 100, 80, 20, 80], 13);
    expect(bends).toHaveLength(2);
    expect(straights).toHaveLength(3);
    for (let i = 1; i < xs.length; i += 1) expect(Math.hypot(xs[i] - xs[i - 1], ys[i] - ys[i - 1])).toBeLessThan(1.6 * STEP);
    expect(Math.abs(xs[xs.length - 1] - 20)).toBeLessThanOrEqual(2 * STEP);
    expect(ys[ys.length - 1]).toBe(80);
  });
});

describe('names', () => {
  const measure = (text: string): number => text.length * 9;

  it('break into two even lines where they do not fit', () => {
    expect(broken('Radial-flow settler', 100, measure)).toEqual(['Radial-flow', 'settler']);
    expect(broken('Raft bed', 100, measure)).toEqual(['Raft bed']);
  });

  it('step aside from what stands on their stage, and into the ground where there is no room over it', () => {
    const wish = (words: string, x: number, y: number) => ({ id: words, words, x, y, room: 200, align: 'center' as const });
    const table = { x: 280, y: -420, w: 104, h: 120 };
    const [aside] = placeNames([wish('Raft bed', 330, -310)], 20, 900, measure, { things: [table], top: -1000 });
    expect(aside.x + aside.width / 2).toBeLessThan(table.x);
    const [first, second] = placeNames([wish('Fish tank', 200, -380), wish('Settler', 210, -370)], 20, 900, measure, {
      things: [],
      top: -401,
    });
    expect(first.y).toBe(-380);
    expect(second.y - 20).toBeGreaterThan(0);
  });

  it('never lie over each other', () => {
    const wishes = ['Fish tank', 'Radial-flow settler', 'Fine-solids filter', 'Degassing tank'].map((words, i) => ({
      id: words,
      words,
      x: 80 + i * 70,
      y: -300 + i * 10,
      room: 60,
      align: 'center' as const,
    }));
    const placed = placeNames(wishes, 20, 600, measure);
    for (const a of placed) {
      for (const b of placed) {
        if (a === b) continue;
        const apart =
          Math.abs(a.x - b.x) >= (a.width + b.width) / 2 || a.y <= b.y - b.lines.length * 20 || b.y <= a.y - a.lines.length * 20;
        expect(apart).toBe(true);
      }
    }
  });
});
