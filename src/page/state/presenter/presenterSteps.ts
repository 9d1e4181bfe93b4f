// The steps of one demonstration in front of a class, in order: question, votes, its turning points, reveal. Pure.
import type { Demonstration } from '../../../lessons/lesson';

export type Step = { kind: 'question' } | { kind: 'votes' } | { kind: 'moment'; index: number } | { kind: 'reveal' };

export function stepsOf(shown: Pick<Demonstration, 'turningPoints'>): Step[] {
  return [
    { kind: 'question' },
    { kind: 'votes' },
    ...shown.turningPoints.map((_, index): Step => ({ kind: 'moment', index })),
    { kind: 'reveal' },
  ];
}

const NOON = 12;

/**
 * The hour that both loops show at a step, by daylight: the first noon while the class thinks (the very start where the first day already
 * tells), the last noon of what is measured when all is told.
 */
export function hourAt(step: Step, shown: Pick<Demonstration, 'turningPoints' | 'measure'>, days: number): number {
  const hours = shown.turningPoints.map(({ day, hour }) => Math.min(days * 24, day * 24 + hour));
  switch (step.kind) {
    case 'question':
    case 'votes':
      return hours[0] < 24 ? 0 : NOON;
    case 'moment':
      return hours[step.index];
    case 'reveal':
      return Math.max(24 * (shown.measure.toDay ?? days) - NOON, ...hours);
  }
}
