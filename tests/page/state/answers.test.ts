// Predict, observe, explain: asked before the days are lived, settled by the season's own figures, explained, and never in the way.
import { describe, expect, it } from 'vitest';
import { forgetful } from '../../../src/page/state/common/device';
import { answersIn, earlierOf } from '../../../src/page/state/path/keptAnswers';
import { watchAnswers } from '../../../src/page/state/path/watchAnswers';
import { createPageStore } from '../../../src/page/state/common/store';
import { askingLesson, judgedAs } from './asking';
import { fakeClient } from './fakeClient';
import { seen } from './seen';

const settle = async (): Promise<void> => {
  for (let i = 0; i < 20; i += 1) await Promise.resolve();
};

async function opened(days = 4) {
  const client = fakeClient(askingLesson(days));
  client.judged = judgedAs(7);
  const store = createPageStore(client);
  const state = () => seen(store);
  await state().openLesson('asking', 'good');
  return { client, store, state };
}

/** Through the first question into the season. */
async function running(days = 4) {
  const page = await opened(days);
  await page.state().run();
  page.state().predict('high', 'air', '');
  await settle();
  return page;
}

describe('a prediction', () => {
  it('is asked when the season is to begin, and the season begins once it is made', async () => {
    const { client, state } = await opened();
    await state().run();
    expect(state()).toMatchObject({ mode: 'build', question: { key: 'first', part: 'ask' } });
    expect(client.runs).toHaveLength(0);
    state().predict('high', 'air', '');
    await settle();
    expect(state()).toMatchObject({ mode: 'run', question: null, speed: 'day1' });
    expect(state().answers).toEqual([{ key: 'first', choice: 'high', reason: 'air', words: '', settled: null }]);
  });

  it('takes a choice of its own and a reason of its own only', async () => {
    const { state } = await opened();
    await state().run();
    state().predict('sideways', 'air', '');
    state().predict('high', 'because', '');
    expect(state().answers).toEqual([]);
    state().predict('high', null, `  ${'w'.repeat(300)} `);
    expect(state().answers[0].words).toBe('w'.repeat(200));
  });

  it('can be skipped, and the season begins all the same; nothing comes due', async () => {
    const { state } = await opened();
    await state().run();
    state().skipQuestion();
    await settle();
    state().setSpeed('paused');
    state().stepDay();
    expect(state().question?.key).toBe('second');
    state().skipQuestion();
    for (let day = 0; day < 3; day += 1) state().stepDay();
    expect(state()).toMatchObject({ mode: 'result', question: null });
    expect(state().answers.map(({ choice, settled }) => [choice, settled])).toEqual([
      [null, null],
      [null, null],
    ]);
  });

  it('is not asked again in a season where that was wished, but what was predicted is settled in silence', async () => {
    const { state } = await running();
    state().setSpeed('paused');
    state().stepDay();
    state().askNoMore();
    expect(state().question).toBeNull();
    for (let day = 0; day < 3; day += 1) state().stepDay();
    expect(state().mode).toBe('result');
    expect(state().answers).toHaveLength(1);
    expect(state().answers[0].settled?.outcome).toBe('high');
    state().backToBuild();
    expect(state()).toMatchObject({ answers: [], quiet: false });
    await state().run();
    expect(state().question?.key).toBe('first');
  });

  it('is never asked where a person wants none', async () => {
    const { client, state } = await opened();
    state().setPredicting(false);
    await state().run();
    expect(state()).toMatchObject({ mode: 'run', question: null });
    expect(client.runs).toHaveLength(1);
    state().backToBuild();
    expect(state().quiet).toBe(true);
  });
});

describe('the hour of a question', () => {
  it('stops the clock there and not past it, at every speed, and the clock waits', async () => {
    const { state } = await running();
    state().setSpeed('days5');
    for (let i = 0; i < 5; i += 1) state().tick(0.25);
    expect(state()).toMatchObject({ now_h: 24, lived_h: 24, speed: 'paused', question: { key: 'second', part: 'ask', resume: 'days5' } });
    state().setSpeed('day1');
    state().stepDay();
    expect(state().now_h).toBe(24);
    expect(state().announcement).toContain('prediction is open');
    state().predict('low', 'magic', '');
    expect(state()).toMatchObject({ question: null, speed: 'days5' });
  });

  it('is not asked where the stage it is about does not stand in the loop', async () => {
    const lesson = askingLesson();
    const store = createPageStore(
      fakeClient({
        ...lesson,
        predictions: lesson.predictions.map((one) => ({
          ...one,
          measure: { ...one.measure, score: undefined, stage: 'elsewhere', variable: 'O2_mg_L' },
        })),
      }),
    );
    await store.getState().openLesson('asking', 'good');
    await store.getState().run();
    expect(seen(store)).toMatchObject({ mode: 'run', question: null });
    for (let day = 0; day < 4; day += 1) store.getState().stepDay();
    expect(seen(store)).toMatchObject({ mode: 'result', question: null, answers: [] });
  });

  it('leaves a clock that was stopped by a step of a day where it is', async () => {
    const { state } = await running();
    state().setSpeed('day1');
    state().stepDay();
    expect(state()).toMatchObject({ now_h: 24, question: { key: 'second', resume: 'paused' } });
    state().skipQuestion();
    expect(state()).toMatchObject({ question: null, speed: 'paused' });
  });

  it('selects what there is to see and its tint when a prediction comes due', async () => {
    const { state } = await running();
    state().setSpeed('paused');
    state().stepDay();
    state().skipQuestion();
    state().stepDay();
    expect(state()).toMatchObject({ now_h: 48, selected: 'sump', tint: 'oxygen', question: { key: 'first', part: 'explain' } });
    expect(state().answers[0].settled).toMatchObject({ outcome: 'high', value: 7 });
  });

  it('comes at the end of the season too, before the result is all there is', async () => {
    const { state } = await running(2);
    state().setSpeed('paused');
    state().stepDay();
    state().skipQuestion();
    state().stepDay();
    expect(state()).toMatchObject({ mode: 'result', question: { key: 'first', part: 'explain' } });
    state().goOn();
    expect(state().question).toBeNull();
  });

  it('of two that come up at one hour, what is due comes first, then what is asked', async () => {
    const lesson = askingLesson();
    const client = fakeClient({ ...lesson, predictions: [{ ...lesson.predictions[0] }, { ...lesson.predictions[1], askDay: 2 }] });
    client.judged = judgedAs(7);
    const store = createPageStore(client);
    await store.getState().openLesson('asking', 'good');
    await store.getState().run();
    store.getState().predict('low', null, 'so');
    await settle();
    store.getState().setSpeed('paused');
    store.getState().stepDay();
    store.getState().stepDay();
    expect(seen(store).question).toMatchObject({ key: 'first', part: 'explain' });
    store.getState().goOn();
    expect(seen(store)).toMatchObject({ now_h: 48, question: { key: 'second', part: 'ask' } });
  });
});

