// All process definitions in the order their rates stand in, and the stoichiometric columns closed from them.
import { closeColumn } from '../continuity';
import type { Column } from '../continuity';
import type { Values } from '../parameters/values';
import type { Definition } from './definition';
import { FAMILIES } from './families';
import { WHERE } from './where';
import type { Where } from './where';

export const whereOf = (definition: Definition): Where => definition.where ?? 'everywhere';

/** Processes that run in the same cells stand together, so that what cannot run is passed over whole; then goes the families' order. */
function ordered(definitions: readonly Definition[]): Definition[] {
  return (Object.keys(WHERE) as Where[]).flatMap((where) => definitions.filter((definition) => whereOf(definition) === where));
}

export const DEFINITIONS: readonly Definition[] = ordered(FAMILIES.flatMap(({ definitions }) => definitions));

/** The closed columns, in the order of DEFINITIONS. @param content table of content.ts */
export function closedColumns(values: Values, content: readonly Float64Array[]): Column[] {
  return DEFINITIONS.map((definition) => {
    const stoichiometry = { fixed: new Map(definition.fixed(values)), unknowns: definition.unknowns };
    const last = content[0].length - 1;
    return closeColumn(
      definition.id,
      stoichiometry,
      definition.fromOutside ? content.map((row) => row.map((v, e) => (e === last ? v : 0))) : content,
    );
  });
}
