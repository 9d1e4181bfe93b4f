// Which drawing belongs to which kind of stage. A new stage adds one line here and one file beside this one.
import type { StageDrawing } from '../kit/kit';
import { beadFilter } from './beadFilter';
import { cartridgeFilter } from './cartridgeFilter';
import { coneSettler } from './coneSettler';
import { degassingTank } from './degassingTank';
import { filmChannel } from './filmChannel';
import { fineFilter } from './fineFilter';
import { fishTank } from './fishTank';
import { mediaBed } from './mediaBed';
import { movingBed } from './movingBed';
import { plainVessel } from '../kit/plainVessel';
import { radialFlowSettler } from './radialFlowSettler';
import { raftBed } from './raftBed';
import { sandFilter } from './sandFilter';
import { screenFilter } from './screenFilter';
import { sump } from './sump';
import { swirlSeparator } from './swirlSeparator';
import { tower } from './tower';
import { tricklingFilter } from './tricklingFilter';
import { uvUnit } from './uvUnit';

const DRAWINGS: Readonly<Record<string, StageDrawing>> = {
  fishTank, radialFlowSettler, coneSettler, swirlSeparator, fineFilter, screenFilter, beadFilter, sandFilter, cartridgeFilter,
  degassingTank, movingBed, tricklingFilter, raftBed, filmChannel, mediaBed, tower, sump, uvUnit,
};

/** The drawing of a kind of stage; a kind without its own is drawn as a plain vessel. */
export function drawingOf(kind: string): StageDrawing {
  return DRAWINGS[kind] ?? plainVessel;
}
