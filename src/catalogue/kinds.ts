// Written by `npm run catalogue` from the folders beside it, never by hand: every kind of stage, crop and fish.
import type { CropParameters } from '../model/parameters/cropNumbers';
import type { FishParameters } from '../model/parameters/fishNumbers';
import type { ParameterGroup } from '../model/parameters/parameter';
import { stageOf } from '../model/stages/stageType';
import type { StageType } from '../model/stages/stageType';
import { science as basil } from './crops/basil/science';
import { science as chard } from './crops/chard/science';
import { science as lettuce } from './crops/lettuce/science';
import { science as pakChoi } from './crops/pakChoi/science';
import { science as tomato } from './crops/tomato/science';
import { science as arcticChar } from './species/arcticChar/science';
import { science as channelCatfish } from './species/channelCatfish/science';
import { science as commonCarp } from './species/commonCarp/science';
import { science as rainbowTrout } from './species/rainbowTrout/science';
import { science as tilapia } from './species/tilapia/science';
import { kind as baseDosingKind } from './stages/baseDosing/kind';
import { science as baseDosing } from './stages/baseDosing/science';
import { kind as beadFilterKind } from './stages/beadFilter/kind';
import { science as beadFilter } from './stages/beadFilter/science';
import { kind as cartridgeFilterKind } from './stages/cartridgeFilter/kind';
import { science as cartridgeFilter } from './stages/cartridgeFilter/science';
import { kind as conicalClarifierKind } from './stages/conicalClarifier/kind';
import { science as conicalClarifier } from './stages/conicalClarifier/science';
import { kind as degassingTankKind } from './stages/degassingTank/kind';
import { science as degassingTank } from './stages/degassingTank/science';
import { kind as drumFilterKind } from './stages/drumFilter/kind';
import { science as drumFilter } from './stages/drumFilter/science';
import { kind as fineFilterKind } from './stages/fineFilter/kind';
import { science as fineFilter } from './stages/fineFilter/science';
import { kind as fishTankKind } from './stages/fishTank/kind';
import { science as fishTank } from './stages/fishTank/science';
import { constants as fluidisedSandBiofilterConstants } from './stages/fluidisedSandBiofilter/constants';
import { kind as fluidisedSandBiofilterKind } from './stages/fluidisedSandBiofilter/kind';
import { science as fluidisedSandBiofilter } from './stages/fluidisedSandBiofilter/science';
import { kind as mediaBedKind } from './stages/mediaBed/kind';
import { science as mediaBed } from './stages/mediaBed/science';
import { kind as mineralisationTankKind } from './stages/mineralisationTank/kind';
import { science as mineralisationTank } from './stages/mineralisationTank/science';
import { kind as movingBedBiofilterKind } from './stages/movingBedBiofilter/kind';
import { science as movingBedBiofilter } from './stages/movingBedBiofilter/science';
import { kind as nftChannelKind } from './stages/nftChannel/kind';
import { science as nftChannel } from './stages/nftChannel/science';
import { kind as radialFlowSettlerKind } from './stages/radialFlowSettler/kind';
import { science as radialFlowSettler } from './stages/radialFlowSettler/science';
import { kind as raftBedKind } from './stages/raftBed/kind';
import { science as raftBed } from './stages/raftBed/science';
import { kind as returnPumpKind } from './stages/returnPump/kind';
import { science as returnPump } from './stages/returnPump/science';
import { kind as sandFilterKind } from './stages/sandFilter/kind';
import { science as sandFilter } from './stages/sandFilter/science';
import { kind as sumpKind } from './stages/sump/kind';
import { science as sump } from './stages/sump/science';
import { kind as swirlSeparatorKind } from './stages/swirlSeparator/kind';
import { science as swirlSeparator } from './stages/swirlSeparator/science';
import { kind as towerKind } from './stages/tower/kind';
import { science as tower } from './stages/tower/science';
import { kind as tricklingFilterKind } from './stages/tricklingFilter/kind';
import { science as tricklingFilter } from './stages/tricklingFilter/science';
import { kind as uvUnitKind } from './stages/uvUnit/kind';
import { science as uvUnit } from './stages/uvUnit/science';

export type StageKind =
  'baseDosing' | 'beadFilter' | 'cartridgeFilter' | 'conicalClarifier' | 'degassingTank' | 'drumFilter' | 'fineFilter' |
  'fishTank' | 'fluidisedSandBiofilter' | 'mediaBed' | 'mineralisationTank' | 'movingBedBiofilter' | 'nftChannel' |
  'radialFlowSettler' | 'raftBed' | 'returnPump' | 'sandFilter' | 'sump' | 'swirlSeparator' | 'tower' | 'tricklingFilter' |
  'uvUnit';

export const STAGES: readonly (StageType & { kind: StageKind })[] = [
  stageOf('baseDosing', baseDosingKind, baseDosing),
  stageOf('beadFilter', beadFilterKind, beadFilter),
  stageOf('cartridgeFilter', cartridgeFilterKind, cartridgeFilter),
  stageOf('conicalClarifier', conicalClarifierKind, conicalClarifier),
  stageOf('degassingTank', degassingTankKind, degassingTank),
  stageOf('drumFilter', drumFilterKind, drumFilter),
  stageOf('fineFilter', fineFilterKind, fineFilter),
  stageOf('fishTank', fishTankKind, fishTank),
  stageOf('fluidisedSandBiofilter', fluidisedSandBiofilterKind, fluidisedSandBiofilter),
  stageOf('mediaBed', mediaBedKind, mediaBed),
  stageOf('mineralisationTank', mineralisationTankKind, mineralisationTank),
  stageOf('movingBedBiofilter', movingBedBiofilterKind, movingBedBiofilter),
  stageOf('nftChannel', nftChannelKind, nftChannel),
  stageOf('radialFlowSettler', radialFlowSettlerKind, radialFlowSettler),
  stageOf('raftBed', raftBedKind, raftBed),
  stageOf('returnPump', returnPumpKind, returnPump),
  stageOf('sandFilter', sandFilterKind, sandFilter),
  stageOf('sump', sumpKind, sump),
  stageOf('swirlSeparator', swirlSeparatorKind, swirlSeparator),
  stageOf('tower', towerKind, tower),
  stageOf('tricklingFilter', tricklingFilterKind, tricklingFilter),
  stageOf('uvUnit', uvUnitKind, uvUnit),
];

/** Numbers that a kind of stage has for itself. */
export const KIND_CONSTANTS: Readonly<Record<string, ParameterGroup>> = {
  fluidisedSandBiofilter: fluidisedSandBiofilterConstants,
};

export type CropName =
  'basil' | 'chard' | 'lettuce' | 'pakChoi' | 'tomato';

export const CROPS: Readonly<Record<CropName, CropParameters>> = {
  basil, chard, lettuce, pakChoi, tomato,
};

export type SpeciesName =
  'arcticChar' | 'channelCatfish' | 'commonCarp' | 'rainbowTrout' | 'tilapia';

export const SPECIES: Readonly<Record<SpeciesName, FishParameters>> = {
  arcticChar, channelCatfish, commonCarp, rainbowTrout, tilapia,
};
