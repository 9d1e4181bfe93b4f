// Which drawing belongs to which kind of stage. A new stage adds one line here and one file beside this one.
import type { KindDrawing } from '../kit/kit';
import { baseTank } from './baseTank';
import { beadFilter } from './beadFilter';
import { cartridgeFilter } from './cartridgeFilter';
import { conicalClarifier } from './conicalClarifier';
import { degassingTank } from './degassingTank';
import { nftChannel } from './nftChannel';
import { fineFilter } from './fineFilter';
import { fishTank } from './fishTank';
import { mediaBed } from './mediaBed';
import { movingBedBiofilter } from './movingBedBiofilter';
import { mineralisationTank } from './mineralisationTank';
import { radialFlowSettler } from './radialFlowSettler';
import { raftBed } from './raftBed';
import { returnPump } from './returnPump';
import { sandFilter } from './sandFilter';
import { drumFilter } from './drumFilter';
import { sump } from './sump';
import { swirlSeparator } from './swirlSeparator';
import { tower } from './tower';
import { tricklingFilter } from './tricklingFilter';
import { uvUnit } from './uvUnit';

export const stageDrawings: Readonly<Record<string, KindDrawing>> = {
  fishTank, radialFlowSettler, conicalClarifier, swirlSeparator, fineFilter, drumFilter, beadFilter, sandFilter, cartridgeFilter,
  degassingTank, movingBedBiofilter, tricklingFilter, raftBed, nftChannel, mediaBed, tower, sump, uvUnit,
  returnPump, mineralisationTank, baseDosing: baseTank,
};
