// Other worlds than the recorded one: parameters drawn from their ranges, and one at a time halved and doubled.
import { GROUPS } from '../../src/catalogue/values';
import type { Parameter } from '../../src/model/parameters/parameter';
import { drawParameters } from '../../src/season/ensemble';

export interface World {
  name: string;
  parameters: Record<string, number>;
}

const each = (): [path: string, parameter: Parameter][] =>
  Object.entries(GROUPS).flatMap(([group, parameters]) =>
    Object.entries(parameters).map(([name, parameter]): [string, Parameter] => [`${group}.${name}`, parameter]),
  );

/** Shares stay shares. */
const atMostOne = (parameter: Parameter, value: number): number =>
  parameter.unit.startsWith('share') && !parameter.unit.includes('/') ? Math.min(value, 1) : value;
/** A pH, a temperature, a power or a temperature factor means nothing halved. */
const halvable = (parameter: Parameter): boolean => parameter.fixed === undefined && !['pH', '°C', '1/°C', '–'].includes(parameter.unit);

/** So many worlds, every parameter that has a range drawn from it. */
export function drawnWorlds(count: number, seed: string): World[] {
  return Array.from({ length: count }, (_, i) => ({ name: `draw ${i + 1}`, parameters: drawParameters(seed, i) }));
}

/** For each calibrated or assumed constant that matches: the recorded world with it halved, and with it doubled. */
export function bentWorlds(behind: readonly RegExp[]): World[] {
  return each()
    .filter(
      ([path, parameter]) =>
        (parameter.flag === 'calibrated' || parameter.flag === 'assumption')
        && halvable(parameter)
        && behind.some((pattern) => pattern.test(path)),
    )
    .flatMap(([path, parameter]) =>
      [0.5, 2].map((times) => ({ name: `${path} ×${times}`, parameters: { [path]: atMostOne(parameter, parameter.value * times) } })),
    );
}
