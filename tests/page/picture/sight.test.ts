// Where the picture is looked at from: all of the loop fits, a close look holds the stage, and the way between never jumps.
import { describe, expect, it } from 'vitest';
import { layOut } from '../../../src/page/picture/scene/layout';
import { closeView, frameOf, viewBetween, wholeView } from '../../../src/page/picture/scene/sight';
import { designOf, loopOf } from './loops';

const loop = loopOf('fish', 'settler', 'mats', 'degas', 'rafts', 'sump', 'pump');
const SIZES = [
  [1512, 700],
  [868, 490],
  [968, 380],
  [700, 420],
  [576, 236],
] as const;

describe.each(SIZES)('a view of %d by %d', (width, height) => {
  const layout = layOut({ design: designOf(loop), loop, side: [], aspect: width / height });
  if (layout === null) throw new Error('no layout');
  const whole = wholeView(layout, width, height);

  it('holds the whole loop, from the first tank to the last', () => {
    const frame = frameOf(whole, width, height);
    expect(frame.x).toBe(0);
    expect(frame.w).toBeCloseTo(layout.width, 6);
    for (const box of layout.stages) {
      expect(box.x).toBeGreaterThan(frame.x);
      expect(box.x + box.w).toBeLessThan(frame.x + frame.w);
      expect(box.rim).toBeGreaterThan(frame.y);
      expect(box.floor).toBeLessThan(frame.y + frame.h);
    }
  });

  it.each(loop.map(({ id }) => id))('closes in on %s, which is larger then and still wholly there', (id) => {
    const view = closeView(layout, id, width, height);
    if (view === null) throw new Error('no view');
    expect(view.scale).toBeGreaterThanOrEqual(1.25 * whole.scale - 1e-9);
    const frame = frameOf(view, width, height);
    const box = layout.stages.find((one) => one.id === (id === 'pump' ? 'sump' : id));
    if (box === undefined) throw new Error('no box');
    expect(box.x).toBeGreaterThanOrEqual(frame.x - 1e-6);
    expect(box.x + box.w).toBeLessThanOrEqual(frame.x + frame.w + 1e-6);
    expect(frame.x).toBeGreaterThanOrEqual(0);
    expect(frame.x + frame.w).toBeLessThanOrEqual(layout.width + 1e-6);
    expect(frame.y + frame.h).toBeLessThanOrEqual(layout.bottom + 1e-6);
  });

  it('goes there without a jump, and arrives', () => {
    const view = closeView(layout, 'settler', width, height);
    if (view === null) throw new Error('no view');
    const end = viewBetween(whole, view, 1);
    for (const key of ['scale', 'left', 'top'] as const) expect(end[key]).toBeCloseTo(view[key], 6);
    for (let i = 0; i < 50; i += 1) {
      const [a, b] = [viewBetween(whole, view, i / 50), viewBetween(whole, view, (i + 1) / 50)];
      expect(b.scale).toBeGreaterThan(a.scale);
      expect(Math.abs(b.left - a.left)).toBeLessThan(0.06 * Math.abs(view.left - whole.left) + 1e-6);
    }
  });
});

it('there is no close look at what is not in the loop', () => {
  const layout = layOut({ design: designOf(loop), loop, side: [], aspect: 2 });
  expect(layout === null ? undefined : closeView(layout, 'nowhere', 800, 400)).toBeNull();
});
