// One well-mixed piece of water: what it is (sizes) and what is done to it until the next cut (forcing).

import type { FishAt } from './organisms/fish/fishAt';
import type { CropAt } from './organisms/plants/cropAt';

const NO_FISH: FishAt = { digestion: 0, basal: 0, respirationO2: 1, growing: 0 };
const NO_CROP: CropAt = {
  halfN: 1,
  halfP: 1,
  halfK: 1,
  halfCa: 1,
  halfMg: 1,
  halfFe: 1,
  halfS: 1,
  roomN: 1,
  roomP: 1,
  roomK: 1,
  roomCa: 1,
  roomFe: 1,
  fill: 0,
  ironH: 1,
};

export interface Cell {
  readonly index: number;
  readonly stage: string;
  readonly kind: string;
  /** m³ of water, all parallel units together; fixed between cuts */
  volume: number;
  /** m²: open to the air; floor or cone under the sludge; film on walls, media and roots */
  surface: number;
  readonly floor: number;
  film: number;
  /** m³ of sludge that the cone or floor can hold before it washes out; 0 where nothing rests */
  readonly sludgeRoom: number;
  readonly cone: boolean;
  /** m, depth of the air stones */
  readonly depth: number;
  /** share of the bed under a crop: 1 in beds, 0 elsewhere */
  readonly bed: boolean;
  readonly fish: boolean;
  readonly filter: boolean;
  readonly mediaArea: number;
  /** room for caught solids against that of a mat of the same volume */
  readonly filterRoom: number;
  /** m of fall in drops that the water makes inside; m³/d of air drawn through pores as the water sinks */
  readonly spray: number;
  readonly breath: number;

  // --- forcing, refreshed at every cut
  /** m³/d of water through the cell */
  flow: number;
  /** m³/d of air through the stones */
  air: number;
  /** gas transfer, m³/d (kLa × volume) */
  kO2: number;
  kCO2: number;
  kH2S: number;
  kCH4: number;
  kNH3: number;
  kN2: number;
  /** what the gas transfer was last worked out for */
  gasFor: { air: number; fall: number; flow: number; T_C: number };
  /** settling and capture of coarse, fine, superfine, m³/d of water cleared */
  settle0: number;
  settle1: number;
  settle2: number;
  catch0: number;
  catch1: number;
  catch2: number;
  /** 1/d: coarse broken by air; sludge stirred up; caught solids let go */
  shear: number;
  stir: number;
  release: number;
  /** whether solids are caught here, or were, so that they rot here too */
  holds: boolean;
  /** sludge bed: its volume m³, thickness m */
  bedVolume: number;
  bedThickness: number;
  bedArea: number;
  /** growth the light and leaf area allow with no other limit, g dry/d at mean light; root health without the water's share */
  growth: number;
  rootTarget: number;
  /** m/d at which oxygen reaches the roots' surface through the water beside it; no meaning outside beds */
  rootTransfer: number;
  /** the process that gives base here, and g/d of it */
  doseProcess: number;
  doseRate: number;
  /** m³/d of water cleared of free bacteria by ultraviolet light */
  kill: number;
  /** what lives here, at the water's temperature; without meaning where nothing does */
  fishAt: FishAt;
  cropAt: CropAt;
}

/** Sizes a stage gives its cells; all forcing starts at zero. */
export interface CellSizes {
  volume: number;
  surface: number;
  floor: number;
  film: number;
  sludgeRoom: number;
  cone: boolean;
  depth: number;
  bed?: boolean;
  fish?: boolean;
  filter?: boolean;
  mediaArea?: number;
  filterRoom?: number;
  spray?: number;
  breath?: number;
}

export function makeCell(index: number, stage: string, kind: string, sizes: CellSizes): Cell {
  return {
    index,
    stage,
    kind,
    volume: sizes.volume,
    surface: sizes.surface,
    floor: sizes.floor,
    film: sizes.film,
    sludgeRoom: sizes.sludgeRoom,
    cone: sizes.cone,
    depth: sizes.depth,
    bed: sizes.bed ?? false,
    fish: sizes.fish ?? false,
    filter: sizes.filter ?? false,
    mediaArea: sizes.mediaArea ?? 0,
    filterRoom: sizes.filterRoom ?? 1,
    spray: sizes.spray ?? 0,
    breath: sizes.breath ?? 0,
    flow: 0,
    air: 0,
    kO2: 0,
    kCO2: 0,
    kH2S: 0,
    kCH4: 0,
    kNH3: 0,
    kN2: 0,
    gasFor: { air: -1, fall: 0, flow: 0, T_C: 0 },
    settle0: 0,
    settle1: 0,
    settle2: 0,
    catch0: 0,
    catch1: 0,
    catch2: 0,
    shear: 0,
    stir: 0,
    release: 0,
    holds: false,
    bedVolume: 0,
    bedThickness: 0,
    bedArea: 0,
    growth: 0,
    rootTarget: 1,
    rootTransfer: 1,
    doseProcess: 0,
    doseRate: 0,
    kill: 0,
    fishAt: NO_FISH,
    cropAt: NO_CROP,
  };
}
