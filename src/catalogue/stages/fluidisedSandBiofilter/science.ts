// Fluidised-sand biofilter: much film in little room, nothing kept; a bed that is not lifted is a sand filter that nobody washes.
import { ownNumbers } from '../../../model/parameters/values';
import type { Values } from '../../../model/parameters/values';
import { expansion, headOfBed } from '../../../model/solids/fluidised';
import type { Grains } from '../../../model/solids/fluidised';
import { passing } from '../../../model/stages/solidsTerms';
import type { StageScience, StageSizes } from '../../../model/stages/stageScience';
import { constants } from './constants';

const own = (v: Values) => ownNumbers(v, 'fluidisedSandBiofilter', constants);
const sandOf = (s: StageSizes): number => (s.media_m3 ?? 0.03) * (s.count ?? 1);

function grains(v: Values): Grains {
  const { terminal, exponent, restVoids, density } = own(v);
  return { terminal_m_d: terminal, exponent, restVoids, density };
}

export const science: StageScience = {
  cells: 1,
  // the weight of the sand in water, once it is lifted; film and solids in it weigh next to nothing
  loss(s, flow, _clog, v) {
    const { restDepth } = own(v);
    return headOfBed(grains(v), restDepth, flow / (sandOf(s) / restDepth));
  },
  volume(s, v) {
    const { restDepth, vesselDepth, restVoids } = own(v);
    return sandOf(s) * (vesselDepth / restDepth - (1 - restVoids));
  },
  cell(s, v) {
    const { restDepth, sandArea, filmShare } = own(v);
    const floor = sandOf(s) / restDepth;
    const film = sandOf(s) * sandArea * filmShare;
    return { volume: this.volume(s, v), surface: floor * v.devices.pressedOpen, floor, film, sludgeRoom: 0, cone: false, depth: 0.5, mediaArea: film };
  },
  vessel(s, v) {
    const { restDepth, vesselDepth } = own(v);
    return { depth_m: vesselDepth, width_m: Math.sqrt((s.media_m3 ?? 0.03) / restDepth) * 1.13, height_m: vesselDepth + 0.15 };
  },
  solids(cell, c) {
    const { mixedFrom, tornFrom } = own(c.values);
    const d = c.values.devices;
    const s = c.values.stages;
    const higher = expansion(grains(c.values), cell.flow / cell.floor);
    const lifted = Math.min(1, higher / mixedFrom);
    // what stands still catches as packed sand does; what is lifted lets go of that again
    cell.catch0 = passing(d.sandCoarse * (1 - lifted), cell.flow);
    cell.catch1 = passing(d.sandFine * (1 - lifted), cell.flow);
    cell.catch2 = passing(d.sandSuperfine * (1 - lifted), cell.flow);
    const torn = higher > tornFrom ? higher / tornFrom - 1 : 0;
    cell.release = s.mediaShedStill + (s.mediaShed - s.mediaShedStill) * lifted + s.mediaShed * torn;
  },
};
