// Handles of sizes: where they stand, which one a finger means, and what a pull gives.
import { describe, expect, it } from 'vitest';
import type { SizeOffer } from '../../../src/page/state/common/contract';
import { stepOf } from '../../../src/page/state/build/sizing';
import { handleNear, handlesOf, pulledTo, type Handle } from '../../../src/page/picture/scene/handles';
import { layOut, type WorldLayout } from '../../../src/page/picture/scene/layout';
import type { Plan } from '../../../src/page/picture/kit/terms';
import { designOf, loopOf } from './loops';

const loop = loopOf('fish', 'settler', 'rafts', 'sump', 'pump');
const design = designOf(loop);
const plan = { loop, side: [] } as unknown as Plan;
const offer = (stage: string, size: SizeOffer['size'], from: number, to: number): SizeOffer => ({ stage, size, from, to });
const SIZES = [
  offer('fish', 'air_L_min', 0, 120),
  offer('fish', 'volume_m3', 0.2, 3),
  offer('rafts', 'depth_m', 0.1, 0.5),
  offer('rafts', 'area_m2', 1, 16),
  offer('rafts', 'stand_m', 0.1, 1.2),
  offer('pump', 'flow_m3_h', 0.2, 5),
];

function laid(): WorldLayout {
  const layout = layOut({ design, loop, side: [], aspect: 2 });
  if (layout === null) throw new Error('no layout');
  return layout;
}
const layout = laid();
const handles = handlesOf(layout, SIZES, plan, design);
function handle(stage: string, size: SizeOffer['size']): Handle {
  const found = handles.find((one) => one.offer.stage === stage && one.offer.size === size);
  if (found === undefined) throw new Error(`no handle for ${size}`);
  return found;
}

describe('handles', () => {
  it('stand where the lesson leaves a size free that can be pulled, two at most a stage', () => {
    expect(handles.map((one) => `${one.offer.stage} ${one.offer.size}`).sort()).toEqual([
      'fish volume_m3',
      'rafts area_m2',
      'rafts stand_m',
    ]);
    expect(handlesOf(layout, [], plan, design)).toEqual([]);
  });

  it('begin at the size there is, a stand that follows the falls at the height it has', () => {
    expect(handle('fish', 'volume_m3').value).toBe(1);
    expect(handle('rafts', 'stand_m').value).toBe(design.stages.find(({ id }) => id === 'rafts')?.floor_m);
  });

  it('stand at the side of their tank, and under it for the stand', () => {
    const box = layout.stages.find(({ id }) => id === 'rafts');
    if (box === undefined) throw new Error('no bed');
    expect(handle('rafts', 'area_m2').x).toBeGreaterThan(box.x + box.w);
    expect(handle('rafts', 'stand_m').y).toBeGreaterThan(box.floor);
  });

  it('are found by a finger within 22 px at any scale, at the selected stage alone', () => {
    const { x, y } = handle('rafts', 'area_m2');
    for (const scale of [0.4, 1, 2.5]) {
      expect(handleNear(handles, 'rafts', x + 22 / scale, y, scale)).toBe(handle('rafts', 'area_m2'));
      expect(handleNear(handles, 'rafts', x + 30 / scale, y, scale)).not.toBe(handle('rafts', 'area_m2'));
      expect(handleNear(handles, 'fish', x, y, scale)).toBeNull();
    }
  });
});

describe('a pull', () => {
  it('moves a stand as far as the finger, and never past what the lesson offers', () => {
    const stand = handle('rafts', 'stand_m');
    const low = pulledTo(stand, 0, 0.3 * layout.unitsPerM, 1, layout.unitsPerM);
    expect(low.value).toBeCloseTo(stand.value - 0.3, 2);
    expect(low.dy).toBeCloseTo(0.3 * layout.unitsPerM, 0);
    expect(pulledTo(stand, 0, -9999, 1, layout.unitsPerM).value).toBe(1.2);
    expect(pulledTo(stand, 0, 9999, 1, layout.unitsPerM)).toMatchObject({ value: 0.1, dx: 0 });
  });

  it('goes sideways through sizes in steps, and its grip stops where the offer ends', () => {
    const area = handle('rafts', 'area_m2');
    let last = area.value;
    for (let dx = 5; dx < 400; dx += 5) {
      const { value } = pulledTo(area, dx, 50, 1, layout.unitsPerM);
      expect(value).toBeGreaterThanOrEqual(last);
      expect(Math.abs(value / stepOf(area.offer) - Math.round(value / stepOf(area.offer)))).toBeLessThan(1e-6);
      last = value;
    }
    expect(last).toBe(16);
    expect(pulledTo(area, 400, 0, 1, layout.unitsPerM).dx).toBe(pulledTo(area, 999, 0, 1, layout.unitsPerM).dx);
    expect(pulledTo(area, -999, 0, 1, layout.unitsPerM).value).toBe(1);
  });

  it('of a hair moves nothing', () => {
    const area = handle('rafts', 'area_m2');
    expect(pulledTo(area, 2, 0, 1, layout.unitsPerM)).toMatchObject({ value: area.value, dx: 0 });
  });

  it('begins at nothing where nothing is offered', () => {
    const media: Handle = { offer: offer('degas', 'media_m3', 0, 0.6), pull: 'along', x: 0, y: 0, value: 0 };
    expect(pulledTo(media, 120, 0, 1, 200).value).toBeCloseTo(0.3, 2);
  });
});
