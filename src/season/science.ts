// What the numbers of a run make of the science: content of every component, closed columns, the matrix. That of the recorded numbers
// is made once for all seasons: nothing in it changes while they run.
import { closeColumn } from '../model/continuity';
import type { Column } from '../model/continuity';
import { ALK, CA, CF, CI, FE, GUT, IC, K, MG, P, SO4, SS, TAN } from '../model/components';
import { contentTable, dryMass } from '../model/content';
import { layMatrix } from '../model/network/matrix';
import type { Matrix } from '../model/network/matrix';
import { valuesWith } from '../catalogue/values';
import type { Values } from '../model/parameters/values';
import { closedColumns } from '../model/processes/definitions';

export interface Science {
  values: Values;
  /** what a unit of each component holds of each element; g dry per unit */
  content: Float64Array[];
  dry: Float64Array;
  matrix: Matrix;
  /** feed not eaten: it sinks as coarse solids, mostly fast to rot */
  uneaten: Column;
}

let recorded: Science | undefined;

/**
 * @param parameters in place of the recorded values, by `group.name`
 * @throws RangeError where a name is unknown or a value is not finite
 */
export function scienceWith(parameters: Readonly<Record<string, number>>): Science {
  if (Object.keys(parameters).length > 0) return make(parameters);
  return (recorded ??= make({}));
}

function make(parameters: Readonly<Record<string, number>>): Science {
  const values = valuesWith(parameters);
  const content = contentTable(values);
  const { feedCOD } = values.matter;
  const { uneatenFast, uneatenInert } = values.practice;
  const uneaten = closeColumn(
    'uneatenFeed',
    {
      fixed: new Map([
        [GUT, -1],
        [CF, uneatenFast * feedCOD],
        [CI, uneatenInert * feedCOD],
      ]),
      unknowns: [SS, TAN, P, K, CA, MG, FE, SO4, IC, ALK],
    },
    content,
  );
  return { values, content, dry: dryMass(values), matrix: layMatrix(closedColumns(values, content)), uneaten };
}
