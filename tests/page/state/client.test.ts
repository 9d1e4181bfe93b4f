// The page's end of the wire to the worker.
import { describe, expect, it } from 'vitest';
import { createClient, type Wire } from '../../../src/worker/client';
import type { FromWorker, ToWorker } from '../../../src/worker/messages';

function wire() {
  const sent: ToWorker[] = [];
  const onMessage: ((event: MessageEvent<FromWorker>) => void)[] = [];
  const onTrouble: ((event: Event) => void)[] = [];
  const end: Wire = {
    postMessage: (message) => void sent.push(message),
    addEventListener: (type: string, listener: unknown) => {
      if (type === 'message') onMessage.push(listener as (event: MessageEvent<FromWorker>) => void);
      else onTrouble.push(listener as (event: Event) => void);
    },
  };
  return {
    end,
    sent,
    answer: (data: FromWorker) => onMessage.forEach((listen) => listen({ data } as MessageEvent<FromWorker>)),
    breakDown: () => onTrouble.forEach((listen) => listen(new Event('error'))),
  };
}

describe('the client', () => {
  it('gives each answer to the one who asked, in whatever order they come', async () => {
    const { end, sent, answer } = wire();
    const client = createClient(end);
    const first = client.ask({ ask: 'catalogue' });
    const second = client.ask({ ask: 'openLesson', name: 'a', text: '', language: 'en' });
    answer({ id: sent[1].id, answer: { problems: [] } });
    answer({ id: sent[0].id, answer: [] });
    expect(await first).toEqual([]);
    expect(await second).toEqual({ problems: [] });
  });

  it('turns an error of the worker into a failure with its words', async () => {
    const { end, sent, answer } = wire();
    const asked = createClient(end).ask({ ask: 'catalogue' });
    answer({ id: sent[0].id, error: 'no such fish' });
    await expect(asked).rejects.toThrow('no such fish');
  });

  it('a worker that breaks down fails everything open and everything after', async () => {
    const { end, breakDown } = wire();
    const client = createClient(end);
    const open = client.ask({ ask: 'catalogue' });
    breakDown();
    await expect(open).rejects.toThrow();
    await expect(client.ask({ ask: 'catalogue' })).rejects.toThrow();
  });
});
