// Sizes that a lesson leaves free: which there are, what they are now, and giving a stage another within the lesson's limits.
import type { StoreApi } from 'zustand/vanilla';
import type { FreeSize, Lesson, SizeOffer } from '../../../lessons/lesson';
import type { Plan } from '../../../season/plan';
import { isWord, say } from '../../../words/say';
import { stageName } from '../../../words/stageNames';
import { withUnit } from '../../../words/units';
import type { PageActions } from '../common/actions';
import type { PageStore } from '../common/page';
import { buildOf } from '../common/selectors';
import type { EditDesign } from './designing';

/** How a size is shown: the quantity its units go by, its measure in that, and the parts of one that plans keep (1000: thousandths). */
export interface SizeFormat {
  variable: string;
  factor: number;
  perUnit: number;
}

const FORMATS: Readonly<Record<FreeSize, SizeFormat>> = {
  volume_m3: { variable: 'water_L', factor: 1000, perUnit: 1000 },
  media_m3: { variable: 'media_L', factor: 1000, perUnit: 1000 },
  area_m2: { variable: 'area_m2', factor: 1, perUnit: 100 },
  depth_m: { variable: 'height_cm', factor: 100, perUnit: 100 },
  height_m: { variable: 'height_cm', factor: 100, perUnit: 100 },
  stand_m: { variable: 'height_cm', factor: 100, perUnit: 100 },
  air_L_min: { variable: 'air_L_min', factor: 1, perUnit: 10 },
  flow_m3_h: { variable: 'flow_m3_h', factor: 1, perUnit: 100 },
  lamp_W: { variable: 'power_W', factor: 1, perUnit: 1 },
  count: { variable: 'number', factor: 1, perUnit: 1 },
};
/** Above this a vessel is told in cubic metres. */
const LARGE_m3 = 3;
/** Below this a depth counts by the millimetre. */
const SHALLOW_m = 0.05;
/** A size is chosen in so many steps of its offer; each is at least the least that a plan keeps. */
const MOST_STEPS = 200;

export function sizeFormat({ size, to }: Pick<SizeOffer, 'size' | 'to'>): SizeFormat {
  if ((size === 'volume_m3' || size === 'media_m3') && to > LARGE_m3) return { variable: 'volume_m3', factor: 1, perUnit: 1000 };
  if (size === 'depth_m' && to < SHALLOW_m) return { variable: 'height_cm', factor: 100, perUnit: 1000 };
  return FORMATS[size];
}

/** What the lesson leaves free at a stage. */
export function sizesOf(lesson: Pick<Lesson, 'sizes'>, stageId: string): SizeOffer[] {
  return lesson.sizes.filter((offer) => offer.stage === stageId);
}

/** A size as the plan gives it; null where the plan leaves it to the loop (a stand that follows the falls). */
export function sizeNow(plan: Plan, stageId: string, size: FreeSize): number | null {
  const stage = [...plan.loop, ...plan.side].find((one) => one.id === stageId);
  if (stage === undefined) return null;
  const sizes: Readonly<Record<string, unknown>> = { ...stage };
  const value = sizes[size];
  return typeof value === 'number' ? value : size === 'count' ? 1 : null;
}

/** The value a plan keeps: within the offer, in the steps of plans. */
export function fitted(offer: SizeOffer, value: number): number {
  const { perUnit } = sizeFormat(offer);
  return Math.round(Math.min(offer.to, Math.max(offer.from, value)) * perUnit) / perUnit;
}

/** The steps in which a size is chosen, metric: 1, 2, 5, 10, 20, 50 … of the least that a plan keeps. */
export function stepOf(offer: SizeOffer): number {
  const wanted = (offer.to - offer.from) / MOST_STEPS;
  let step = 1 / sizeFormat(offer).perUnit;
  for (let n = 0; step < wanted; n += 1) step *= n % 3 === 1 ? 2.5 : 2;
  return step;
}

/** The size at the nearest step, within the offer. */
export function inSteps(offer: SizeOffer, value: number): number {
  const step = stepOf(offer);
  return fitted(offer, Math.round(value / step) * step);
}

function withSize(plan: Plan, stageId: string, size: FreeSize, value: number | null): Plan {
  const set = <T extends { id: string }>(stage: T): T => {
    if (stage.id !== stageId) return stage;
    const changed: T & { stand_m?: number } = { ...stage };
    if (value === null) delete changed.stand_m;
    else Object.assign(changed, { [size]: value });
    return changed;
  };
  return { ...plan, loop: plan.loop.map(set), side: plan.side.map(set) };
}

export function createSizing(store: StoreApi<PageStore>, edit: EditDesign): Pick<PageActions, 'setSize'> {
  return {
    setSize(stageId, size, value) {
      const build = buildOf(store.getState());
      const offer = build?.lesson.sizes.find((one) => one.stage === stageId && one.size === size);
      if (build === null || offer === undefined || (value === null ? size !== 'stand_m' : !Number.isFinite(value))) return;
      const { plan } = build;
      const stages = [...plan.loop, ...plan.side];
      const wanted = value === null ? null : fitted(offer, value);
      if (!stages.some((stage) => stage.id === stageId) || wanted === sizeNow(plan, stageId, size)) return;
      const { variable, factor } = sizeFormat(offer);
      const key = `size.${size}`;
      edit(
        build,
        withSize(plan, stageId, size, wanted),
        say('said.setAt', {
          setting: isWord(key) ? say(key) : size,
          stage: stageName(stages, stageId),
          value: wanted === null ? say('size.follows') : withUnit(variable, factor * wanted),
        }),
      );
    },
  };
}
