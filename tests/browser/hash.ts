// A season's bits, as one hash: every hourly number, every extent, scores, events and the summary. The same text runs in Node and in a
// page.
import type { Plan } from '../../src/season/plan';
import type { SeasonAnswer } from '../../src/worker/messages';
import { createRuns } from '../../src/worker/engineRuns';
import { keptPlan, referencePlan } from '../season/plans';

/** SHA-256 of an answer's bytes, in hexadecimal. Stands alone, so that its text can be sent to a browser. */
export async function bitsOf(answer: Pick<SeasonAnswer, 'days' | 'summary'>): Promise<string> {
  const text = new TextEncoder();
  const parts: BlobPart[] = answer.days.flatMap(({ hourly, extents, scores, events }) => [
    hourly.slice(),
    extents.slice(),
    text.encode(JSON.stringify([scores, events])),
  ]);
  const bytes = await new Blob([...parts, text.encode(JSON.stringify(answer.summary))]).arrayBuffer();
  return Array.from(new Uint8Array(await crypto.subtle.digest('SHA-256', bytes)), (byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** Seasons whose bits are compared: weather, heat, deeds, power failure, every part of the plan format. */
export function comparedPlans(): Record<string, Plan> {
  const reference = referencePlan({ days: 20 });
  return {
    'the reference under open sky': {
      ...reference,
      climate: { ...reference.climate, water_C: undefined, weather: 0.8, spells: [{ day: 9, days: 3, air_C: 6 }] },
      actions: [
        ...reference.actions,
        { day: 8, hour: 10, do: 'exchange', stage: 'sump', fraction: 0.4 },
        { day: 12, hour: 2, do: 'power', on: false },
        { day: 12, hour: 9, do: 'power', on: true },
      ],
    },
    'a loop of every part': { ...keptPlan('every-part'), days: 20 },
  };
}

export const bitsInNode = (plan: Plan): Promise<string> => bitsOf(createRuns().run(plan, 0));

/** An expression for a browser: asks the page's own worker for a season and gives a promise of its bits. */
export const bitsExpression = (worker: string, plan: Plan): string => `(async () => {
  const bitsOf = ${bitsOf.toString()};
  const worker = new Worker(${JSON.stringify(worker)}, { type: 'module' });
  const reply = await new Promise((resolve, reject) => {
    worker.onmessage = ({ data }) => resolve(data);
    worker.onerror = ({ message }) => reject(new Error(message));
    worker.postMessage({ id: 1, request: { ask: 'run', plan: ${JSON.stringify(plan)}, keepDays: 0 } });
  });
  worker.terminate();
  if (reply.error) throw new Error(reply.error);
  return bitsOf(reply.answer);
})()`;
