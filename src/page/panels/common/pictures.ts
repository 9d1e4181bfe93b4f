// The picture of each kind of stage, as shown on the parts shelf.
import baseTank from '../../../../assets/sprites/base-tank.svg?url';
import beadFilter from '../../../../assets/sprites/bead-filter.svg?url';
import cartridgeFilter from '../../../../assets/sprites/cartridge-filter.svg?url';
import conicalClarifier from '../../../../assets/sprites/cone-settler.svg?url';
import degasTank from '../../../../assets/sprites/degas-tank.svg?url';
import nftChannel from '../../../../assets/sprites/film-channel.svg?url';
import fineFilter from '../../../../assets/sprites/fine-filter.svg?url';
import fishGlide from '../../../../assets/sprites/fish-glide.svg?url';
import fishTank from '../../../../assets/sprites/fish-tank.svg?url';
import lettuce from '../../../../assets/sprites/lettuce-4.svg?url';
import mediaBed from '../../../../assets/sprites/media-bed.svg?url';
import mineralisationTank from '../../../../assets/sprites/mineralisation-tank.svg?url';
import movingBedBiofilter from '../../../../assets/sprites/moving-bed.svg?url';
import pump from '../../../../assets/sprites/pump.svg?url';
import raftBed from '../../../../assets/sprites/raft-bed-empty.svg?url';
import sandFilter from '../../../../assets/sprites/sand-filter.svg?url';
import drumFilter from '../../../../assets/sprites/screen-filter.svg?url';
import settler from '../../../../assets/sprites/settler.svg?url';
import sump from '../../../../assets/sprites/sump.svg?url';
import swirlSeparator from '../../../../assets/sprites/swirl-separator.svg?url';
import tower from '../../../../assets/sprites/tower.svg?url';
import tricklingFilter from '../../../../assets/sprites/trickling-filter.svg?url';
import uvUnit from '../../../../assets/sprites/uv-unit.svg?url';
import type { StageKind } from '../../state/common/contract';

export const STAGE_PICTURES: Readonly<Record<StageKind, string>> = {
  fishTank, radialFlowSettler: settler, conicalClarifier, swirlSeparator, fineFilter, drumFilter, beadFilter, sandFilter, cartridgeFilter,
  degassingTank: degasTank, movingBedBiofilter, tricklingFilter, raftBed, nftChannel, mediaBed, tower, sump, returnPump: pump, mineralisationTank, baseDosing: baseTank, uvUnit,
};

export const FISH_PICTURE = fishGlide;
export const LETTUCE_PICTURE = lettuce;
