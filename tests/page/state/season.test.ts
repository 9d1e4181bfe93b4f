// Running a season in the store: the clock, looking back, acting in the present and in the past.
import { describe, expect, it } from 'vitest';
import { createPageStore } from '../../../src/page/state/common/store';
import { actsInPast, feedInForce } from '../../../src/page/state/run/inForce';
import { fakeClient, smallLesson } from './fakeClient';
import { seen } from './seen';

async function running() {
  const client = fakeClient();
  const store = createPageStore(client);
  await store.getState().openLesson('small', 'good');
  store.getState().place('settler', 1);
  await store.getState().run();
  return { client, store, state: () => seen(store) };
}

const settled = async (): Promise<void> => {
  for (let i = 0; i < 10; i += 1) await Promise.resolve();
};

describe('the clock', () => {
  it('a season begins at hour 0 with nothing lived', async () => {
    const { state } = await running();
    expect(state()).toMatchObject({ mode: 'run', now_h: 0, lived_h: 0, busy: false });
    expect(state().season?.days).toHaveLength(4);
  });

  it('passes 6, 24 or 120 hours a second, and none while paused', async () => {
    const { state } = await running();
    state().setSpeed('hours6');
    state().tick(0.1);
    expect(state().now_h).toBeCloseTo(0.6);
    state().setSpeed('day1');
    state().tick(0.1);
    expect(state().now_h).toBeCloseTo(3);
    state().setSpeed('days5');
    state().tick(0.1);
    expect(state().now_h).toBeCloseTo(15);
    state().setSpeed('paused');
    state().tick(0.1);
    expect(state().now_h).toBeCloseTo(15);
    expect(state().lived_h).toBeCloseTo(15);
  });

  it('a page asleep for a minute does not skip days', async () => {
    const { state } = await running();
    state().setSpeed('day1');
    state().tick(60);
    expect(state().now_h).toBeLessThan(24);
  });

  it('stops at the last hour with the result', async () => {
    const { state } = await running();
    for (let day = 0; day < 4; day += 1) state().stepDay();
    expect(state()).toMatchObject({ mode: 'result', now_h: 96, lived_h: 96, speed: 'paused' });
    expect(state().announcement).toContain('83');
  });

  it('looking back is free, looking ahead of the hours lived is not possible', async () => {
    const { state } = await running();
    state().stepDay();
    state().stepDay();
    state().scrub(5);
    expect(state()).toMatchObject({ now_h: 5, lived_h: 48 });
    state().scrub(90);
    expect(state().now_h).toBe(48);
  });
});

describe('acting while the season runs', () => {
  it('takes hold at the next whole hour and computes again from that day only', async () => {
    const { client, state } = await running();
    state().stepDay();
    state().setSpeed('hours6');
    state().tick(0.1);
    state().setSpeed('paused');
    const daysBefore = state().season?.days;
    client.shift = 100;
    state().setFeed(80);
    await settled();
    expect(state().plan?.actions).toEqual([{ day: 1, hour: 1, do: 'feed', tank: 'fish', g_d: 80 }]);
    expect(client.runs.at(-1)?.keepDays).toBe(1);
    expect(state().season?.days[0]).toBe(daysBefore?.[0]);
    expect(state().season?.days[1]).not.toBe(daysBefore?.[1]);
    expect(state().season?.days).toHaveLength(4);
    expect(state().lived_h).toBeCloseTo(24.6);
  });

  it('the old season keeps playing until the new one arrives', async () => {
    const { client, state } = await running();
    client.hold = true;
    const before = state().season;
    state().setAir('fish', 12);
    state().setSpeed('hours6');
    state().tick(0.2);
    expect(state().season).toBe(before);
    expect(state().busy).toBe(true);
    expect(state().now_h).toBeCloseTo(1.2);
    client.release();
    await settled();
    expect(state().season).not.toBe(before);
    expect(state().busy).toBe(false);
  });

  it('edits made while a season is computed are gathered into one more', async () => {
    const { client, state } = await running();
    state().stepDay();
    client.hold = true;
    state().setFeed(10);
    state().setFeed(20);
    state().setFeed(30);
    client.hold = false;
    client.release();
    await settled();
    expect(client.runs).toHaveLength(3);
    const plan = state().plan;
    expect(plan?.actions).toHaveLength(1);
    expect(plan && feedInForce(plan, 'fish', 25)).toBe(30);
  });

  it('in the past replaces the hours lived since, and what was done in them, in the course gone on with', async () => {
    const { state } = await running();
    state().stepDay();
    state().doChore('settler', 'drain');
    state().stepDay();
    state().setFeed(50);
    state().stepDay();
    expect(actsInPast(state())).toBe(false);
    state().scrub(30);
    expect(actsInPast(state())).toBe(true);
    state().setPump(false);
    await settled();
    expect(state().lived_h).toBe(30);
    expect(state().plan?.actions).toEqual([
      { day: 1, hour: 1, do: 'drain', stage: 'settler' },
      { day: 1, hour: 7, do: 'pump', on: false },
    ]);
  });

  it('a chore begun and ended leaves the mornings between', async () => {
    const { state } = await running();
    state().setRoutine('settler', 'drain', 1);
    state().stepDay();
    state().stepDay();
    state().setRoutine('settler', 'drain', 0);
    expect(state().plan?.actions).toEqual([{ every_d: 1, from: 0, to: 1, hour: 9, do: 'drain', stage: 'settler' }]);
  });

  it('a chore that stood from the start comes back when its ending is undone by acting in the past', async () => {
    const client = fakeClient();
    const store = createPageStore(client);
    await store.getState().openLesson('small', 'good');
    store.getState().place('settler', 1);
    store.getState().setRoutine('settler', 'drain', 1);
    await store.getState().run();
    store.getState().stepDay();
    store.getState().stepDay();
    store.getState().setRoutine('settler', 'drain', 0);
    expect(seen(store).plan?.actions[0].to).toBe(1);
    store.getState().scrub(3);
    store.getState().setFeed(9);
    expect(seen(store).plan?.actions[0].to).toBeUndefined();
  });

  it('nothing can be done at the very last hour', async () => {
    const { client, state } = await running();
    for (let day = 0; day < 4; day += 1) state().stepDay();
    const runs = client.runs.length;
    state().setFeed(10);
    expect(client.runs.length).toBe(runs);
    expect(state().mode).toBe('result');
    state().scrub(80);
    state().setFeed(10);
    expect(state().mode).toBe('run');
    expect(state().lived_h).toBe(80);
  });

  it('going back to build keeps the design as it was when the season began', async () => {
    const { state } = await running();
    const built = state().plan;
    state().setFeed(77);
    state().stepDay();
    state().backToBuild();
    expect(state()).toMatchObject({ mode: 'build', season: null, now_h: 0, lived_h: 0, plan: built, acts: [] });
  });

  it('an answer that arrives after going back to build is forgotten', async () => {
    const { client, state } = await running();
    client.hold = true;
    state().setFeed(5);
    state().backToBuild();
    client.release();
    await settled();
    expect(state().season).toBeNull();
    expect(state().busy).toBe(false);
  });
});

describe('a worker that fails', () => {
  it('is told in words, and the page stays alive', async () => {
    const client = fakeClient(smallLesson());
    client.failRuns = 'no water';
    const store = createPageStore(client);
    await store.getState().openLesson('small', 'good');
    await store.getState().run();
    expect(store.getState().failure).toContain('no water');
    expect(seen(store)).toMatchObject({ mode: 'build', busy: false });
    client.failRuns = null;
    await store.getState().run();
    expect(seen(store).mode).toBe('run');
  });
});
