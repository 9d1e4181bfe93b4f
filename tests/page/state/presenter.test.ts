// Presenter mode without a page: the steps of a demonstration, two loops under one clock, votes, the reveal, and what comes next.
import { describe, expect, it } from 'vitest';
import type { Demonstration, Lesson } from '../../../src/lessons/lesson';
import { pairOf, outcomeOf } from '../../../src/lessons/demonstration';
import { createPresenter, MOST_VOTES } from '../../../src/page/state/presenter/presenter';
import { createPageStore } from '../../../src/page/state/common/store';
import type { Client } from '../../../src/page/state/common/state';
import { fakeClient, smallLesson } from './fakeClient';
import { seen } from './seen';

const DAYS = 6;
const pair: Demonstration = {
  key: 'beds',
  title: 'With and without the bed',
  left: 'reference',
  right: 'bare',
  leftName: 'With',
  rightName: 'Without',
  tint: 'ammonia',
  look: 'fish',
  question: 'How much more ammonia?',
  measure: { stage: 'fish', variable: 'TAN_mgN_L', statistic: 'max', fromDay: 0, toDay: 5 },
  choices: [
    { key: 'same', text: 'The same', below: 1.5 },
    { key: 'more', text: 'More', atLeast: 1.5 },
  ],
  turningPoints: [
    { day: 1, hour: 9, say: 'Look.' },
    { day: 3, hour: 9, say: 'Look again.' },
  ],
};
const lesson: Lesson = {
  ...smallLesson(DAYS),
  demonstrations: [pair, { ...pair, key: 'again', title: 'Again' }],
  mistakes: [{ key: 'bare', title: 'No bed', order: ['fish', 'settler', 'sump', 'pump'], actions: [], shows: [] }],
};

interface Staged {
  measured: [number, number];
  texts?: string[];
}

function staged({ measured, texts = ['lesson'] }: Staged = { measured: [2, 5] }) {
  const fake = fakeClient(lesson);
  const client: Client = {
    async ask(request) {
      const as = (value: unknown) => value as never;
      if (request.ask === 'readLesson')
        return as(
          request.text === 'broken'
            ? { problems: [{ path: 'plan', got: { code: 'nothing' }, expected: { code: 'object', keys: ['loop'] } }] }
            : { lesson },
        );
      if (request.ask === 'pair') return as(pairOf(request.lesson, request.shown));
      if (request.ask === 'compare') return as(outcomeOf(measured[0], measured[1], request.choices));
      return fake.ask(request);
    },
  };
  const page = createPageStore(client);
  const presenter = createPresenter(
    client,
    page,
    texts.map((text, index) => ({ name: `${index}.json`, read: () => Promise.resolve(text) })),
  );
  return { fake, page, ...presenter, state: () => presenter.store.getState() };
}

async function shown() {
  const all = staged();
  await all.state().readAll();
  await all.state().show('small', 'beds');
  return all;
}

/** Lets the clock run out, a tenth of a second at a time. */
function settle(state: () => { toward: unknown; playing: boolean; tick(seconds: number): void }, most = 2000): void {
  for (let i = 0; i < most && (state().toward !== null || state().playing); i += 1) state().tick(0.1);
}

describe('the list of demonstrations', () => {
  it('is read when it is asked for, and only once', async () => {
    const { state, store } = staged();
    expect(state().lessons).toBeNull();
    await state().readAll();
    const first = state().lessons;
    expect(first?.map((one) => one.demonstrations.map(({ key }) => key))).toEqual([['beds', 'again']]);
    await store.getState().readAll();
    expect(state().lessons).toBe(first);
  });

  it('lists what can be read and says which file cannot', async () => {
    const { state } = staged({ measured: [1, 1], texts: ['broken', 'lesson'] });
    await state().readAll();
    expect(state().lessons).toHaveLength(1);
    expect(state().failure).toContain('0.json');
  });
});

