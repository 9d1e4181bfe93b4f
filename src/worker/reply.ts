// What the worker posts for a request: the answer or what went wrong, and the buffers that go over to the page.
import { SeasonError } from '../season/seasonError';
import type { Answers, FromWorker, Request, SeasonAnswer, ToWorker } from './messages';

type Answer = Answers[keyof Answers];
export interface Reply {
  message: FromWorker;
  transfer: ArrayBuffer[];
}

const isSeason = (answer: Answer): answer is SeasonAnswer => typeof answer === 'object' && 'initial' in answer;

/**
 * A season whose arrays are the page's own. The worker judges and compares seasons by their hours long after they were posted,
 * so it keeps its arrays and hands over copies of them: the page then takes a season without copying anything itself.
 */
function handedOver(season: SeasonAnswer, transfer: ArrayBuffer[]): SeasonAnswer {
  const own = <A extends Float32Array<ArrayBuffer> | Float64Array<ArrayBuffer>>(copy: A): A => {
    transfer.push(copy.buffer);
    return copy;
  };
  return {
    ...season,
    initial: own(Float32Array.from(season.initial)),
    sky: own(Float32Array.from(season.sky)),
    days: season.days.map((day) => ({ ...day, hourly: own(Float32Array.from(day.hourly)), extents: own(Float64Array.from(day.extents)) })),
  };
}

/** @param answer answers a request; what it throws is told with its message, and a season that cannot be lived further with its place */
export function replyTo({ id, request }: ToWorker, answer: (request: Request) => Answer): Reply {
  try {
    const found = answer(request);
    const transfer: ArrayBuffer[] = [];
    return { message: { id, answer: isSeason(found) ? handedOver(found, transfer) : found }, transfer };
  } catch (error) {
    const fault = error instanceof SeasonError ? { fault: error.fault } : {};
    return { message: { id, error: error instanceof Error ? error.message : String(error), ...fault }, transfer: [] };
  }
}
