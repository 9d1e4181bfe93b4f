// The table of an ensemble: a column `day`, then each stage's quantities, one column a quantile; one row a day.
import type { Ensemble } from '../season/ensemble';
import type { Column } from './seasonTable';

/** Columns `<stage>.<variable>.p10` and so on. A band that never leaves zero says nothing of its stage, and is left out. */
export function bandTable({ bands, quantiles }: Ensemble): Column[] {
  const days = bands[0]?.levels[0]?.length ?? 0;
  const told = bands.filter(({ levels }) => levels.some((level) => level.some((value) => value !== 0)));
  return [
    { name: 'day', values: Array.from({ length: days }, (_, day) => day) },
    ...told.flatMap(({ stage, variable, levels }) =>
      levels.map((level, q): Column => ({ name: `${stage}.${variable}.p${Math.round(100 * quantiles[q])}`, values: [...level] })),
    ),
  ];
}
