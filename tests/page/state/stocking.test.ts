// Fish to put in: from the start while building, at the next whole hour while a season runs, each offer once.
import { describe, expect, it } from 'vitest';
import { fishNow } from '../../../src/page/state/common/selectors';
import { fishWords, stocked } from '../../../src/page/state/build/stocking';
import { createPageStore } from '../../../src/page/state/common/store';
import { askingLesson } from './asking';
import { fakeClient, smallPlan } from './fakeClient';
import { seen } from './seen';

async function opened() {
  const client = fakeClient(askingLesson(4, { predictions: [] }));
  const store = createPageStore(client);
  await store.getState().openLesson('asking', 'good');
  return { client, state: () => seen(store) };
}
const TILAPIA = { do: 'stock', tank: 'fish', species: 'tilapia', number: 40, mass_g: 20 };
const CARP = { do: 'stock', tank: 'fish', species: 'commonCarp', number: 5, mass_g: 100 };

describe('stocking', () => {
  it('while building puts fish in from the start, and again leaves them out; both can be undone', async () => {
    const { state } = await opened();
    state().stock(0);
    expect(state().plan?.actions).toEqual([{ day: 0, hour: 0, ...TILAPIA }]);
    expect(fishNow({ plan: state().plan ?? smallPlan(), season: null, now_h: 0 })).toEqual({
      number: 100,
      mass_g: (60 * 50 + 40 * 20) / 100,
    });
    state().stock(0);
    expect(state().plan?.actions).toEqual([]);
    state().undo();
    expect(state().plan?.actions).toHaveLength(1);
  });

  it('while a season runs is a deed at the next whole hour; two like offers in one hour are twice the fish', async () => {
    const { client, state } = await opened();
    await state().run();
    state().setSpeed('paused');
    state().stepDay();
    for (const offer of [0, 0, 1, 2, 2]) state().stock(offer);
    expect(state().plan?.actions).toEqual([
      { day: 1, hour: 1, ...TILAPIA },
      { day: 1, hour: 1, ...TILAPIA },
      { day: 1, hour: 1, ...CARP },
    ]);
    expect(client.runs.length).toBeGreaterThan(1);
    expect(state().announcement).toContain('day 1, 01:00');
  });

  it('knows which offers are used, each action counting once', () => {
    const lesson = askingLesson();
    expect([...stocked(lesson, { actions: [] })]).toEqual([]);
    expect([
      ...stocked(lesson, { actions: [{ day: 0, do: 'stock', tank: 'fish', species: 'tilapia', number: 40, mass_g: 20 }] }).keys(),
    ]).toEqual([0]);
    expect([
      ...stocked(lesson, { actions: [{ day: 0, do: 'stock', tank: 'fish', species: 'tilapia', number: 41, mass_g: 20 }] }).keys(),
    ]).toEqual([]);
  });

  it('is told with number, species and mass', () => {
    expect(fishWords(askingLesson().stocks[0])).toBe('40 tilapia of 20\u00a0g');
  });

  it('passes over offers there are not', async () => {
    const { state } = await opened();
    state().stock(9);
    expect(state().plan?.actions).toEqual([]);
  });
});
