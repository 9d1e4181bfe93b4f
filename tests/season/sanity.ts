// What must be true of every season whatever was built and done: numbers, no stored mass or water below zero, closed books, no hang.
import { ALK, NAMES, ROOT, STATES } from '../../src/model/components';
import type { Plan } from '../../src/season/plan';
import { Season } from '../../src/season/season';
import { VARIABLES } from '../../src/season/trajectory';

/** relative closure of every ledger line */
export const CLOSED = 1e-9;
/** mass clipped at zero, against the season's throughput */
export const CLIPPED = 1e-6;
/** stored mass below zero that is rounding, in the component's own unit */
const ROUNDING = 1e-12;

export interface Lived {
  /** what is wrong, in words; empty where nothing is */
  faults: string[];
  clipped: number;
  /** the component clipped most, by its throughput in nitrogen and oxygen demand */
  clippedMost: string;
  steps: number;
  cells: number;
  days: number;
  ms: number;
}

/**
 * Lives a plan to its end, or to its first fault, and tells what is wrong with it. Clipped mass is told apart.
 * @param budget_ms longest that the season may take
 */
export function liveSanely(plan: Plan, budget_ms = Infinity): Lived {
  const began = performance.now();
  const faults: string[] = [];
  const lived: Lived = { faults, clipped: 0, clippedMost: '', steps: 0, cells: 0, days: 0, ms: 0 };
  try {
    const season = new Season(plan);
    lived.cells = season.runtime.assembly.cells.length;
    while (season.day < plan.days && faults.length === 0) {
      const { day, hourly } = season.liveDay();
      faults.push(...[noNumberIn(hourly, season, day), belowZero(season, day)].filter((fault) => fault !== ''));
      if (performance.now() - began > budget_ms) faults.push(`day ${day}: still not done after ${budget_ms} ms`);
    }
    lived.days = season.day;
    if (faults.length === 0) faults.push(...unclosed(season));
    const { clipped, steps } = season.summary();
    lived.clipped = clipped;
    lived.steps = steps;
    lived.clippedMost = mostClipped(season);
  } catch (error) {
    faults.push(error instanceof Error ? error.message : String(error));
  }
  lived.ms = performance.now() - began;
  return lived;
}

const stageOf = (season: Season, cell: number): string => season.runtime.assembly.cells[cell].stage;

function noNumberIn(hourly: Float32Array, season: Season, day: number): string {
  const at = hourly.findIndex((value) => !Number.isFinite(value));
  if (at < 0) return '';
  const cells = season.runtime.assembly.cells.length;
  const row = Math.floor(at / VARIABLES.length);
  return `day ${day}, hour ${Math.floor(row / cells) + 1}: ${VARIABLES[at % VARIABLES.length]} of ${stageOf(season, row % cells)} is ${hourly[at]}`;
}

function belowZero(season: Season, day: number): string {
  const { y, volumes } = season.state;
  for (let i = 0; i < y.length; i++) {
    const component = i % STATES;
    // a strong acid's alkalinity is below zero; root health is an index
    if (component === ALK || component === ROOT) continue;
    if (!(y[i] >= -ROUNDING)) return `day ${day}: ${NAMES[component]} of ${stageOf(season, Math.floor(i / STATES))} is ${y[i]}`;
  }
  const dry = volumes.findIndex((volume) => !(volume > 0));
  return dry < 0 ? '' : `day ${day}: water of ${stageOf(season, dry)} is ${volumes[dry]} m³`;
}

function unclosed(season: Season): string[] {
  const { ledger, scores } = season.summary();
  const faults = ledger
    .filter(({ closure }) => !(Math.abs(closure) < CLOSED))
    .map(({ element, closure }) => `ledger of ${element} is open by ${closure}`);
  for (const score of ['fishHealth', 'harvest', 'stewardship'] as const)
    if (!(scores[score] >= 0 && scores[score] <= 100 + 1e-9)) faults.push(`${score} is ${scores[score]}`);
  return faults;
}

function mostClipped(season: Season): string {
  const { content } = season.runtime;
  const weigh = (i: number): number => (Math.abs(content[i][0]) + Math.abs(content[i][1])) * Math.abs(season.state.clipped[i]);
  const most = Array.from({ length: STATES }, (_, i) => i).sort((a, b) => weigh(b) - weigh(a))[0];
  return weigh(most) > 0 ? NAMES[most] : '';
}
