// What is asked of the worker to judge a season: whole when it arrives, so far where a lesson has goals, changes where it counts them.
import { describe, expect, it } from 'vitest';
import { createPageStore } from '../../../src/page/state/common/store';
import type { Lesson } from '../../../src/lessons/lesson';
import { fakeClient, smallLesson } from './fakeClient';
import { seen } from './seen';

const settle = async (): Promise<void> => {
  for (let i = 0; i < 20; i += 1) await Promise.resolve();
};

async function opened(change: Partial<Lesson> = {}) {
  const client = fakeClient({ ...smallLesson(), ...change });
  const store = createPageStore(client);
  const state = () => seen(store);
  await state().openLesson('small', 'good');
  const judgings = () => client.asked.filter((request) => request.ask === 'judge');
  return { client, state, judgings };
}
const goals: Lesson['scoring'] = {
  plantsWeight: 0.5,
  marks: [50, 60, 70].map((fishHealth) => ({
    fishHealth,
    harvest: 0,
    moves: 2,
    goals: [{ text: 'Clear', stage: 'fish', variable: 'O2_mg_L' as const, statistic: 'min' as const, fromDay: 0, atLeast: 5 }],
  })),
};

describe('judging', () => {
  it('asks once for a season, with the plan that was lived, and again for another', async () => {
    const { state, judgings } = await opened();
    await state().run();
    await settle();
    expect(judgings()).toHaveLength(1);
    expect(judgings()[0]).toMatchObject({ plan: { days: 4 }, lesson: { id: 'small' } });
    expect(state().judged).toEqual({ marks: [], predictions: [] });
    state().setAir('fish', 3);
    await settle();
    expect(judgings()).toHaveLength(2);
    expect(judgings()[1]).toMatchObject({ plan: { actions: [{ do: 'air', L_min: 3 }] } });
    state().backToBuild();
    expect(state().judged).toBeNull();
  });

  it('looks at each day that was lived only where a lesson has goals of its own', async () => {
    const plain = await opened();
    await plain.state().run();
    plain.state().stepDay();
    await settle();
    expect(plain.judgings().filter((request) => 'untilDay' in request)).toEqual([]);
    const { state, judgings } = await opened({ scoring: goals });
    await state().run();
    await settle();
    expect(state().soFar).toBeNull();
    state().stepDay();
    await settle();
    expect(judgings().at(-1)).toMatchObject({ untilDay: 1 });
    expect(state().soFar?.day).toBe(1);
    state().scrub(3);
    expect(state().soFar).toBeNull();
  });

  it('counts the changes to the loop as given while it is built', async () => {
    const { state } = await opened({ scoring: goals });
    await settle();
    expect(state().moved).toBe(0);
    state().place('settler', 1);
    await settle();
    expect(state().moved).toBe(1);
    state().undo();
    await settle();
    expect(state().moved).toBe(0);
    const plain = await opened();
    plain.state().place('settler', 1);
    await settle();
    expect(plain.state().moved).toBeNull();
  });
});
