// Finds a kind of stage by its name.
import type { StageType } from '../model/stages/stageType';
import { STAGES } from './kinds';

const known: ReadonlyMap<string, StageType> = new Map(STAGES.map((stage) => [stage.kind, stage]));

/** @throws RangeError where the kind is not in the catalogue */
export function stageType(kind: string): StageType {
  const found = known.get(kind);
  if (!found) throw new RangeError(`stage kind ${kind} is not in the catalogue`);
  return found;
}
