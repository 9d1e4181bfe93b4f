// The picture of each kind of stage, as shown on the parts shelf.
import baseTank from '../../assets/sprites/base-tank.svg?url';
import degasTank from '../../assets/sprites/degas-tank.svg?url';
import fineFilter from '../../assets/sprites/fine-filter.svg?url';
import fishGlide from '../../assets/sprites/fish-glide.svg?url';
import fishTank from '../../assets/sprites/fish-tank.svg?url';
import lettuce from '../../assets/sprites/lettuce-4.svg?url';
import mineralisationTank from '../../assets/sprites/mineralisation-tank.svg?url';
import pump from '../../assets/sprites/pump.svg?url';
import raftBed from '../../assets/sprites/raft-bed-empty.svg?url';
import settler from '../../assets/sprites/settler.svg?url';
import sump from '../../assets/sprites/sump.svg?url';
import type { StageKind } from '../store/contract';

export const STAGE_PICTURES: Readonly<Record<StageKind, string>> = {
  fishTank, radialFlowSettler: settler, fineFilter, degassingTank: degasTank, raftBed, sump, returnPump: pump, mineralisationTank, baseDosing: baseTank,
  // kinds without a picture of their own borrow that of their nearest kin
  coneSettler: settler, swirlSeparator: settler, screenFilter: fineFilter, beadFilter: fineFilter, sandFilter: fineFilter, cartridgeFilter: fineFilter,
  movingBed: degasTank, tricklingFilter: degasTank, filmChannel: raftBed, mediaBed: raftBed, tower: raftBed, uvUnit: fineFilter,
};

export const FISH_PICTURE = fishGlide;
export const LETTUCE_PICTURE = lettuce;
