// Ranges of the sizes that most kinds take, so that they mean the same everywhere: from a bench vessel to a large hall.
import type { SizeRange } from './stageKind';

/** 10 mL, a bench vessel, to a thousand cubic metres. */
export const volume = (usual: number): SizeRange => ({ from: 0.00001, to: 1000, unit: 'm³', usual });
/** A fill of carriers or packing; left out, as usual. */
export const media = (usual: number, from = 0): SizeRange => ({ from, to: 1000, unit: 'm³', usual });
export const area = (usual: number): SizeRange => ({ from: 0.001, to: 10000, unit: 'm²', usual });
export const depth = (usual: number, from: number, to: number): SizeRange => ({ from, to, unit: 'm', usual });
export const height = (usual: number): SizeRange => ({ from: 0.05, to: 10, unit: 'm', usual });
/** Air that the shelf's part brings; left out of a plan there is none. */
export const air = (usual: number): SizeRange => ({ from: 0, to: 10000, unit: 'L/min', usual, leftOut: 0 });
