// Which drawing belongs to which kind of stage. A new stage adds one line here and one file beside this one.
import type { StageDrawing } from '../kit/kit';
import { beadFilter } from './beadFilter';
import { cartridgeFilter } from './cartridgeFilter';
import { conicalClarifier } from './conicalClarifier';
import { degassingTank } from './degassingTank';
import { nftChannel } from './nftChannel';
import { fineFilter } from './fineFilter';
import { fishTank } from './fishTank';
import { mediaBed } from './mediaBed';
import { movingBedBiofilter } from './movingBedBiofilter';
import { plainVessel } from '../kit/plainVessel';
import { radialFlowSettler } from './radialFlowSettler';
import { raftBed } from './raftBed';
import { sandFilter } from './sandFilter';
import { drumFilter } from './drumFilter';
import { sump } from './sump';
import { swirlSeparator } from './swirlSeparator';
import { tower } from './tower';
import { tricklingFilter } from './tricklingFilter';
import { uvUnit } from './uvUnit';

const DRAWINGS: Readonly<Record<string, StageDrawing>> = {
  fishTank, radialFlowSettler, conicalClarifier, swirlSeparator, fineFilter, drumFilter, beadFilter, sandFilter, cartridgeFilter,
  degassingTank, movingBedBiofilter, tricklingFilter, raftBed, nftChannel, mediaBed, tower, sump, uvUnit,
};

/** The drawing of a kind of stage; a kind without its own is drawn as a plain vessel. */
export function drawingOf(kind: string): StageDrawing {
  return DRAWINGS[kind] ?? plainVessel;
}
