// The next thing to do: from the empty loop to the first run, each hint gives way once it is followed.
import { describe, expect, it } from 'vitest';
import { hintOf } from '../../../src/page/state/common/hints';
import { createPageStore } from '../../../src/page/state/common/store';
import { fakeClient } from './fakeClient';
import { changeBuild, seen } from './seen';

describe('hints', () => {
  it('lead from the first part to the run, and on to acting in the past', async () => {
    const store = createPageStore(fakeClient());
    const state = () => seen(store);
    const hint = () => hintOf(store.getState());
    expect(hint()).toBeNull();
    await state().openLesson('small', 'good');
    expect(hint()).toBe('place');
    state().place('settler', 1);
    expect(hint()).toBe('placeMore');
    state().place('rafts', 2);
    expect(hint()).toBe('feed');
    state().setFeed(60);
    expect(hint()).toBe('run');
    await state().run();
    expect(hint()).toBe('choose');
    // ammonia of the small season passes what calls for action after forty hours
    state().stepDay();
    state().stepDay();
    expect(hint()).toBe('trouble');
    state().stepDay();
    state().stepDay();
    expect(hint()).toBe('past');
    state().scrub(20);
    state().setAir('fish', 3);
    expect(hint()).toBeNull();
  });

  it('point at an order that the lesson gives to be mended, until something is moved', async () => {
    const store = createPageStore(fakeClient());
    await store.getState().openLesson('small', 'good');
    const { lesson, plan } = seen(store);
    if (lesson === null || plan === null) throw new Error('the small lesson did not open');
    const order = ['fish', 'rafts', 'settler', ...plan.loop.slice(1).map(({ id }) => id)];
    const loop = order.flatMap((id) => [...plan.loop, ...lesson.shelf].filter((stage) => stage.id === id));
    changeBuild(store, { lesson: { ...lesson, given: order }, plan: { ...plan, loop } });
    expect(hintOf(store.getState())).toBe('reorder');
    store.getState().shift('settler', -1);
    expect(hintOf(store.getState())).toBe('feed');
  });

  it('ask for what is missing only, where the lesson offers more parts than are needed', async () => {
    const store = createPageStore(fakeClient());
    await store.getState().openLesson('small', 'good');
    const { lesson, design } = seen(store);
    if (lesson === null || design === null) throw new Error('the small lesson did not open');
    const hint = () => hintOf(store.getState());
    changeBuild(store, {
      lesson: { ...lesson, reference: { ...lesson.reference, order: lesson.reference.order.filter((id) => id !== 'settler') } },
    });
    expect(hint()).toBe('place');
    store.getState().place('rafts', 1);
    changeBuild(store, { design: { ...design, problems: [{ stage: '', key: 'design.noSolids', values: {} }] } });
    expect(hint()).toBe('placeSome');
    changeBuild(store, { design: { ...design, problems: [] } });
    expect(hint()).toBe('feed');
  });

  it('ask for fish before feed, where a lesson begins without', async () => {
    const store = createPageStore(fakeClient());
    await store.getState().openLesson('small', 'good');
    const { lesson, plan } = seen(store);
    if (lesson === null || plan === null) throw new Error('the small lesson did not open');
    store.getState().place('settler', 1);
    store.getState().place('rafts', 2);
    const built = seen(store).plan;
    if (built === null) throw new Error('the small lesson has no plan');
    changeBuild(store, {
      lesson: { ...lesson, stocks: [{ tank: 'fish', species: 'tilapia', number: 20, mass_g: 50 }] },
      plan: { ...built, fish: [] },
    });
    expect(hintOf(store.getState())).toBe('stock');
    store.getState().stock(0);
    expect(hintOf(store.getState())).toBe('feed');
  });

  it('stay away once they are put away', async () => {
    const store = createPageStore(fakeClient());
    await store.getState().openLesson('small', 'good');
    store.getState().setHints(false);
    expect(hintOf(store.getState())).toBeNull();
  });
});
