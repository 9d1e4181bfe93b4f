// The pictures of every kind of stage. Written by `npm run catalogue` from the folders of the catalogue; never edited.
import baseDosing from './stages/baseDosing/icon.svg?url';
import beadFilter from './stages/beadFilter/icon.svg?url';
import cartridgeFilter from './stages/cartridgeFilter/icon.svg?url';
import conicalClarifier from './stages/conicalClarifier/icon.svg?url';
import degassingTank from './stages/degassingTank/icon.svg?url';
import drumFilter from './stages/drumFilter/icon.svg?url';
import fineFilter from './stages/fineFilter/icon.svg?url';
import fishTank from './stages/fishTank/icon.svg?url';
import fluidisedSandBiofilter from './stages/fluidisedSandBiofilter/icon.svg?url';
import mediaBed from './stages/mediaBed/icon.svg?url';
import mineralisationTank from './stages/mineralisationTank/icon.svg?url';
import movingBedBiofilter from './stages/movingBedBiofilter/icon.svg?url';
import nftChannel from './stages/nftChannel/icon.svg?url';
import radialFlowSettler from './stages/radialFlowSettler/icon.svg?url';
import raftBed from './stages/raftBed/icon.svg?url';
import returnPump from './stages/returnPump/icon.svg?url';
import sandFilter from './stages/sandFilter/icon.svg?url';
import sump from './stages/sump/icon.svg?url';
import swirlSeparator from './stages/swirlSeparator/icon.svg?url';
import tower from './stages/tower/icon.svg?url';
import tricklingFilter from './stages/tricklingFilter/icon.svg?url';
import uvUnit from './stages/uvUnit/icon.svg?url';
import beadFilterSmall from './stages/beadFilter/miniature.svg?url';
import cartridgeFilterSmall from './stages/cartridgeFilter/miniature.svg?url';
import conicalClarifierSmall from './stages/conicalClarifier/miniature.svg?url';
import degassingTankSmall from './stages/degassingTank/miniature.svg?url';
import drumFilterSmall from './stages/drumFilter/miniature.svg?url';
import fineFilterSmall from './stages/fineFilter/miniature.svg?url';
import fishTankSmall from './stages/fishTank/miniature.svg?url';
import fluidisedSandBiofilterSmall from './stages/fluidisedSandBiofilter/miniature.svg?url';
import mediaBedSmall from './stages/mediaBed/miniature.svg?url';
import movingBedBiofilterSmall from './stages/movingBedBiofilter/miniature.svg?url';
import nftChannelSmall from './stages/nftChannel/miniature.svg?url';
import radialFlowSettlerSmall from './stages/radialFlowSettler/miniature.svg?url';
import raftBedSmall from './stages/raftBed/miniature.svg?url';
import returnPumpSmall from './stages/returnPump/miniature.svg?url';
import sandFilterSmall from './stages/sandFilter/miniature.svg?url';
import sumpSmall from './stages/sump/miniature.svg?url';
import swirlSeparatorSmall from './stages/swirlSeparator/miniature.svg?url';
import towerSmall from './stages/tower/miniature.svg?url';
import tricklingFilterSmall from './stages/tricklingFilter/miniature.svg?url';
import uvUnitSmall from './stages/uvUnit/miniature.svg?url';

/** As it lies on the shelf. */
export const stageIcons = {
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

/** A picture in miniature and its frame: it stands on the ground at y = 0. */
export interface Miniature { picture: string; top: number; width: number; height: number }

export const stageMiniatures: Readonly<Record<string, Miniature>> = {
  beadFilter: { picture: beadFilterSmall, top: -63, width: 34, height: 65 },
  cartridgeFilter: { picture: cartridgeFilterSmall, top: -53, width: 28, height: 55 },
  conicalClarifier: { picture: conicalClarifierSmall, top: -69, width: 36, height: 71 },
  degassingTank: { picture: degassingTankSmall, top: -83, width: 42, height: 85 },
  drumFilter: { picture: drumFilterSmall, top: -55, width: 42, height: 57 },
  fineFilter: { picture: fineFilterSmall, top: -65, width: 36, height: 67 },
  fishTank: { picture: fishTankSmall, top: -77, width: 68, height: 79 },
  fluidisedSandBiofilter: { picture: fluidisedSandBiofilterSmall, top: -76, width: 32, height: 78 },
  mediaBed: { picture: mediaBedSmall, top: -67, width: 78, height: 69 },
  movingBedBiofilter: { picture: movingBedBiofilterSmall, top: -61, width: 42, height: 63 },
  nftChannel: { picture: nftChannelSmall, top: -61, width: 84, height: 63 },
  radialFlowSettler: { picture: radialFlowSettlerSmall, top: -69, width: 36, height: 71 },
  raftBed: { picture: raftBedSmall, top: -67, width: 82, height: 69 },
  returnPump: { picture: returnPumpSmall, top: -48, width: 53, height: 52 },
  sandFilter: { picture: sandFilterSmall, top: -63, width: 34, height: 65 },
  sump: { picture: sumpSmall, top: -23, width: 40, height: 41 },
  swirlSeparator: { picture: swirlSeparatorSmall, top: -69, width: 36, height: 71 },
  tower: { picture: towerSmall, top: -77, width: 50, height: 79 },
  tricklingFilter: { picture: tricklingFilterSmall, top: -77, width: 38, height: 79 },
  uvUnit: { picture: uvUnitSmall, top: -39, width: 46, height: 41 },
};
