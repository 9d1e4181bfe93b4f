// How a season crosses from the worker to the page: its arrays are handed over, and the worker still judges it by its own.
import { MessageChannel } from 'node:worker_threads';
import { describe, expect, it } from 'vitest';
import { createClient, type Wire } from '../../src/worker/client';
import { createRuns } from '../../src/worker/engineRuns';
import type { Request, ToWorker } from '../../src/worker/messages';
import { replyTo, type Reply } from '../../src/worker/reply';
import { referencePlan } from '../season/plans';

const plan = referencePlan({ days: 3 });

/** A worker's end and the client's, joined by a channel of the platform; what was posted is kept to be looked at. */
function joined(answer: (request: Request) => ReturnType<ReturnType<typeof createRuns>['run']>) {
  const { port1: worker, port2: page } = new MessageChannel();
  const posted: Reply[] = [];
  worker.on('message', (message: ToWorker) => {
    const reply = replyTo(message, answer);
    worker.postMessage(reply.message, reply.transfer);
    posted.push(reply);
  });
  const wire: Wire = {
    postMessage: (message) => page.postMessage(message),
    addEventListener: (type: string, listener: (event: never) => void) => {
      if (type === 'message') page.on('message', (data: unknown) => listener({ data } as never));
    },
  };
  return { client: createClient(wire), posted, close: () => worker.close() };
}

describe('a season from the worker', () => {
  it("arrives with all its arrays handed over, none of them left on the worker's side, and worth what the worker keeps", async () => {
    const runs = createRuns();
    const { client, posted, close } = joined((request) => runs.run(request.ask === 'run' ? request.plan : plan, 0));
    const arrived = await client.ask({ ask: 'run', plan, keepDays: 0 });
    close();
    const [{ message, transfer }] = posted;
    if (!('answer' in message) || Array.isArray(message.answer) || typeof message.answer !== 'object' || !('initial' in message.answer))
      throw new Error('no season was posted');
    const sent = message.answer;
    const arrays = [sent.initial, sent.sky, ...sent.days.flatMap(({ hourly, extents }) => [hourly, extents])];
    expect(arrays.map(({ byteLength }) => byteLength)).toEqual(arrays.map(() => 0));
    expect(transfer).toHaveLength(2 + 2 * plan.days);
    const kept = runs.run(plan, 0);
    expect(arrived).toEqual(kept);
    expect(kept.days[0].hourly.byteLength).toBeGreaterThan(0);
  });

  it('can be asked for again, and each time comes in arrays of its own', async () => {
    const runs = createRuns();
    const { client, close } = joined(() => runs.run(plan, 0));
    const first = await client.ask({ ask: 'run', plan, keepDays: 0 });
    const again = await client.ask({ ask: 'run', plan, keepDays: 0 });
    close();
    expect(again).toEqual(first);
    first.days[0].hourly.fill(0);
    expect(again.days[0].hourly.some((value) => value !== 0)).toBe(true);
  });

  it('that cannot be lived comes as words', async () => {
    const { client, close } = joined(() => {
      throw new Error('no water');
    });
    await expect(client.ask({ ask: 'run', plan, keepDays: 0 })).rejects.toThrow('no water');
    close();
  });
});
