// Sizes a lesson leaves free: kept within its limits and in the steps of plans, taken back like every step, checked again.
import { describe, expect, it } from 'vitest';
import { quantise } from '../../../src/lessons/quantise';
import type { FreeSize, SizeOffer } from '../../../src/lessons/lesson';
import { fitted, sizeNow, sizesOf } from '../../../src/page/state/build/sizing';
import { createPageStore } from '../../../src/page/state/common/store';
import { askingLesson } from './asking';
import { fakeClient, smallPlan } from './fakeClient';
import { seen } from './seen';

async function opened() {
  const client = fakeClient(askingLesson());
  const store = createPageStore(client);
  await store.getState().openLesson('asking', 'good');
  return { client, state: () => seen(store) };
}

describe('a free size', () => {
  it('is set, held within its limits, undone and done again, and the design is checked each time', async () => {
    const { client, state } = await opened();
    const checks = () => client.asked.filter((request) => request.ask === 'checkDesign').length;
    const before = checks();
    const volume = () => sizeNow(state().plan ?? smallPlan(), 'fish', 'volume_m3');
    state().setSize('fish', 'volume_m3', 1.23456);
    expect(volume()).toBe(1.235);
    state().setSize('fish', 'volume_m3', 9);
    expect(volume()).toBe(2);
    state().setSize('fish', 'volume_m3', 2);
    expect(state().undoable).toHaveLength(2);
    expect(checks()).toBe(before + 2);
    state().undo();
    expect(volume()).toBe(1.235);
    state().undo();
    expect(volume()).toBe(1);
    state().redo();
    expect(volume()).toBe(1.235);
    expect(state().undoable[0].what).toContain('Fish tank');
    expect(state().undoable[0].what).toMatch(/1235\u00a0L/);
  });

  it('a stand can be fixed, and follows the falls again when it is let go', async () => {
    const { state } = await opened();
    const sump = () => state().plan?.loop.find((stage) => stage.id === 'sump');
    expect(sizeNow(state().plan ?? smallPlan(), 'sump', 'stand_m')).toBeNull();
    state().setSize('sump', 'stand_m', 0.234);
    expect(sump()?.stand_m).toBe(0.23);
    state().setSize('sump', 'stand_m', null);
    expect(sump()).not.toHaveProperty('stand_m');
  });

  it('stays with its part when that is taken out and put back, and goes with the step that set it', async () => {
    const { state } = await opened();
    const area = () => sizeNow(state().plan ?? smallPlan(), 'rafts', 'area_m2');
    state().place('rafts', 1);
    state().setSize('rafts', 'area_m2', 4.5);
    state().setAir('rafts', 22);
    state().remove('rafts');
    expect(area()).toBeNull();
    state().place('rafts', 2);
    expect(area()).toBe(4.5);
    expect(state().plan?.loop[2]).toMatchObject({ id: 'rafts', air_L_min: 22 });
    // by drag, too
    state().remove('rafts');
    state().dragStart('rafts', 1, 1);
    expect(state().drag?.stage.area_m2).toBe(4.5);
    state().dragMove(2, 2, 1);
    state().dragEnd(true);
    expect(area()).toBe(4.5);
    // six steps back the size was never set
    for (let n = 0; n < 6; n += 1) state().undo();
    expect(area()).toBe(3);
    state().remove('rafts');
    state().place('rafts', 1);
    expect(area()).toBe(3);
  });

  it('is refused where the lesson offers none, for a stage that is not in the loop, for no number, and while a season runs', async () => {
    const { state } = await opened();
    const plan = state().plan;
    state().setSize('sump', 'volume_m3', 1);
    state().setSize('rafts', 'area_m2', 2);
    state().setSize('fish', 'volume_m3', NaN);
    state().setSize('fish', 'volume_m3', null);
    expect(state().plan).toBe(plan);
    state().setPredicting(false);
    await state().run();
    state().setSize('fish', 'volume_m3', 1.5);
    expect(state().plan?.loop[0].volume_m3).toBe(1);
  });

  it.each<[FreeSize, number, number]>([
    ['volume_m3', 0.01, 2],
    ['media_m3', 0, 1],
    ['area_m2', 1, 9],
    ['depth_m', 0.1, 1],
    ['depth_m', 0.002, 0.04],
    ['height_m', 0.3, 2],
    ['stand_m', -1, 2],
    ['lamp_W', 0, 100],
    ['air_L_min', 0, 90],
  ])('%s between %d and %d keeps the steps that plans are written in', (size, from, to) => {
    const offer: SizeOffer = { stage: 'fish', size, from, to };
    for (const share of [0.123456, 0.5, 0.777777]) {
      const value = fitted(offer, from + share * (to - from));
      const plan = smallPlan();
      const sized = { ...plan, loop: plan.loop.map((stage) => (stage.id === 'fish' ? { ...stage, [size]: value } : stage)) };
      expect(sizeNow(quantise(sized), 'fish', size)).toBe(value);
    }
  });

  it('belongs to its stage alone', () => {
    expect(sizesOf(askingLesson(), 'sump').map(({ size }) => size)).toEqual(['stand_m']);
    expect(sizesOf(askingLesson(), 'pump')).toEqual([]);
  });
});
