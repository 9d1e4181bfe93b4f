// The words of every kind. Written by `npm run catalogue` from the folders of the catalogue; never edited.
import * as baseDosing from './stages/baseDosing/words';
import * as beadFilter from './stages/beadFilter/words';
import * as cartridgeFilter from './stages/cartridgeFilter/words';
import * as conicalClarifier from './stages/conicalClarifier/words';
import * as degassingTank from './stages/degassingTank/words';
import * as drumFilter from './stages/drumFilter/words';
import * as fineFilter from './stages/fineFilter/words';
import * as fishTank from './stages/fishTank/words';
import * as fluidisedSandBiofilter from './stages/fluidisedSandBiofilter/words';
import * as mediaBed from './stages/mediaBed/words';
import * as mineralisationTank from './stages/mineralisationTank/words';
import * as movingBedBiofilter from './stages/movingBedBiofilter/words';
import * as nftChannel from './stages/nftChannel/words';
import * as radialFlowSettler from './stages/radialFlowSettler/words';
import * as raftBed from './stages/raftBed/words';
import * as returnPump from './stages/returnPump/words';
import * as sandFilter from './stages/sandFilter/words';
import * as sump from './stages/sump/words';
import * as swirlSeparator from './stages/swirlSeparator/words';
import * as tower from './stages/tower/words';
import * as tricklingFilter from './stages/tricklingFilter/words';
import * as uvUnit from './stages/uvUnit/words';
import * as basil from './crops/basil/words';
import * as chard from './crops/chard/words';
import * as lettuce from './crops/lettuce/words';
import * as pakChoi from './crops/pakChoi/words';
import * as tomato from './crops/tomato/words';
import * as arcticChar from './species/arcticChar/words';
import * as channelCatfish from './species/channelCatfish/words';
import * as commonCarp from './species/commonCarp/words';
import * as rainbowTrout from './species/rainbowTrout/words';
import * as tilapia from './species/tilapia/words';

export const english = {
  'stage.baseDosing.name': baseDosing.english.name,
  'stage.baseDosing.does': baseDosing.english.does,
  'stage.baseDosing.mistake': baseDosing.english.mistake,
  'stage.beadFilter.name': beadFilter.english.name,
  'stage.beadFilter.does': beadFilter.english.does,
  'stage.beadFilter.mistake': beadFilter.english.mistake,
  'stage.cartridgeFilter.name': cartridgeFilter.english.name,
  'stage.cartridgeFilter.does': cartridgeFilter.english.does,
  'stage.cartridgeFilter.mistake': cartridgeFilter.english.mistake,
  'stage.conicalClarifier.name': conicalClarifier.english.name,
  'stage.conicalClarifier.does': conicalClarifier.english.does,
  'stage.conicalClarifier.mistake': conicalClarifier.english.mistake,
  'stage.degassingTank.name': degassingTank.english.name,
  'stage.degassingTank.does': degassingTank.english.does,
  'stage.degassingTank.mistake': degassingTank.english.mistake,
  'stage.drumFilter.name': drumFilter.english.name,
  'stage.drumFilter.does': drumFilter.english.does,
  'stage.drumFilter.mistake': drumFilter.english.mistake,
  'stage.fineFilter.name': fineFilter.english.name,
  'stage.fineFilter.does': fineFilter.english.does,
  'stage.fineFilter.mistake': fineFilter.english.mistake,
  'stage.fishTank.name': fishTank.english.name,
  'stage.fishTank.does': fishTank.english.does,
  'stage.fishTank.mistake': fishTank.english.mistake,
  'stage.fluidisedSandBiofilter.name': fluidisedSandBiofilter.english.name,
  'stage.fluidisedSandBiofilter.does': fluidisedSandBiofilter.english.does,
  'stage.fluidisedSandBiofilter.mistake': fluidisedSandBiofilter.english.mistake,
  'stage.mediaBed.name': mediaBed.english.name,
  'stage.mediaBed.does': mediaBed.english.does,
  'stage.mediaBed.mistake': mediaBed.english.mistake,
  'stage.mineralisationTank.name': mineralisationTank.english.name,
  'stage.mineralisationTank.does': mineralisationTank.english.does,
  'stage.mineralisationTank.mistake': mineralisationTank.english.mistake,
  'stage.movingBedBiofilter.name': movingBedBiofilter.english.name,
  'stage.movingBedBiofilter.does': movingBedBiofilter.english.does,
  'stage.movingBedBiofilter.mistake': movingBedBiofilter.english.mistake,
  'stage.nftChannel.name': nftChannel.english.name,
  'stage.nftChannel.does': nftChannel.english.does,
  'stage.nftChannel.mistake': nftChannel.english.mistake,
  'stage.radialFlowSettler.name': radialFlowSettler.english.name,
  'stage.radialFlowSettler.does': radialFlowSettler.english.does,
  'stage.radialFlowSettler.mistake': radialFlowSettler.english.mistake,
  'stage.raftBed.name': raftBed.english.name,
  'stage.raftBed.does': raftBed.english.does,
  'stage.raftBed.mistake': raftBed.english.mistake,
  'stage.returnPump.name': returnPump.english.name,
  'stage.returnPump.does': returnPump.english.does,
  'stage.returnPump.mistake': returnPump.english.mistake,
  'stage.returnPump.drewAir': returnPump.english.drewAir,
  'stage.sandFilter.name': sandFilter.english.name,
  'stage.sandFilter.does': sandFilter.english.does,
  'stage.sandFilter.mistake': sandFilter.english.mistake,
  'stage.sump.name': sump.english.name,
  'stage.sump.does': sump.english.does,
  'stage.sump.mistake': sump.english.mistake,
  'stage.swirlSeparator.name': swirlSeparator.english.name,
  'stage.swirlSeparator.does': swirlSeparator.english.does,
  'stage.swirlSeparator.mistake': swirlSeparator.english.mistake,
  'stage.tower.name': tower.english.name,
  'stage.tower.does': tower.english.does,
  'stage.tower.mistake': tower.english.mistake,
  'stage.tricklingFilter.name': tricklingFilter.english.name,
  'stage.tricklingFilter.does': tricklingFilter.english.does,
  'stage.tricklingFilter.mistake': tricklingFilter.english.mistake,
  'stage.uvUnit.name': uvUnit.english.name,
  'stage.uvUnit.does': uvUnit.english.does,
  'stage.uvUnit.mistake': uvUnit.english.mistake,
  'caution.uvLight': uvUnit.english.cautions.uvLight.full,
  'shortCaution.uvLight': uvUnit.english.cautions.uvLight.short,
  'crop.basil': basil.english.name,
  'crop.chard': chard.english.name,
  'crop.lettuce': lettuce.english.name,
  'crop.pakChoi': pakChoi.english.name,
  'crop.tomato': tomato.english.name,
  'species.arcticChar': arcticChar.english.name,
  'stock.arcticChar': arcticChar.english.inText,
  'species.channelCatfish': channelCatfish.english.name,
  'stock.channelCatfish': channelCatfish.english.inText,
  'species.commonCarp': commonCarp.english.name,
  'stock.commonCarp': commonCarp.english.inText,
  'species.rainbowTrout': rainbowTrout.english.name,
  'stock.rainbowTrout': rainbowTrout.english.inText,
  'species.tilapia': tilapia.english.name,
  'stock.tilapia': tilapia.english.inText,
};
