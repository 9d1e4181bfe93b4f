// What the picture must know of a kind of stage before it is drawn: how wide it is, what it stands on, how water comes in. Pure.
import { BEDS } from '../../state/common/beds';

/** Vessels with a cone and a valve under it, on legs. */
const CONES: ReadonlySet<string> = new Set(['radialFlowSettler', 'conicalClarifier', 'swirlSeparator']);
/** Hulls and housings that are full to the top: water comes in through a fitting, never in free fall. */
const CLOSED: ReadonlySet<string> = new Set(['beadFilter', 'sandFilter', 'cartridgeFilter', 'uvUnit']);
/** Water is sprayed in at the top and falls through to a basin. */
const SPRAYED: ReadonlySet<string> = new Set(['tricklingFilter', 'tower']);
const TABLES: ReadonlySet<string> = new Set(['raftBed', 'nftChannel', 'mediaBed']);

export const grows = (kind: string): boolean => BEDS.has(kind);
export const hasCone = (kind: string): boolean => CONES.has(kind);
export const isClosed = (kind: string): boolean => CLOSED.has(kind);
export const isSprayed = (kind: string): boolean => SPRAYED.has(kind);
export const onTable = (kind: string): boolean => TABLES.has(kind);

/** Narrowest and widest drawing of a kind of tank, world units. */
const WIDTHS: Readonly<Record<string, readonly [number, number]>> = {
  fishTank: [210, 300], radialFlowSettler: [100, 122], conicalClarifier: [104, 130], swirlSeparator: [96, 118],
  fineFilter: [100, 120], drumFilter: [112, 132], beadFilter: [86, 104], sandFilter: [86, 104], cartridgeFilter: [66, 82], uvUnit: [118, 150],
  degassingTank: [118, 158], movingBedBiofilter: [124, 164], tricklingFilter: [104, 134],
  raftBed: [250, 420], nftChannel: [260, 440], mediaBed: [230, 380], tower: [190, 290], sump: [132, 156],
};
const OTHER: readonly [number, number] = [110, 140];

/** Narrowest and widest drawing of a kind. */
export const widthsOf = (kind: string): readonly [number, number] => WIDTHS[kind] ?? OTHER;

/** How far under its rim the bar of a sprayed stage lies. */
export const BAR_UNDER_RIM = 16;
/** The bar of a sprayed stage never stands closer to its basin than this. */
export const LEAST_SPRAY = 130;
/** Depth of the basin under a sprayed stage, and of the water in it. */
export const BASIN = 34;
export const BASIN_WATER = 20;
/** A film of a centimetre could not be seen: channels are drawn this deep under the level and this high over it. */
export const CHANNEL_UNDER = 26;
export const CHANNEL_OVER = 34;
/** A hull's top stands at least this high over the level its water comes in at. */
export const HULL_OVER = 26;
