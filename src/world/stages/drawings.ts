// Which drawing belongs to which kind of stage. A new stage adds one line here and one file beside this one.
import type { StageDrawing } from '../kit';
import { degassingTank } from './degassingTank';
import { fineFilter } from './fineFilter';
import { fishTank } from './fishTank';
import { radialFlowSettler } from './radialFlowSettler';
import { raftBed } from './raftBed';
import { sump } from './sump';

const DRAWINGS: Readonly<Record<string, StageDrawing>> = { fishTank, radialFlowSettler, fineFilter, degassingTank, raftBed, sump };

/** The drawing of a kind of stage; a kind without its own is drawn as a plain tank. */
export function drawingOf(kind: string): StageDrawing {
  return DRAWINGS[kind] ?? sump;
}
