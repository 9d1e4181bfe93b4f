// The page's end of the wire to the worker: sends a request, resolves with the one answer that carries its id.
import type { Answers, BreakDown, FromWorker, Request, ToWorker } from './messages';

/** What is asked of a worker; a real Worker fits, and so does anything that posts and listens alike. */
export interface Wire {
  postMessage(message: ToWorker): void;
  addEventListener(type: 'message', listener: (event: MessageEvent<FromWorker>) => void): void;
  addEventListener(type: 'error' | 'messageerror', listener: (event: Event) => void): void;
}

export interface Client {
  /**
   * Asks the worker one thing.
   * @returns the answer to that request
   * @throws Error with the worker's own message when it could not answer, and with the fault of a season that cannot be lived further; the
   *   same for every open request when the worker breaks down
   */
  ask<R extends Request>(request: R): Promise<Answers[R['ask']]>;
}

interface Waiting {
  resolve(answer: Answers[keyof Answers]): void;
  reject(reason: Error): void;
}

/** Wraps a worker that answers the requests of messages.ts. */
export function createClient(worker: Wire): Client {
  const waiting = new Map<number, Waiting>();
  let nextId = 1;
  let broken: Error | null = null;

  const breakDown = (reason: BreakDown | string): void => {
    broken = new Error(reason);
    for (const one of waiting.values()) one.reject(broken);
    waiting.clear();
  };

  worker.addEventListener('message', (event) => {
    const message = event.data;
    const one = waiting.get(message.id);
    if (one === undefined) return;
    waiting.delete(message.id);
    if ('error' in message) one.reject(Object.assign(new Error(message.error), message.fault && { fault: message.fault }));
    else one.resolve(message.answer);
  });
  worker.addEventListener('error', (event) =>
    breakDown(
      'message' in event && typeof event.message === 'string' && event.message !== ''
        ? event.message
        : ('workerStopped' satisfies BreakDown),
    ),
  );
  worker.addEventListener('messageerror', () => breakDown('workerUnreadable'));

  return {
    ask<R extends Request>(request: R): Promise<Answers[R['ask']]> {
      if (broken !== null) return Promise.reject(broken);
      const id = nextId;
      nextId += 1;
      return new Promise<Answers[R['ask']]>((resolve, reject) => {
        waiting.set(id, { resolve: (answer) => resolve(answer as Answers[R['ask']]), reject });
        worker.postMessage({ id, request });
      });
    },
  };
}
