// The catalogue: every kind of stage there is. A new stage is its own file, one line here, its drawing and its words.
import { beadFilter } from './beadFilter';
import { cartridgeFilter } from './cartridgeFilter';
import { conicalClarifier } from './conicalClarifier';
import { degassingTank } from './degassingTank';
import { nftChannel } from './nftChannel';
import { fineFilter } from './fineFilter';
import { fishTank } from './fishTank';
import { mediaBed } from './mediaBed';
import { mineralisationTank } from './mineralisationTank';
import { movingBedBiofilter } from './movingBedBiofilter';
import { radialFlowSettler } from './radialFlowSettler';
import { raftBed } from './raftBed';
import { returnPump } from './returnPump';
import { sandFilter } from './sandFilter';
import { drumFilter } from './drumFilter';
import type { StageType } from './stageType';
import { sump } from './sump';
import { swirlSeparator } from './swirlSeparator';
import { tower } from './tower';
import { tricklingFilter } from './tricklingFilter';
import { uvUnit } from './uvUnit';

export const STAGES: readonly StageType[] = [
  fishTank,
  conicalClarifier, swirlSeparator, radialFlowSettler, drumFilter, fineFilter, beadFilter, sandFilter, cartridgeFilter,
  degassingTank, movingBedBiofilter, tricklingFilter, mineralisationTank,
  raftBed, nftChannel, mediaBed, tower,
  sump, returnPump,
  uvUnit,
];

/** @throws RangeError where the kind is not in the catalogue */
export function stageType(kind: string): StageType {
  const found = STAGES.find((stage) => stage.kind === kind);
  if (!found) throw new RangeError(`stage kind ${kind} is not in the catalogue`);
  return found;
}
