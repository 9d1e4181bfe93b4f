// All process definitions in catalogue order, and the stoichiometric matrix closed from them.
import { closeColumn } from '../continuity';
import type { Column } from '../continuity';
import type { Values } from '../parameters/values';
import { PROCESS_NAMES } from './catalogue';
import type { Definition } from './definition';
import { dosingDefinitions } from './dosing';
import { filmDefinitions } from './film';
import { fishDefinitions } from './fish';
import { gasDefinitions } from './gas';
import { hydrolysisDefinitions } from './hydrolysis';
import { freeBacteriaDefinitions } from './freeBacteria';
import { plantDefinitions } from './plants';
import { sludgeDefinitions } from './sludge';
import { solidsDefinitions } from './solids';

const all = [...filmDefinitions, ...hydrolysisDefinitions, ...sludgeDefinitions, ...solidsDefinitions, ...gasDefinitions, ...fishDefinitions, ...plantDefinitions, ...freeBacteriaDefinitions, ...dosingDefinitions];

/** Definitions, in the order of PROCESS_NAMES. */
export const DEFINITIONS: readonly Definition[] = PROCESS_NAMES.map((name) => {
  const found = all.find((definition) => definition.id === name);
  if (!found) throw new Error(`process ${name} has no definition`);
  return found;
});

/** The closed columns, in the order of PROCESS_NAMES. @param content table of content.ts */
export function closedColumns(values: Values, content: readonly Float64Array[]): Column[] {
  return DEFINITIONS.map((definition) => {
    const stoichiometry = { fixed: new Map(definition.fixed(values)), unknowns: definition.unknowns };
    return closeColumn(definition.id, stoichiometry, definition.fromOutside ? content.map((row) => row.map((v, e) => (e === row.length - 1 ? v : 0))) : content);
  });
}
