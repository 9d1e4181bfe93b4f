// Plants of a bed: leaves as large as their mass, roots as fouled as their mat, stress in shape and colour.
import type { GameObjects, Textures } from 'phaser';
import type { Kit } from './kit';
import type { Live, Moment } from './moment';
import { cellValue } from './reading';
import { FOUL_STEPS, leafFrame, PLANT_SEEDS, PLANT_SIZES, rootFrame } from './sheets';

/** Dry leaf mass at which lettuce fills its place on the raft, g/m²; only the drawn size depends on it. */
export const FULL_LEAF_g_m2 = 180;
/** Shares of the full mass at which the drawing passes to the next of four sizes. */
const STEPS = [0.15, 0.4, 0.75] as const;
/** Solids on the roots at which all strands look fouled, g/m². */
const FOULED_g_m2 = 30;
const STRESSED_HEALTH = 0.55;

/** Size 1–4 of the drawing, and its scale within that size (0.88–1.12). */
export function leafSize(leafDry_g_m2: number): number {
  const share = leafDry_g_m2 / FULL_LEAF_g_m2;
  return share < STEPS[0] ? 1 : share < STEPS[1] ? 2 : share < STEPS[2] ? 3 : 4;
}

export function leafScale(leafDry_g_m2: number): number {
  const share = Math.max(0, Math.min(1, leafDry_g_m2 / FULL_LEAF_g_m2));
  const size = leafSize(leafDry_g_m2);
  const low = size === 1 ? 0 : STEPS[size - 2];
  const high = size === 4 ? 1 : STEPS[size - 1];
  return 0.88 + (0.24 * (share - low)) / (high - low);
}

/** Share of a root's strands drawn fouled, 0–1. */
export function fouling(rootMat_g_m2: number, rootHealth: number): number {
  return Math.max(0, Math.min(1, Math.max(rootMat_g_m2 / FOULED_g_m2, 1 - rootHealth)));
}

interface Plant { leaf: GameObjects.Image; root: GameObjects.Image; cell: number; seed: number; bias: number; leafAt: number; rootAt: number }

export class Crop implements Live {
  private readonly plants: Plant[] = [];
  private readonly leaves: Textures.Frame[] = [];
  private readonly roots: Textures.Frame[] = [];
  private readonly natural: number;

  /**
   * @param layers what is put between the roots and the leaves
   * @param y height of the raft
   */
  constructor(kit: Kit, private readonly id: string, x: number, w: number, y: number, private readonly scale: number, count: number, private readonly depth: number, layers: () => void) {
    const sheet = kit.sheets.plants;
    this.natural = sheet.natural;
    for (let seed = 0; seed < PLANT_SEEDS; seed += 1) {
      for (const size of PLANT_SIZES) for (const stress of [false, true]) this.leaves.push(sheet.frame(leafFrame(size, stress, seed)));
      for (let foul = 0; foul <= FOUL_STEPS; foul += 1) this.roots.push(sheet.frame(rootFrame(foul, seed)));
    }
    const at = (i: number): number => x + ((i + 0.5) * w) / count;
    const roots = Array.from({ length: count }, (_, i) => sheet.image(rootFrame(0, i % PLANT_SEEDS), at(i), y + 4));
    layers();
    for (let i = 0; i < count; i += 1) {
      const seed = i % PLANT_SEEDS;
      this.plants.push({ root: roots[i], leaf: sheet.image(leafFrame(1, false, seed), at(i), y - 11), cell: Math.floor((3 * i) / count), seed, bias: ((i * 7) % 5) / 5 - 0.4, leafAt: -1, rootAt: -1 });
    }
  }

  update(moment: Moment): void {
    const stage = moment.cellsOf(this.id);
    for (let i = 0; i < this.plants.length; i += 1) {
      const plant = this.plants[i];
      if (moment.view === null || stage === null) this.grow(plant, 0, 1, 0);
      else {
        const leaf = cellValue(moment.view, stage, plant.cell, 'leafDry_g_m2', moment.now_h);
        const health = cellValue(moment.view, stage, plant.cell, 'rootHealth', moment.now_h);
        this.grow(plant, leaf, health, cellValue(moment.view, stage, plant.cell, 'rootMat_g_m2', moment.now_h));
      }
    }
  }

  private grow(plant: Plant, leaf: number, health: number, mat: number): void {
    const size = leafSize(leaf);
    const stressed = health < STRESSED_HEALTH + plant.bias * 0.1;
    const leafAt = plant.seed * PLANT_SIZES.length * 2 + (size - 1) * 2 + (stressed ? 1 : 0);
    if (leafAt !== plant.leafAt) {
      plant.leafAt = leafAt;
      plant.leaf.setFrame(this.leaves[leafAt]);
    }
    plant.leaf.setScale(this.natural * this.scale * leafScale(leaf));
    const foul = Math.max(0, Math.min(FOUL_STEPS, Math.round((fouling(mat, health) + plant.bias * 0.18) * FOUL_STEPS)));
    const rootAt = plant.seed * (FOUL_STEPS + 1) + foul;
    if (rootAt !== plant.rootAt) {
      plant.rootAt = rootAt;
      plant.root.setFrame(this.roots[rootAt]);
    }
    const length = 0.3 + 0.7 * Math.sqrt(Math.max(0, Math.min(1, leaf / (FULL_LEAF_g_m2 * 0.6))));
    const fit = Math.min(1, (this.depth - 8) / 84);
    plant.root.setScale(this.natural * (0.6 + 0.4 * length), this.natural * length * fit);
  }
}
