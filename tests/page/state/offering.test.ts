// What a lesson offers: a choice of parts, plants or none, fish to come.
import { describe, expect, it } from 'vitest';
import type { Lesson } from '../../../src/lessons/lesson';
import type { Plan } from '../../../src/season/plan';
import { firstOnShelf, fishToCome, offersChoice, problemsToTell } from '../../../src/page/state/build/offering';
import { learnKinds } from '../../../src/page/state/common/kinds';
import { catalogueEntries } from '../../../src/worker/catalogueEntries';

learnKinds(catalogueEntries());

const shelf: Lesson['shelf'] = [
  { id: 'bio', kind: 'movingBedBiofilter' },
  { id: 'degas', kind: 'degassingTank' },
];
const loop: Plan['loop'] = [
  { id: 'fish', kind: 'fishTank' },
  { id: 'pump', kind: 'returnPump' },
];
const design = {
  stages: [],
  totalVolume_m3: 1,
  lift_m: 1,
  problems: [
    { stage: '', key: 'design.noPlants', values: {} },
    { stage: '', key: 'design.noSolids', values: {} },
  ],
};

describe('what a lesson offers', () => {
  it('is a choice when its reference leaves a part on the shelf', () => {
    expect(offersChoice({ shelf, reference: { order: ['fish', 'bio', 'pump'], actions: [] } })).toBe(true);
    expect(offersChoice({ shelf, reference: { order: ['fish', 'bio', 'degas', 'pump'], actions: [] } })).toBe(false);
  });

  it('lies on the shelf unless the loop is given with it', () => {
    expect(firstOnShelf({ shelf })).toBe(2);
    expect(firstOnShelf({ shelf, given: ['fish', 'bio', 'pump'] })).toBe(1);
  });

  it('has no plants to miss where no bed can be placed or stands', () => {
    const keys = (parts: Lesson['shelf'], stages: Plan['loop']) =>
      problemsToTell({ shelf: parts }, { loop: stages }, design).map(({ key }) => key);
    expect(keys(shelf, loop)).toEqual(['design.noSolids']);
    expect(keys([...shelf, { id: 'rafts', kind: 'raftBed' }], loop)).toEqual(['design.noPlants', 'design.noSolids']);
  });

  it('may hold fish that are still to come', () => {
    const stocks: Lesson['stocks'] = [{ tank: 'fish', species: 'tilapia', number: 20, mass_g: 50 }];
    expect(fishToCome({ stocks }, { fish: [], actions: [] })).toBe(true);
    expect(fishToCome({ stocks: [] }, { fish: [], actions: [] })).toBe(false);
    expect(fishToCome({ stocks }, { fish: [], actions: [{ day: 3, do: 'stock', ...stocks[0] }] })).toBe(false);
    expect(fishToCome({ stocks }, { fish: [{ ...stocks[0], day: 0 }], actions: [] })).toBe(false);
  });
});
