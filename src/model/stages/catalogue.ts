// The catalogue: every kind of stage there is. A new stage is its own file, one line here, its drawing and its words.
import { degassingTank } from './degassingTank';
import { fineFilter } from './fineFilter';
import { fishTank } from './fishTank';
import { mineralisationTank } from './mineralisationTank';
import { radialFlowSettler } from './radialFlowSettler';
import { raftBed } from './raftBed';
import { returnPump } from './returnPump';
import type { StageType } from './stageType';
import { sump } from './sump';

export const STAGES: readonly StageType[] = [fishTank, radialFlowSettler, fineFilter, degassingTank, mineralisationTank, raftBed, sump, returnPump];

/** @throws RangeError where the kind is not in the catalogue */
export function stageType(kind: string): StageType {
  const found = STAGES.find((stage) => stage.kind === kind);
  if (!found) throw new RangeError(`stage kind ${kind} is not in the catalogue`);
  return found;
}