describe('explaining', () => {
  async function due() {
    const page = await running();
    page.state().setSpeed('paused');
    page.state().stepDay();
    page.state().skipQuestion();
    page.state().stepDay();
    return page;
  }

  it('keeps the explanation, shows on until the person goes on, and is asked once', async () => {
    const { state } = await due();
    state().explain('nonsense');
    expect(state().answers[0].explained).toBeUndefined();
    state().explain('magic');
    expect(state().answers[0].explained).toBe('magic');
    expect(state().question).not.toBeNull();
    state().goOn();
    expect(state().question).toBeNull();
    expect(state().answers[0].explained).toBe('magic');
    state().stepDay();
    expect(state()).toMatchObject({ now_h: 72, question: null });
  });

  it('waits for the figures where the worker is not done', async () => {
    const page = await opened();
    page.client.holdVerdicts = true;
    page.client.judged = judgedAs(3);
    await page.state().run();
    page.state().predict('high', 'air', '');
    await settle();
    page.state().setSpeed('paused');
    page.state().stepDay();
    page.state().skipQuestion();
    page.state().stepDay();
    expect(page.state().answers[0].settled).toBeNull();
    page.state().explain('air');
    expect(page.state().answers[0].explained).toBeUndefined();
    page.client.release();
    await settle();
    expect(page.state().answers[0].settled?.outcome).toBe('low');
  });
});

describe('acting afterwards', () => {
  it('leaves what was settled as it is, and judges what is open on the new season', async () => {
    const { client, state } = await running();
    state().setSpeed('paused');
    state().stepDay();
    state().predict('low', 'air', '');
    state().stepDay();
    state().explain('air');
    state().goOn();
    client.judged = judgedAs(2);
    state().scrub(30);
    state().setAir('fish', 3);
    expect(state().judged).toBeNull();
    await settle();
    expect(state().judged?.predictions[0].value).toBe(2);
    state().stepDay();
    state().stepDay();
    expect(state().question).toMatchObject({ key: 'second', part: 'explain' });
    expect(state().answers.map(({ settled }) => settled?.value)).toEqual([7, 2]);
  });

  it('before the hour of an open question puts it off to its hour', async () => {
    const { state } = await running();
    state().setSpeed('paused');
    state().stepDay();
    expect(state().question?.key).toBe('second');
    state().scrub(3);
    state().setAir('fish', 3);
    expect(state().question).toBeNull();
    await settle();
    state().stepDay();
    expect(state()).toMatchObject({ now_h: 24, question: { key: 'second' } });
  });
});

describe('predictions on the device', () => {
  it('are kept once they are settled, and told in the next season', async () => {
    const device = forgetful();
    const { store, state } = await opened();
    watchAnswers(store, device);
    await state().run();
    state().predict('low', 'air', '');
    await settle();
    expect(device.read('loopwright.predictions')).toBeNull();
    state().setSpeed('paused');
    state().stepDay();
    state().skipQuestion();
    state().stepDay();
    state().explain('magic');
    expect(earlierOf(answersIn(device.read('loopwright.predictions')), 'small', 'first')).toEqual({
      choice: 'low',
      outcome: 'high',
      explained: 'magic',
    });
    expect(state().earlier).toEqual({});
    state().backToBuild();
    expect(earlierOf(state().earlier, 'small', 'first')?.outcome).toBe('high');
  });

  it.each([
    '',
    '{',
    '[]',
    '{"format":"loopwright.predictions/2"}',
    '{"format":"loopwright.predictions/1","lessons":{"a":{"b":{"choice":3}},"c":7}}',
  ])('a kept text that makes no sense (%s) is passed over', (text) => {
    expect(earlierOf(answersIn(text), 'a', 'b')).toBeNull();
  });
});
