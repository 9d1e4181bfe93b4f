// Which drawing belongs to which kind of stage. A new stage adds one line here and one file beside this one.
import type { KindDrawing } from '../kit/kit';
import { baseTank } from './baseTank';
import { beadFilter } from './beadFilter';
import { cartridgeFilter } from './cartridgeFilter';
import { coneSettler } from './coneSettler';
import { degassingTank } from './degassingTank';
import { filmChannel } from './filmChannel';
import { fineFilter } from './fineFilter';
import { fishTank } from './fishTank';
import { mediaBed } from './mediaBed';
import { movingBed } from './movingBed';
import { mineralisationTank } from './mineralisationTank';
import { radialFlowSettler } from './radialFlowSettler';
import { raftBed } from './raftBed';
import { returnPump } from './returnPump';
import { sandFilter } from './sandFilter';
import { screenFilter } from './screenFilter';
import { sump } from './sump';
import { swirlSeparator } from './swirlSeparator';
import { tower } from './tower';
import { tricklingFilter } from './tricklingFilter';
import { uvUnit } from './uvUnit';

export const stageDrawings: Readonly<Record<string, KindDrawing>> = {
  fishTank, radialFlowSettler, coneSettler, swirlSeparator, fineFilter, screenFilter, beadFilter, sandFilter, cartridgeFilter,
  degassingTank, movingBed, tricklingFilter, raftBed, filmChannel, mediaBed, tower, sump, uvUnit,
  returnPump, mineralisationTank, baseDosing: baseTank,
};
