// Sheets and sizes as chosen, and the key: asked for once, never for a lesson that is no longer open.
import { describe, expect, it } from 'vitest';
import type { Played } from '../../../src/lessons/playLesson';
import type { Client } from '../../../src/page/state/common/state';
import { createPageStore } from '../../../src/page/state/common/store';
import type { Answers, Request } from '../../../src/worker/messages';
import { fakeClient, smallLesson, smallPlan } from './fakeClient';
import { changeBuild } from './seen';

const PLAYED: Played[] = [
  { role: 'reference', key: 'reference', title: '', fishHealth: 91, harvest: 77, marks: 3, shown: [], asked: [], passes: true },
];

function keyClient(): Client & { asked: Request['ask'][]; fails: boolean } {
  const fake = fakeClient();
  const client = {
    asked: [] as Request['ask'][],
    fails: false,
    async ask<R extends Request>(request: R): Promise<Answers[R['ask']]> {
      client.asked.push(request.ask);
      if (request.ask === 'play') {
        if (client.fails) throw new Error('no');
        return PLAYED as Answers[R['ask']];
      }
      if (request.ask === 'build') return smallPlan() as Answers[R['ask']];
      return fake.ask(request);
    },
  };
  return client;
}

describe('the key', () => {
  it('holds the builds as played and the season of the reference, and is asked for once', async () => {
    const client = keyClient();
    const store = createPageStore(client);
    await store.getState().openLesson('small', '{}');
    await Promise.all([store.getState().workOutKey(), store.getState().workOutKey()]);
    await store.getState().workOutKey();
    const { key } = store.getState().paper;
    expect(key?.played).toBe(PLAYED);
    expect(key?.season.days).toHaveLength(4);
    expect(client.asked.filter((ask) => ask === 'play')).toHaveLength(1);
  });

  it('is dropped when another lesson is opened meanwhile, and worked out for that one', async () => {
    const client = keyClient();
    const store = createPageStore(client);
    await store.getState().openLesson('small', '{}');
    const first = store.getState().workOutKey();
    changeBuild(store, { lesson: { ...smallLesson(), title: 'Another' } });
    await first;
    expect(store.getState().paper.key).toBeNull();
    await store.getState().workOutKey();
    expect(store.getState().paper.key?.lesson.title).toBe('Another');
  });

  it('that cannot be worked out is a failure in words, and can be asked for again', async () => {
    const client = keyClient();
    const store = createPageStore(client);
    await store.getState().openLesson('small', '{}');
    client.fails = true;
    await store.getState().workOutKey();
    expect(store.getState().failure).toContain('no');
    client.fails = false;
    await store.getState().workOutKey();
    expect(store.getState().paper.key).not.toBeNull();
  });
});

describe('what is chosen', () => {
  it('changes alone', () => {
    const store = createPageStore(keyClient());
    store.getState().choosePaper({ size: 'Letter' });
    store.getState().choosePaper({ sheet: 'season', version: 2 });
    expect(store.getState().paper).toMatchObject({ size: 'Letter', sheet: 'season', version: 2 });
  });
});
