// Measures, their limits and their numbers in words. Pure.
import type { Measure, Plan, ProcessFacts, Statement } from '../../state/common/contract';
import { FORMATS, SHARES } from '../../../words/formats';
import { processName, processUnit } from '../../../words/processNames';
import { isWord, say } from '../../../words/say';
import { stageName } from '../../../words/stageNames';
import { figure, measured, massOf, toShown, unitOf, whole, withUnit } from '../../../words/units';

const MORE_DECIMALS = 2;

/** Goals in kilograms are answered in kilograms, fine enough to tell half a kilogram from six tenths. */
function kilogramsValue(value: number): string {
  const shown = toShown('kilograms', value);
  return `${figure(shown, shown < 10 ? 2 : 1)}\u00a0${unitOf('kilograms')}`;
}

function scoreValue(score: string, value: number): string {
  if (!Number.isFinite(value)) return figure(value, 0);
  if (score === 'survival' || score === 'meanWelfare') return withUnit('welfare', value);
  if (score.endsWith('_kg')) return kilogramsValue(Math.max(0, value));
  if (score.endsWith('_g')) return massOf(Math.max(0, value));
  if (score === 'waterUsed_L') return withUnit('water_L', value);
  if (score === 'energy_kWh' || score === 'work_h') return withUnit(score, value);
  return whole(value);
}

/** A small number keeps two figures that count, so that it can be compared with another small one. */
function fineValue(variable: string, value: number): string {
  const shown = toShown(variable, value);
  const decimals = FORMATS[variable]?.decimals ?? 2;
  if (SHARES.has(variable) || !(shown > 0) || shown >= 10 ** (1 - decimals)) return withUnit(variable, value);
  const unit = unitOf(variable);
  return `${figure(shown, Math.min(decimals + MORE_DECIMALS, 1 - Math.floor(Math.log10(shown))))}${unit === '' ? '' : `\u00a0${unit}`}`;
}

/** The number of a measure with its unit. @param facts say what a process is counted in */
export function measureValue(asked: Measure, value: number, facts: ProcessFacts | null): string {
  if (asked.score !== undefined) return scoreValue(asked.score, value);
  if (asked.process !== undefined) {
    const unit = processUnit(facts?.units[asked.process] ?? '');
    return unit === '' ? measured(value, 2) : `${measured(value, 2)}\u00a0${unit}`;
  }
  // a handful of fish is counted; a mean of a count is not
  if (asked.variable === 'number' && asked.statistic === 'mean') return measured(value, 1);
  return fineValue(asked.variable ?? '', value);
}

/** The name of a quantity as it stands in a heading. */
function named(prefix: 'variable' | 'score', name: string): string {
  const key = `${prefix}.${name}`;
  return isWord(key) ? say(key) : name;
}

function whenWords({ fromDay, toDay }: Measure): string {
  if (toDay === undefined) return fromDay > 0 ? say('measure.from', { from: fromDay }) : say('measure.whole');
  return fromDay > 0 ? say('measure.between', { from: fromDay, to: toDay }) : say('measure.to', { to: toDay });
}

/** What is measured, where, how and when. */
export function measureWords(asked: Measure, plan: Plan): string {
  const when = whenWords(asked);
  if (asked.score !== undefined) return say('measure.score', { what: named('score', asked.score), when });
  const stage = stageName([...plan.loop, ...plan.side], asked.stage ?? '');
  if (asked.process !== undefined) return say('measure.process', { process: processName(asked.process), stage, when });
  return say('measure.at', { what: named('variable', asked.variable ?? ''), stage, statistic: say(`measure.${asked.statistic}`), when });
}

/** The limits a statement keeps, with units. */
export function limitWords(asked: Statement, facts: ProcessFacts | null): string {
  const [low, high] = [asked.atLeast, asked.atMost].map((limit) => (limit === undefined ? null : measureValue(asked, limit, facts)));
  if (low !== null && high !== null) return say('measure.within', { low, high });
  if (low !== null) return say('measure.atLeast', { value: low });
  return high === null ? say('measure.none') : say('measure.atMost', { value: high });
}

/** A ratio as a person says it: no more digits than it is worth. */
export function timesWords(times: number): string {
  return measured(times, times < 1 ? 2 : 1);
}
