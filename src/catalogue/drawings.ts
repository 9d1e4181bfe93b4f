// How every kind is drawn. Written by `npm run catalogue` from the folders of the catalogue; never edited.
import type { CropDrawing } from '../page/picture/kit/crops';
import type { FishForm } from '../page/picture/kit/fishForm';
import type { KindDrawing } from '../page/picture/kit/kit';
import { drawing as baseDosing } from './stages/baseDosing/drawing';
import { drawing as beadFilter } from './stages/beadFilter/drawing';
import { drawing as cartridgeFilter } from './stages/cartridgeFilter/drawing';
import { drawing as conicalClarifier } from './stages/conicalClarifier/drawing';
import { drawing as degassingTank } from './stages/degassingTank/drawing';
import { drawing as drumFilter } from './stages/drumFilter/drawing';
import { drawing as fineFilter } from './stages/fineFilter/drawing';
import { drawing as fishTank } from './stages/fishTank/drawing';
import { drawing as fluidisedSandBiofilter } from './stages/fluidisedSandBiofilter/drawing';
import { drawing as mediaBed } from './stages/mediaBed/drawing';
import { drawing as mineralisationTank } from './stages/mineralisationTank/drawing';
import { drawing as movingBedBiofilter } from './stages/movingBedBiofilter/drawing';
import { drawing as nftChannel } from './stages/nftChannel/drawing';
import { drawing as radialFlowSettler } from './stages/radialFlowSettler/drawing';
import { drawing as raftBed } from './stages/raftBed/drawing';
import { drawing as returnPump } from './stages/returnPump/drawing';
import { drawing as sandFilter } from './stages/sandFilter/drawing';
import { drawing as sump } from './stages/sump/drawing';
import { drawing as swirlSeparator } from './stages/swirlSeparator/drawing';
import { drawing as tower } from './stages/tower/drawing';
import { drawing as tricklingFilter } from './stages/tricklingFilter/drawing';
import { drawing as uvUnit } from './stages/uvUnit/drawing';
import { drawing as basil } from './crops/basil/drawing';
import { drawing as chard } from './crops/chard/drawing';
import { drawing as lettuce } from './crops/lettuce/drawing';
import { drawing as pakChoi } from './crops/pakChoi/drawing';
import { drawing as tomato } from './crops/tomato/drawing';
import { drawing as arcticChar } from './species/arcticChar/drawing';
import { drawing as channelCatfish } from './species/channelCatfish/drawing';
import { drawing as commonCarp } from './species/commonCarp/drawing';
import { drawing as rainbowTrout } from './species/rainbowTrout/drawing';
import { drawing as tilapia } from './species/tilapia/drawing';

export const stageDrawings: Readonly<Record<string, KindDrawing>> = {
  baseDosing,
  beadFilter,
  cartridgeFilter,
  conicalClarifier,
  degassingTank,
  drumFilter,
  fineFilter,
  fishTank,
  fluidisedSandBiofilter,
  mediaBed,
  mineralisationTank,
  movingBedBiofilter,
  nftChannel,
  radialFlowSettler,
  raftBed,
  returnPump,
  sandFilter,
  sump,
  swirlSeparator,
  tower,
  tricklingFilter,
  uvUnit,
};

export const cropDrawings: Readonly<Record<string, CropDrawing>> = {
  basil,
  chard,
  lettuce,
  pakChoi,
  tomato,
};

export const speciesDrawings: Readonly<Record<string, FishForm>> = {
  arcticChar,
  channelCatfish,
  commonCarp,
  rainbowTrout,
  tilapia,
};
