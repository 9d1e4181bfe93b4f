// Plants of a bed: leaves as large as their mass, roots as fouled as their mat, stress in shape and colour.
import type { GameObjects, Textures } from 'phaser';
import type { Fit, Place } from '../kit/crops';
import { NO_FIGURE, type Dials } from '../kit/dials';
import type { Kit } from '../kit/kit';
import { cropDrawing } from '../scene/drawingOf';
import { cropAt } from './living';
import type { Live, Moment } from '../kit/moment';
import { StepTable } from '../kit/stepTable';
import { FOUL_STEPS, leafFrame, PLANT_SEEDS, PLANT_SIZES, rootFrame, type Sheets } from './sheets';

/** Shares of the full mass at which the drawing passes to the next of four sizes. */
const STEPS = [0.15, 0.4, 0.75] as const;
/** Solids on the roots at which all strands look fouled, g/m². */
const FOULED_g_m2 = 30;
/** Health of roots below which leaves look stressed, in parts. */
const STRESSED = 55;
/** Readings are taken in so many steps of the whole; what changes by less is not drawn. */
const PARTS = 100;
const AT_LAST = { now_h: Infinity };
/** How much better or worse than its readings a plant looks, in parts; neighbours differ. */
const BIASES = [-40, -20, 0, 20, 40] as const;
/** By bias and parts of fouling, how fouled its roots are drawn. */
const FOULED = Uint8Array.from({ length: BIASES.length * (PARTS + 1) }, (_, i) => {
  const fouled = (i % (PARTS + 1)) + BIASES[Math.floor(i / (PARTS + 1))] * 0.18;
  return Math.max(0, Math.min(FOUL_STEPS, Math.round((fouled * FOUL_STEPS) / PARTS)));
});

/** Size 1–4 of the drawing. @param full leaf mass at which the plant fills its place, g/m² */
export function leafSize(leafDry_g_m2: number, full: number): number {
  const share = leafDry_g_m2 / full;
  return share < STEPS[0] ? 1 : share < STEPS[1] ? 2 : share < STEPS[2] ? 3 : 4;
}

/** Scale of the drawing within its size, 0.88–1.12. */
export function leafScale(leafDry_g_m2: number, full: number): number {
  const share = Math.max(0, Math.min(1, leafDry_g_m2 / full));
  const size = leafSize(leafDry_g_m2, full);
  const low = size === 1 ? 0 : STEPS[size - 2];
  const high = size === 4 ? 1 : STEPS[size - 1];
  return 0.88 + (0.24 * (share - low)) / (high - low);
}

/** Share of a root's strands drawn fouled, 0–1. */
export function fouling(rootMat_g_m2: number, rootHealth: number, rootRot: number): number {
  return Math.max(0, Math.min(1, Math.max(rootMat_g_m2 / FOULED_g_m2, 1 - rootHealth, rootRot)));
}

/**
 * mass, health, rot, mat: where the dials of its cell tell their steps; bias: in parts, so that neighbours differ; own: where the steps of
 * fouling of its bias begin
 */
interface Plant {
  leaf: GameObjects.Image;
  root: GameObjects.Image;
  mass: number;
  health: number;
  rot: number;
  mat: number;
  seed: number;
  bias: number;
  own: number;
  leafAt: number;
  rootAt: number;
}
/** what each step of leaf mass looks like: its size 0–3, the scale of its leaves, how wide and how long its roots are */
interface Kind {
  name: string;
  leaves: Textures.Frame[];
  steps: number;
  sizes: Uint8Array;
  scales: StepTable;
  widths: StepTable;
  lengths: StepTable;
}

/**
 * What a crop looks like at every step of its leaf mass, worked out once.
 * @param scale of its leaves against their art
 * @param natural scale at which a picture shows at its drawn size
 */
function grownBy(full_g_m2: number, step_g_m2: number, scale: number, fit: Fit, natural: number): Omit<Kind, 'name' | 'leaves'> {
  const steps = Math.ceil(full_g_m2 / step_g_m2);
  const room = Math.min(1, (fit.depth - 8) / 84);
  const length = (step: number): number => 0.3 + 0.7 * Math.sqrt(Math.min(1, (step * step_g_m2) / (full_g_m2 * 0.6)));
  return {
    steps,
    sizes: Uint8Array.from({ length: steps + 1 }, (_, step) => leafSize(step * step_g_m2, full_g_m2) - 1),
    scales: new StepTable(0, steps, (step) => natural * scale * leafScale(step * step_g_m2, full_g_m2)),
    widths: new StepTable(0, steps, (step) => natural * (0.6 + 0.4 * length(step)) * fit.wide),
    lengths: new StepTable(0, steps, (step) => natural * length(step) * room),
  };
}

export class Crop implements Live {
  private readonly plants: Plant[] = [];
  private readonly kinds: Kind[] = [];
  private readonly roots: Textures.Frame[] = [];
  private kind: Kind | null = null;
  private named: string | null = null;
  private shown = false;
  private readonly dials: Dials;
  /** steps of root health and root mat that each plant was last drawn for */
  private readonly seen: Int32Array;

