// Which drawing belongs to which kind of stage. A new stage adds one line here and, where a plain vessel will not do, one file beside this one.
import type { StageDrawing } from '../kit';
import { degassingTank } from './degassingTank';
import { fineFilter } from './fineFilter';
import { fishTank } from './fishTank';
import { plainVessel } from './plainVessel';
import { radialFlowSettler } from './radialFlowSettler';
import { raftBed } from './raftBed';
import { sump } from './sump';

const plain = plainVessel();
const closed = plainVessel({ media: 'fill', blocks: true, lid: true });

const DRAWINGS: Readonly<Record<string, StageDrawing>> = {
  fishTank, radialFlowSettler, fineFilter, degassingTank, raftBed, sump,
  coneSettler: plain, swirlSeparator: plain,
  screenFilter: plainVessel({ media: 'fill', blocks: true }), beadFilter: closed, sandFilter: closed, cartridgeFilter: closed,
  movingBed: plainVessel({ media: 'carriers', strips: true }), tricklingFilter: plainVessel({ media: 'packing' }),
  filmChannel: plainVessel({ plants: true }), mediaBed: plainVessel({ media: 'gravel', plants: true }), tower: plainVessel({ media: 'packing', plants: true }),
  uvUnit: plainVessel({ lid: true }),
};

/** The drawing of a kind of stage; a kind without its own is drawn as a plain vessel. */
export function drawingOf(kind: string): StageDrawing {
  return DRAWINGS[kind] ?? plain;
}
