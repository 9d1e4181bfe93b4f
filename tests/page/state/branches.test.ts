// Branches: acting in the past keeps the course lived so far; courses can be gone on with and compared.
import { describe, expect, it } from 'vitest';
import { branchLetter, comparedBranch, sharedDays, underWay } from '../../../src/page/state/run/branches';
import type { Act } from '../../../src/page/state/common/state';
import { createPageStore } from '../../../src/page/state/common/store';
import { fakeClient } from './fakeClient';
import { seen } from './seen';

const settled = async (): Promise<void> => {
  for (let i = 0; i < 20; i += 1) await Promise.resolve();
};

/** Three days lived with a drain in day 1, then back to hour 30 and the pump stopped there. */
async function branched() {
  const client = fakeClient();
  const store = createPageStore(client);
  await store.getState().openLesson('small', 'good');
  store.getState().place('settler', 1);
  await store.getState().run();
  const state = () => seen(store);
  state().stepDay();
  state().stepDay();
  state().doChore('settler', 'drain');
  state().stepDay();
  await settled();
  const first = { plan: state().plan, season: state().season, acts: state().acts };
  client.shift = 100;
  state().scrub(30);
  state().setPump(false);
  await settled();
  return { client, state, first };
}

describe('acting in the past', () => {
  it('opens a branch there and keeps the course before as it was lived', async () => {
    const { state, first } = await branched();
    expect(state().branches).toHaveLength(2);
    expect(state()).toMatchObject({ present: 1, compared: 0, lived_h: 30, mode: 'run' });
    expect(state().branches[0]).toMatchObject({ from: null, acts: first.acts, lived_h: 72, scores: { fishHealth: 82 } });
    expect(state().branches[0].season).toBe(first.season);
    expect(state().branches[1]).toMatchObject({ from: 0, split_h: 31 });
    expect(state().plan?.actions).toEqual([{ day: 1, hour: 7, do: 'pump', on: false }]);
    expect(state().announcement).toBe('Branch B begins on day 1, 07:00. Branch A is kept beside it.');
  });

  it('a second act at that hour stays in the branch', async () => {
    const { state } = await branched();
    state().setFeed(40);
    expect(state().branches).toHaveLength(2);
    expect(state().acts).toHaveLength(2);
  });

  it('the branch shares the days before it, chunk by chunk', async () => {
    const { state } = await branched();
    const ghost = comparedBranch(state());
    expect(state().season?.days[0]).toBe(ghost?.season?.days[0]);
    expect(state().season?.days[1]).not.toBe(ghost?.season?.days[1]);
  });
});

describe('going on in another branch', () => {
  it('takes up its plan, acts and hours lived; the one left becomes the ghost', async () => {
    const { state, first } = await branched();
    state().stepDay();
    await state().switchTo(0);
    expect(state()).toMatchObject({ present: 0, compared: 1, lived_h: 72, now_h: 48, speed: 'paused', acts: first.acts, plan: first.plan });
    expect(state().season).toBe(first.season);
    expect(state().branches[1]).toMatchObject({ lived_h: 48 });
    await state().switchTo(1);
    expect(state()).toMatchObject({ present: 1, lived_h: 48 });
    expect(state().plan?.actions).toEqual([{ day: 1, hour: 7, do: 'pump', on: false }]);
  });

  it('a course lived to its end shows its result', async () => {
    const { state } = await branched();
    for (let day = 0; day < 4; day += 1) state().stepDay();
    expect(state().mode).toBe('result');
    await state().switchTo(0);
    expect(state().mode).toBe('run');
    await state().switchTo(1);
    expect(state()).toMatchObject({ mode: 'result', lived_h: 96 });
  });
});

describe('full output', () => {
  it('is held for the present and the compared branch alone; another is worked out again when asked for', async () => {
    const { client, state } = await branched();
    state().stepDay();
    state().stepDay();
    state().scrub(50);
    state().setFeed(5);
    await settled();
    expect(state()).toMatchObject({ present: 2, compared: 1 });
    expect(state().branches.map(({ season }) => season !== null)).toEqual([false, true, false]);
    const runs = client.runs.length;
    await state().compareWith(0);
    expect(client.runs).toHaveLength(runs + 1);
    expect(client.runs.at(-1)).toMatchObject({ keepDays: 1, plan: { actions: [{ day: 2, hour: 1, do: 'drain', stage: 'settler' }] } });
    expect(comparedBranch(state())?.id).toBe(0);
    expect(state().branches.map(({ season }) => season !== null)).toEqual([true, false, false]);
    await state().compareWith(null);
    expect(comparedBranch(state())).toBeNull();
    expect(state().busy).toBe(false);
  });

  it('a course left while it is being worked out is not kept with output of the course before', async () => {
    const { client, state } = await branched();
    client.hold = true;
    state().setFeed(60);
    const going = state().switchTo(0);
    client.hold = false;
    client.release();
    await going;
    await settled();
    expect(state()).toMatchObject({ present: 0, busy: false });
    expect(state().branches[1].season).toBeNull();
    await state().compareWith(1);
    expect(client.runs.at(-1)?.plan.actions).toHaveLength(2);
    expect(comparedBranch(state())?.id).toBe(1);
  });

  it('going back to build closes all branches', async () => {
    const { state } = await branched();
    state().backToBuild();
    expect(state()).toMatchObject({ mode: 'build', present: 0, compared: null, branches: [] });
  });
});

describe('what courses share', () => {
  const act = (hour: number, g_d: number): Act => ({ hour, deed: { do: 'feed', tank: 'fish', g_d }, every_d: null });

  it('is every whole day before their first different act', () => {
    expect(sharedDays([act(10, 1), act(60, 2)], [act(10, 1), act(80, 2)])).toBe(2);
    expect(sharedDays([act(10, 1)], [act(10, 1)])).toBe(Infinity);
    expect(sharedDays([act(10, 1)], [])).toBe(0);
  });

  it('branches are lettered without end', () => {
    expect([0, 1, 25, 26, 27, 52].map(branchLetter)).toEqual(['A', 'B', 'Z', 'AA', 'AB', 'BA']);
  });
});

describe('a season under way', () => {
  it('is one in which something was done: leaving it would lose that', async () => {
    const client = fakeClient();
    const store = createPageStore(client);
    const state = () => seen(store);
    await state().openLesson('small', 'good');
    state().place('settler', 1);
    expect(underWay(store.getState())).toBe(false);
    await state().run();
    expect(underWay(store.getState())).toBe(false);
    state().stepDay();
    state().doChore('settler', 'drain');
    expect(underWay(store.getState())).toBe(true);
    state().backToBuild();
    expect(underWay(store.getState())).toBe(false);
  });
});
