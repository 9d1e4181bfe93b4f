// Building a loop in the store.
import { describe, expect, it } from 'vitest';
import { createPageStore } from '../../../src/page/state/common/store';
import { airInForce, feedInForce } from '../../../src/page/state/run/inForce';
import { fakeClient } from './fakeClient';
import { seen } from './seen';

async function opened() {
  const client = fakeClient();
  const store = createPageStore(client);
  await store.getState().openLesson('small', 'good');
  const order = (): string[] => seen(store).plan?.loop.map((stage) => stage.id) ?? [];
  return { client, store, order };
}

describe('building a loop', () => {
  it('a lesson opens with its fixed stages and nothing placed', async () => {
    const { order, store } = await opened();
    expect(order()).toEqual(['fish', 'sump', 'pump']);
    expect(seen(store).mode).toBe('build');
    expect(seen(store).comfort).toHaveLength(1);
  });

  it('a part goes into the gap it is placed in, the last gap included', async () => {
    const { order, store } = await opened();
    store.getState().place('settler', 1);
    store.getState().place('rafts', 4);
    expect(order()).toEqual(['fish', 'settler', 'sump', 'pump', 'rafts']);
  });

  it('nothing goes ahead of the fish tank', async () => {
    const { order, store } = await opened();
    store.getState().place('settler', 0);
    expect(order()).toEqual(['fish', 'sump', 'pump']);
    store.getState().place('settler', 1);
    store.getState().shift('settler', -1);
    expect(order()[0]).toBe('fish');
  });

  it('a placed part placed again moves; gaps are counted in the loop as it stood', async () => {
    const { order, store } = await opened();
    store.getState().place('settler', 1);
    store.getState().place('settler', 3);
    expect(order()).toEqual(['fish', 'sump', 'settler', 'pump']);
    store.getState().place('settler', 3);
    expect(order()).toEqual(['fish', 'sump', 'settler', 'pump']);
    store.getState().place('settler', 1);
    expect(order()).toEqual(['fish', 'settler', 'sump', 'pump']);
  });

  it('moving along the loop swaps neighbours, and stops at its end', async () => {
    const { order, store } = await opened();
    store.getState().place('settler', 1);
    store.getState().shift('settler', 1);
    expect(order()).toEqual(['fish', 'sump', 'settler', 'pump']);
    store.getState().shift('settler', 1);
    store.getState().shift('settler', 1);
    expect(order()).toEqual(['fish', 'sump', 'pump', 'settler']);
  });

  it('the stages of the lesson can neither be moved nor taken out', async () => {
    const { order, store } = await opened();
    store.getState().shift('sump', 1);
    store.getState().remove('pump');
    store.getState().dragStart('fish', 1, 1);
    expect(order()).toEqual(['fish', 'sump', 'pump']);
    expect(seen(store).drag).toBeNull();
  });

  it('every edit is checked anew', async () => {
    const { client, store } = await opened();
    const before = client.asked.filter((request) => request.ask === 'checkDesign').length;
    store.getState().place('settler', 1);
    store.getState().remove('settler');
    const checks = client.asked.filter((request) => request.ask === 'checkDesign');
    expect(checks.length).toBe(before + 2);
  });

  it('a part keeps its air setting when it is moved', async () => {
    const { store } = await opened();
    store.getState().place('rafts', 1);
    store.getState().setAir('rafts', 22.04);
    store.getState().place('rafts', 3);
    const plan = seen(store).plan;
    expect(plan && airInForce(plan, 'rafts', 0)).toBe(22);
  });

  it('feed set while building holds from the first hour and replaces itself', async () => {
    const { store } = await opened();
    store.getState().setFeed(40);
    store.getState().setFeed(61.4);
    const plan = seen(store).plan;
    expect(plan?.actions).toHaveLength(1);
    expect(plan && feedInForce(plan, 'fish', 0)).toBe(61);
  });

  it('base and chores set while building stand in the plan', async () => {
    const { store } = await opened();
    store.getState().place('settler', 1);
    store.getState().setBase('Ca(OH)2', 12, 6.8);
    store.getState().setRoutine('settler', 'drain', 1);
    store.getState().setRoutine('settler', 'drain', 2);
    const plan = seen(store).plan;
    expect(plan?.side[0]).toMatchObject({ base: 'Ca(OH)2', g_d: 12, targetPH: 6.8 });
    expect(plan?.actions).toEqual([{ every_d: 2, from: 2, hour: 9, do: 'drain', stage: 'settler' }]);
    store.getState().setRoutine('settler', 'drain', 0);
    expect(seen(store).plan?.actions).toEqual([]);
  });
});

describe('a part in the hand', () => {
  it('is placed in the gap it is dropped over', async () => {
    const { order, store } = await opened();
    store.getState().dragStart('settler', 10, 10);
    store.getState().dragMove(50, 60, 1);
    expect(seen(store).drag).toMatchObject({ from: 'shelf', x: 50, y: 60, overGap: 1 });
    store.getState().dragEnd(true);
    expect(order()).toEqual(['fish', 'settler', 'sump', 'pump']);
    expect(seen(store).drag).toBeNull();
  });

  it('goes back to the shelf when it was lifted from the loop and dropped elsewhere', async () => {
    const { order, store } = await opened();
    store.getState().place('settler', 1);
    store.getState().dragStart('settler', 10, 10);
    store.getState().dragMove(900, 10, null);
    store.getState().dragEnd(true);
    expect(order()).toEqual(['fish', 'sump', 'pump']);
  });

  it('stays where it was when the drag is given up', async () => {
    const { order, store } = await opened();
    store.getState().place('settler', 1);
    store.getState().dragStart('settler', 10, 10);
    store.getState().dragMove(900, 10, 3);
    store.getState().dragEnd(false);
    expect(order()).toEqual(['fish', 'settler', 'sump', 'pump']);
  });
});

describe('a broken lesson', () => {
  it('is told with path, got and expected, and the lesson in hand stays', async () => {
    const { order, store } = await opened();
    await store.getState().openLesson('bad', 'broken');
    expect(store.getState().problems[0]).toEqual({
      path: 'plan.days',
      got: { code: 'value', text: '"many"' },
      expected: { code: 'whole', from: 1, to: 1000 },
    });
    expect(order()).toEqual(['fish', 'sump', 'pump']);
    store.getState().dismissFailure();
    expect(store.getState().problems).toEqual([]);
  });
});