describe('a demonstration', () => {
  it('puts each build on its own side, with one tint, one scale and the same first hour', async () => {
    const { sides, state } = await shown();
    const [left, right] = sides.map(seen);
    expect(left.plan?.loop.map(({ id }) => id)).toEqual(['fish', 'settler', 'rafts', 'sump', 'pump']);
    expect(right.plan?.loop.map(({ id }) => id)).toEqual(['fish', 'settler', 'sump', 'pump']);
    expect(left.season).not.toBe(right.season);
    for (const side of [left, right])
      expect(side).toMatchObject({ mode: 'class', tint: 'ammonia', now_h: state().now_h, selected: 'fish', speed: 'paused' });
    expect(left.scale).toBe(right.scale);
    expect(left.told).toEqual(['fish', 'rafts']);
  });

  it('goes question, votes, its turning points, what happened; then the next one, then the list', async () => {
    const { state } = await shown();
    const seen = [];
    for (let step = 0; step < 5; step += 1) {
      seen.push(state().shown?.steps[state().step].kind);
      settle(state);
      await state().forth();
    }
    expect(seen).toEqual(['question', 'votes', 'moment', 'moment', 'reveal']);
    expect(state().shown?.demonstration.key).toBe('again');
    expect(state()).toMatchObject({ step: 0, votes: [0, 0] });
    for (let step = 0; step < 5; step += 1) await state().forth();
    expect(state().shown).toBeNull();
  });

  it('goes back step by step, and from the first to the list', async () => {
    const { state } = await shown();
    await state().forth();
    state().back();
    expect(state().step).toBe(0);
    state().back();
    expect(state().shown).toBeNull();
  });

  it('colours both waters by another quantity when asked, on a scale both share, and leaves step and votes alone', async () => {
    const { state, sides } = await shown();
    state().vote(0, 2);
    state().turnTint(1);
    expect(sides.map((side) => seen(side).tint)).toEqual(['nitrite', 'nitrite']);
    expect(seen(sides[0]).scale).toBe(seen(sides[1]).scale);
    expect(state()).toMatchObject({ step: 0, votes: [2, 0] });
    state().turnTint(-1);
    state().turnTint(-1);
    expect(seen(sides[1]).tint).toBe('pH');
  });

  it('shows nothing of the future until it is asked for', async () => {
    const { state, sides } = await shown();
    await state().forth();
    for (let i = 0; i < 100; i += 1) state().tick(0.1);
    expect(state().now_h).toBeLessThan(24);
    for (const side of sides) expect(seen(side).lived_h).toBeLessThan(24);
  });
});

describe('the one clock', () => {
  it('hurries to a moment and stands there, both loops in step all the way', async () => {
    const { state, sides } = await shown();
    state().goTo(2);
    expect(state().now_h).toBeLessThan(33);
    while (state().toward !== null) {
      state().tick(0.1);
      expect(sides.map((side) => seen(side).now_h)).toEqual([state().now_h, state().now_h]);
    }
    expect(state().now_h).toBe(33);
    expect(seen(sides[0]).speed).toBe('paused');
  });

  it('jumps where motion is unwelcome, and back in time at once', async () => {
    const { state, page } = await shown();
    state().goTo(3);
    settle(state);
    state().goTo(2);
    expect(state().now_h).toBe(33);
    page.getState().setReducedMotion(true);
    state().goTo(3);
    expect(state()).toMatchObject({ now_h: 81, toward: null });
  });

  it('plays to the end and stops; arrows move by days within the season', async () => {
    const { state } = await shown();
    state().play(true);
    settle(state);
    expect(state()).toMatchObject({ now_h: DAYS * 24, playing: false });
    state().nudge(1);
    expect(state().now_h).toBe(DAYS * 24);
    state().nudge(-1);
    expect(state().now_h).toBe((DAYS - 1) * 24);
    state().tick(0.25);
    state().nudge(-99);
    expect(state().now_h).toBe(0);
  });

  it('ends at the last noon of what is measured', async () => {
    const { state } = await shown();
    state().goTo(4);
    settle(state);
    expect(state().now_h).toBe(5 * 24 - 12);
  });
});

describe('votes and the reveal', () => {
  it('counts hands up and down, never below none nor beyond reason', async () => {
    const { state } = await shown();
    state().vote(1, 1);
    state().vote(1, 1);
    state().vote(0, -1);
    expect(state().votes).toEqual([0, 2]);
    state().setVotes(0, 7.4);
    state().setVotes(1, 1e9);
    state().setVotes(0, NaN);
    state().setVotes(5, 3);
    expect(state().votes).toEqual([7, MOST_VOTES]);
    expect(state().announcement).toContain('More');
  });

  it('keeps the votes through the turning points, and tells what the two seasons measured', async () => {
    const { state } = await shown();
    state().vote(1, 3);
    for (let step = 0; step < 4; step += 1) await state().forth();
    expect(state().votes).toEqual([0, 3]);
    expect(state().outcome).toEqual({ values: [2, 5], times: 2.5, choice: 'more' });
  });
});

describe('branches of the season at hand', () => {
  it('stand side by side: each with what was done in it', async () => {
    const { state, sides, page } = staged();
    await page.getState().openLesson('small.json', 'lesson');
    await page.getState().run();
    for (let day = 0; day < 3; day += 1) page.getState().stepDay();
    page.getState().scrub(24);
    page.getState().setAir('fish', 5);
    await new Promise((done) => setTimeout(done, 0));
    expect(seen(page).branches).toHaveLength(2);
    await state().showBranches(0, 1);
    const [before, after] = sides.map((side) => seen(side).plan?.actions ?? []);
    expect(before.some((action) => action.do === 'air')).toBe(false);
    expect(after.some((action) => action.do === 'air')).toBe(true);
    expect(state().shown?.demonstration.turningPoints[0]).toMatchObject({ day: 1 });
    expect(state().outcome?.choice).toBe('more');
  });

  it('are not shown where there is no season', async () => {
    const { state } = staged();
    await state().showBranches(0, 1);
    expect(state()).toMatchObject({ shown: null, busy: false });
  });
});
