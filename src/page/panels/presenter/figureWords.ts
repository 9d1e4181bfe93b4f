// The large numbers in words: what they are, where, and both sides with the same decimals so that they compare.
import { figureAt, type Figure } from '../../state/presenter/pairFigures';
import { decimalsFor } from '../../state/presenter/pairScale';
import type { Shown } from '../../state/presenter/presenterState';
import type { Measure, Plan } from '../../state/common/contract';
import { isWord, say } from '../../../words/say';
import { stageName } from '../../../words/stageNames';
import { figure as digits, toShown, unitOf } from '../../../words/units';

/** Quantities by which scores are counted, where they are not of a hundred. */
const SCORE_UNITS: Readonly<Record<string, string>> = {
  plants_kg: 'kilograms',
  gain_kg: 'kilograms',
  plantsIdeal_kg: 'kilograms',
  gainIdeal_kg: 'kilograms',
  waterUsed_L: 'water_L',
  nitrogenDischarged_g: 'grams',
  solidsDischarged_g: 'grams',
  energy_kWh: 'energy_kWh',
  work_h: 'work_h',
  survival: 'welfare',
  meanWelfare: 'welfare',
};
const COUNTED: ReadonlySet<string> = new Set(['number', 'fishHealth', 'harvest', 'stewardship']);

/** alike: both figures are of one quantity, so that their places tell them apart. */
export interface FigureText {
  name: string;
  place: string;
  alike: boolean;
  unit: string;
  values: [string, string];
}

const named = (key: string, name: string): string => (isWord(key) ? say(key) : name);

/** Two numbers of one kind as shown: with the decimals that the larger of them needs. */
export function alike(quantity: string, left: number, right: number): [string, string] {
  const share = unitOf(quantity) === '%';
  const shown = [left, right].map((value) => (share ? 100 * value : toShown(quantity, value)));
  const most = Math.max(...shown.map((value) => (Number.isFinite(value) ? Math.abs(value) : 0)));
  const decimals = share || COUNTED.has(quantity) ? 0 : quantity === 'pH' ? 1 : decimalsFor(most);
  return [digits(shown[0], decimals), digits(shown[1], decimals)];
}

function quantityOf(figure: Figure): { quantity: string; unit: string } {
  const quantity = figure.kind === 'reading' ? figure.name : (SCORE_UNITS[figure.score] ?? figure.score);
  return { quantity, unit: figure.kind === 'score' && SCORE_UNITS[figure.score] === undefined ? '' : unitOf(quantity) };
}

const alikeIn = ({ figures: [a, b] }: Shown): boolean => a.kind === 'reading' && b.kind === 'reading' && a.name === b.name;

/**
 * One figure of both loops at an hour. Its place is named where it is not the stage that all eyes are led to, or where two figures are of
 * one quantity.
 */
export function figureTold(figure: Figure, shown: Shown, now_h: number): FigureText {
  const { quantity, unit } = quantityOf(figure);
  const plan: Plan = shown.plans[0];
  return {
    name: figure.kind === 'reading' ? named(`variable.${figure.name}`, figure.name) : named(`score.${figure.score}`, figure.score),
    place:
      figure.kind === 'reading' && figure.name !== 'number' && (figure.stage !== shown.demonstration.look || alikeIn(shown))
        ? stageName([...plan.loop, ...plan.side], figure.stage)
        : '',
    alike: alikeIn(shown),
    unit,
    values: alike(quantity, figureAt(figure, shown.seasons[0], now_h), figureAt(figure, shown.seasons[1], now_h)),
  };
}

/** The numbers that settle the question. A process is counted in a unit of its own, which its words do not say. */
export function measuredTold(measure: Measure, values: readonly [number, number]): { values: [string, string]; unit: string } {
  const quantity = measure.score !== undefined ? (SCORE_UNITS[measure.score] ?? measure.score) : (measure.variable ?? '');
  return {
    values: alike(quantity, values[0], values[1]),
    unit: measure.score !== undefined && SCORE_UNITS[measure.score] === undefined ? '' : unitOf(quantity),
  };
}
