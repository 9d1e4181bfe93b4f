// Gaps between stages, and which of them a hand means.
import { describe, expect, it } from 'vitest';
import { gapNear } from '../../../src/page/picture/scene/gaps';
import { layOut, type WorldLayout } from '../../../src/page/picture/scene/layout';
import { designOf, loopOf } from './loops';

function laid(...ids: string[]): WorldLayout {
  const loop = loopOf(...ids);
  const layout = layOut({ design: designOf(loop), loop, side: [], aspect: 2 });
  if (layout === null) throw new Error('no layout');
  return layout;
}

describe('gaps', () => {
  it('lie on both sides of the pump in an empty loop: between fish tank and sump, and ahead of the fish tank', () => {
    const { gaps } = laid('fish', 'sump', 'pump');
    expect(gaps.map((gap) => [gap.gap, gap.left, gap.right])).toEqual([
      [3, null, 'fish'],
      [1, 'fish', 'sump'],
    ]);
  });

  it('stand between all neighbours, counted as places in the loop', () => {
    const { gaps } = laid('fish', 'mats', 'sump', 'pump', 'settler', 'degas');
    expect(gaps.map((gap) => [gap.gap, gap.left, gap.right])).toEqual([
      [4, null, 'settler'],
      [5, 'settler', 'degas'],
      [6, 'degas', 'fish'],
      [1, 'fish', 'mats'],
      [2, 'mats', 'sump'],
    ]);
  });

  it('never part the pump from the tank it stands in', () => {
    expect(laid('fish', 'settler', 'sump', 'pump').gaps.some((gap) => gap.gap === 3)).toBe(false);
  });

  it('lie between the walls of their neighbours', () => {
    const { gaps, stages } = laid('fish', 'settler', 'rafts', 'sump', 'pump');
    for (const gap of gaps) {
      const left = stages.find((box) => box.id === gap.left);
      const right = stages.find((box) => box.id === gap.right);
      if (left) expect(gap.x).toBeGreaterThan(left.x + left.w);
      if (right) expect(gap.x + gap.w).toBeLessThan(right.x);
    }
  });

  it('tell the fall from the left stage to the right one', () => {
    const { gaps } = laid('fish', 'settler', 'sump', 'pump');
    expect(gaps.find((gap) => gap.gap === 1)?.fall_cm).toBeCloseTo(5, 9);
    expect(gaps.find((gap) => gap.gap === 2)?.fall_cm).toBeCloseTo(150, 9);
  });
});

describe('a hand over the loop', () => {
  it('means the gap it is over', () => {
    const { gaps } = laid('fish', 'settler', 'rafts', 'sump', 'pump');
    for (const gap of gaps) expect(gapNear(gaps, gap.x + gap.w / 2)).toBe(gap.gap);
  });

  it('means the nearest gap when it is over a stage', () => {
    const { gaps, stages } = laid('fish', 'settler', 'sump', 'pump');
    const settler = stages[1];
    expect(gapNear(gaps, settler.x + 4)).toBe(1);
    expect(gapNear(gaps, settler.x + settler.w - 4)).toBe(2);
  });

  it('means none far from all of them', () => {
    expect(gapNear(laid('fish', 'sump', 'pump').gaps, -5000)).toBeNull();
  });
});
