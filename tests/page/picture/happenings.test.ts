// What the picture makes of a season's events: a lamp, the dead of late, and who lives where.
import { describe, expect, it } from 'vitest';
import type { Plan } from '../../../src/season/plan';
import { lampShines, lately } from '../../../src/page/picture/kit/happenings';
import { cropAt, livingOf, speciesIn } from '../../../src/page/picture/life/living';
import { event, withEvents } from './loops';

describe('a lamp', () => {
  const view = withEvents(
    event(5, 'lampSet', 'uv', 0),
    event(20, 'lampSet', 'uv', 55),
    event(30, 'powerOff'),
    event(40, 'powerOn'),
    event(41, 'lampSet', 'other', 3),
  );

  it('shines as the plan has it until it is set, then as it was set', () => {
    expect([0, 6, 21, 60].map((now_h) => lampShines(view, 'uv', 40, { now_h }))).toEqual([true, false, true, true]);
  });

  it('is dark while the power is off', () => {
    expect(lampShines(view, 'uv', 40, { now_h: 35 })).toBe(false);
  });
});

describe('the dead', () => {
  const view = withEvents(event(23, 'fishDied', 'fish', 3), event(25, 'fishDied', 'fish', 2), event(25, 'fishDied', 'other', 9));

  it('are counted for some hours, over midnight, and then no more', () => {
    expect([22, 23, 26, 36, 40].map((now_h) => lately(view, 'fishDied', 'fish', { now_h }, 12))).toEqual([0, 3, 5, 2, 0]);
  });
});

describe('who lives where', () => {
  const plan = {
    fish: [{ tank: 'fish', species: 'commonCarp', number: 5, mass_g: 100, day: 0 }],
    loop: [
      { id: 'fish', kind: 'fishTank' },
      { id: 'bed', kind: 'raftBed', crop: { kind: 'basil', plants_m2: 20, plantedDay: 2, replant: true } },
      { id: 'bare', kind: 'tower' },
    ],
    actions: [
      { day: 4, hour: 9, do: 'plant', stage: 'bed', crop: 'tomato', plants_m2: 4, replant: false },
      { day: 1, do: 'stock', tank: 'second', species: 'tilapia', number: 3, mass_g: 20 },
    ],
  } as unknown as Plan;

  it('is told by what was planted last', () => {
    expect([0, 48, 104, 105].map((now_h) => cropAt(plan, 'bed', { now_h }))).toEqual([null, 'basil', 'basil', 'tomato']);
    expect(cropAt(plan, 'bare', { now_h: 500 })).toBeNull();
  });

  it('is told by who was stocked, by plan or by hand', () => {
    expect([speciesIn(plan, 'fish'), speciesIn(plan, 'second'), speciesIn(plan, 'third')]).toEqual(['commonCarp', 'tilapia', null]);
    expect([...livingOf(plan).species]).toEqual(['commonCarp', 'tilapia']);
    expect([...livingOf(plan).crops]).toEqual(['basil', 'tomato']);
  });
});
