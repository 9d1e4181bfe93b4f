// Plays variants on all cores: a thread takes the next one as soon as it is done with its last. Order in, order out.
import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import type { Plan } from '../season/plan';
import type { Ground, Outcome } from './playVariant';

/** One variant to be played, by its place in the row, and the answer. */
export interface Task {
  at: number;
  plan: Plan;
}
export interface Done {
  at: number;
  outcome: Outcome;
}

/** @param file what each thread runs: it reads the ground from its data and answers every task by what was done */
export function playOnThreads(file: string, ground: Ground, plans: readonly Plan[]): Promise<Outcome[]> {
  return new Promise((resolve, reject) => {
    const outcomes = new Map<number, Outcome>();
    const threads = Array.from({ length: Math.min(availableParallelism(), plans.length) }, () => new Worker(file, { workerData: ground }));
    const end = (): void => threads.forEach((thread) => void thread.terminate());
    let next = 0;
    const give = (thread: Worker): void => {
      if (next >= plans.length) return;
      thread.postMessage({ at: next, plan: plans[next] } satisfies Task);
      next += 1;
    };
    if (threads.length === 0) resolve([]);
    for (const thread of threads) {
      thread.on('message', ({ at, outcome }: Done) => {
        outcomes.set(at, outcome);
        if (outcomes.size < plans.length) return give(thread);
        end();
        resolve(plans.flatMap((_, place) => outcomes.get(place) ?? []));
      });
      thread.on('error', (failure) => {
        end();
        reject(failure);
      });
      give(thread);
    }
  });
}
