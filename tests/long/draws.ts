// Other worlds than the recorded one: parameters drawn from their ranges, and one at a time halved and doubled.
import { GROUPS } from '../../src/model/parameters/values';
import type { Parameter } from '../../src/model/parameters/parameter';
import { stream } from '../../src/numerics/streams';

export interface World { name: string; parameters: Record<string, number> }

const SWEPT = ['kinetics'] as const;

const each = (): [path: string, parameter: Parameter][] => SWEPT.flatMap((group) => Object.entries(GROUPS[group]).map(([name, parameter]): [string, Parameter] => [`${group}.${name}`, parameter]));

/** Shares stay shares. */
const atMostOne = (parameter: Parameter, value: number): number => (parameter.unit.startsWith('share') && !parameter.unit.includes('/') ? Math.min(value, 1) : value);
/** A pH, a share near one or a temperature factor means nothing halved. */
const halvable = (parameter: Parameter): boolean => parameter.unit !== 'pH' && parameter.unit !== '1/°C';

/** So many worlds, every kinetic parameter drawn evenly from its range. */
export function drawnWorlds(count: number, seed = 'wide-sweep'): World[] {
  const draw = stream(seed, 'parameters');
  return Array.from({ length: count }, (_, i) => ({
    name: `draw ${i + 1}`,
    parameters: Object.fromEntries(each().map(([path, { low, high }]) => [path, low + (high - low) * draw()])),
  }));
}

/** For each calibrated or assumed constant that matches: the recorded world with it halved, and with it doubled. */
export function bentWorlds(behind: readonly RegExp[]): World[] {
  return each().filter(([path, parameter]) => (parameter.flag === 'calibrated' || parameter.flag === 'assumption') && halvable(parameter) && behind.some((pattern) => pattern.test(path)))
    .flatMap(([path, parameter]) => [0.5, 2].map((times) => ({ name: `${path} ×${times}`, parameters: { [path]: atMostOne(parameter, parameter.value * times) } })));
}
