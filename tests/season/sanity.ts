// What must be true of every season whatever was built and done: numbers, no stored mass below zero, closed books.
import { expect } from 'vitest';
import { ALK, NAMES, ROOT, STATES } from '../../src/model/components';
import type { Plan } from '../../src/season/plan';
import { Season } from '../../src/season/season';
import type { DayChunk } from '../../src/season/trajectory';

/** relative closure of every ledger line */
export const CLOSED = 1e-9;
/** mass clipped at zero, against the season's throughput */
export const CLIPPED = 1e-6;

export interface Lived { season: Season; days: DayChunk[]; clipped: number }

/** Lives a plan and asserts what holds for every season. Clipping is returned, and asserted apart. */
export function liveSanely(plan: Plan): Lived {
  const season = new Season(plan);
  const days: DayChunk[] = [];
  while (season.day < plan.days) {
    const chunk = season.liveDay();
    days.push(chunk);
    chunk.hourly.forEach((value, i) => { if (!Number.isFinite(value)) throw new Error(`day ${chunk.day}: output ${i} is ${value}`); });
    season.state.y.forEach((mass, i) => {
      const component = i % STATES;
      if (component === ALK || component === ROOT) return;
      if (!(mass >= -1e-12)) throw new Error(`day ${chunk.day}: ${NAMES[component]} of cell ${Math.floor(i / STATES)} is ${mass}`);
    });
  }
  const summary = season.summary();
  for (const line of summary.ledger) expect(Math.abs(line.closure), `ledger ${line.element}`).toBeLessThan(CLOSED);
  const { fishHealth, harvest, stewardship } = summary.scores;
  for (const score of [fishHealth, harvest, stewardship]) {
    expect(score).toBeGreaterThanOrEqual(0);
    expect(score).toBeLessThanOrEqual(100 + 1e-9);
  }
  return { season, days, clipped: summary.clipped };
}
