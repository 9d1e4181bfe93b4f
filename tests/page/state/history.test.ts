// Building can be taken back and done again, step by step and without limit; what was said of a step is said of taking it back.
import { describe, expect, it } from 'vitest';
import { createPageStore } from '../../../src/page/state/common/store';
import { fakeClient } from './fakeClient';
import { seen } from './seen';

async function building() {
  const client = fakeClient();
  const store = createPageStore(client);
  await store.getState().openLesson('small', 'good');
  return { client, store, state: () => seen(store), order: () => seen(store).plan?.loop.map(({ id }) => id) };
}

describe('taking back', () => {
  it('goes back through every step to the opening design, and forward through all of them', async () => {
    const { state } = await building();
    const designs = [state().plan];
    const steps: (() => void)[] = [
      () => state().place('settler', 1),
      () => state().place('rafts', 2),
      () => state().shift('settler', 1),
      () => state().setFeed(80),
      () => state().setAir('fish', 12.5),
      () => state().setBase('KHCO3', 4, 7),
      () => state().setRoutine('settler', 'drain', 2),
      () => state().setHeater(300, 26),
      () => state().setLight(20),
      () => state().remove('rafts'),
    ];
    for (const step of steps) {
      step();
      designs.push(state().plan);
    }
    expect(state().undoable).toHaveLength(steps.length);
    for (let n = steps.length - 1; n >= 0; n -= 1) {
      state().undo();
      expect(state().plan).toBe(designs[n]);
    }
    state().undo();
    expect(state().plan).toBe(designs[0]);
    for (let n = 1; n <= steps.length; n += 1) {
      state().redo();
      expect(state().plan).toBe(designs[n]);
    }
    expect(state().redoable).toEqual([]);
  });

  it('holds a hundred steps and more', async () => {
    const { state } = await building();
    for (let n = 1; n <= 150; n += 1) state().setFeed(n);
    for (let n = 0; n < 150; n += 1) state().undo();
    expect(state().plan?.actions).toEqual([]);
  });

  it('a new step forgets what could be done again', async () => {
    const { state, order } = await building();
    state().place('settler', 1);
    state().undo();
    state().place('rafts', 1);
    expect(state().redoable).toEqual([]);
    state().redo();
    expect(order()).toEqual(['fish', 'rafts', 'sump', 'pump']);
  });

  it('says what was taken back, has the design checked again, and lets go of a stage that is gone', async () => {
    const { client, state } = await building();
    state().place('settler', 1);
    state().select('settler');
    const checks = client.asked.filter(({ ask }) => ask === 'checkDesign').length;
    state().undo();
    expect(state().announcement).toBe('Taken back: Radial-flow settler placed after Fish tank.');
    expect(client.asked.filter(({ ask }) => ask === 'checkDesign')).toHaveLength(checks + 1);
    expect(state().selected).toBeNull();
    state().redo();
    expect(state().announcement).toBe('Done again: Radial-flow settler placed after Fish tank.');
  });

  it('does nothing while a season runs, and outlives it', async () => {
    const { state, order } = await building();
    state().place('settler', 1);
    await state().run();
    state().undo();
    expect(order()).toContain('settler');
    state().backToBuild();
    expect(state().undoable).toHaveLength(1);
    state().undo();
    expect(order()).not.toContain('settler');
  });

  it('a lesson that opens begins with nothing to take back', async () => {
    const { state } = await building();
    state().place('settler', 1);
    await state().openLesson('small', 'good');
    expect([state().undoable, state().redoable]).toEqual([[], []]);
  });
});