  /** @param layers what is put between the roots and the leaves */
  constructor(
    kit: Kit,
    sheets: Sheets,
    private readonly id: string,
    places: readonly Place[],
    fit: Fit,
    layers: () => void,
  ) {
    this.dials = kit.dials;
    this.seen = new Int32Array(2 * places.length).fill(NO_FIGURE);
    const sheet = sheets.plants;
    const arts = [...sheets.living.crops].map((name) => ({ name, art: cropDrawing(name) }));
    const step_g_m2 = Math.min(...arts.map(({ art }) => art.full_g_m2)) / PARTS;
    for (const { name, art } of arts) {
      const leaves: Textures.Frame[] = [];
      for (let seed = 0; seed < PLANT_SEEDS; seed += 1)
        for (const size of PLANT_SIZES) for (const stress of [false, true]) leaves.push(sheet.frame(leafFrame(name, size, stress, seed)));
      this.kinds.push({ name, leaves, ...grownBy(art.full_g_m2, step_g_m2, art.scale * fit.scale, fit, sheet.natural) });
    }
    for (let seed = 0; seed < PLANT_SEEDS; seed += 1)
      for (let foul = 0; foul <= FOUL_STEPS; foul += 1) this.roots.push(sheet.frame(rootFrame(foul, seed)));
    const roots = places.map((place, i) => sheet.image(rootFrame(0, i % PLANT_SEEDS), place.rootX, place.rootY).setVisible(false));
    layers();
    places.forEach((place, i) => {
      const seed = i % PLANT_SEEDS;
      const leaf = sheet
        .image(leafFrame(this.kinds[0].name, 1, false, seed), place.x, place.y)
        .setRotation(place.lean)
        .setVisible(false);
      const cell = Math.floor((3 * i) / places.length);
      const unlike = (i * 7) % BIASES.length;
      const mass = kit.dials.inSteps(id, 'leafDry_g_m2', 0, step_g_m2, cell);
      const health = kit.dials.inSteps(id, 'rootHealth', 1, 1 / PARTS, cell);
      const rot = kit.dials.inSteps(id, 'rootRot', 0, 1 / PARTS, cell);
      const mat = kit.dials.inSteps(id, 'rootMat_g_m2', 0, FOULED_g_m2 / PARTS, cell);
      this.plants.push({
        root: roots[i],
        leaf,
        mass,
        health,
        rot,
        mat,
        seed,
        bias: BIASES[unlike],
        own: unlike * (PARTS + 1),
        leafAt: -1,
        rootAt: -1,
      });
    });
  }

  update(moment: Moment): void {
    if (!moment.glance) return;
    this.choose(moment.plan === null ? null : cropAt(moment.plan, this.id, moment.view === null ? AT_LAST : moment));
    if (this.kind === null) return;
    for (let i = 0; i < this.plants.length; i += 1) this.grow(i, this.kind);
  }

  /** Takes up the art of the crop that stands here now; hides all while none does. */
  private choose(name: string | null): void {
    if (name !== this.named || this.kind === null) {
      this.named = name;
      this.kind = null;
      for (let i = 0; i < this.kinds.length; i += 1) if (this.kinds[i].name === name) this.kind = this.kinds[i];
      this.seen.fill(NO_FIGURE);
      for (let i = 0; i < this.plants.length; i += 1) {
        this.plants[i].leafAt = -1;
        if (this.kind !== null) this.plants[i].leaf.setFrame(this.kind.leaves[0]);
      }
    }
    const shown = this.kind !== null;
    if (shown === this.shown) return;
    this.shown = shown;
    for (let i = 0; i < this.plants.length; i += 1) {
      this.plants[i].leaf.setVisible(shown);
      this.plants[i].root.setVisible(shown);
    }
  }

  private grow(i: number, kind: Kind): void {
    const { steps } = this.dials;
    const plant = this.plants[i];
    const { seen } = this;
    const a = 2 * i;
    const mass = Math.max(0, Math.min(kind.steps, steps[plant.mass]));
    const rotten = PARTS - steps[plant.rot];
    const health = steps[plant.health] < rotten ? steps[plant.health] : rotten;
    const mat = steps[plant.mat];
    if (health !== seen[a] || mat !== seen[a + 1]) this.foul(plant, health, mat);
    const stressed = PARTS * health < PARTS * STRESSED + 10 * plant.bias;
    const leafAt = plant.seed * PLANT_SIZES.length * 2 + kind.sizes[mass] * 2 + (stressed ? 1 : 0);
    if (leafAt !== plant.leafAt) {
      plant.leafAt = leafAt;
      // as large as any other of its crop: it was measured when the crop was taken up
      plant.leaf.frame = kind.leaves[leafAt];
    }
    this.stretch(plant, kind, mass);
    seen[a] = health;
    seen[a + 1] = mat;
  }

  /** The strands of a root for its mat and health, as `fouling` has it. */
  private foul(plant: Plant, health: number, mat: number): void {
    const worse = mat > PARTS - health ? mat : PARTS - health;
    const rootAt = plant.seed * (FOUL_STEPS + 1) + FOULED[plant.own + (worse < 0 ? 0 : worse > PARTS ? PARTS : worse)];
    if (rootAt === plant.rootAt) return;
    plant.rootAt = rootAt;
    plant.root.frame = this.roots[rootAt];
  }

  /** At every glance, though plants grow slowly: what is done often is compiled, and then makes nothing anew. */
  private stretch(plant: Plant, kind: Kind, mass: number): void {
    plant.leaf.setScale(kind.scales.at(mass));
    plant.root.setScale(kind.widths.at(mass), kind.lengths.at(mass));
  }
}
