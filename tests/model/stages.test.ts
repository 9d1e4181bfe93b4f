// The catalogue of stages: each is a thing one could build, and each caution has its words.
import { describe, expect, it } from 'vitest';
import { STAGES } from '../../src/catalogue/kinds';
import { stageType } from '../../src/catalogue/stageTypes';
import { RECORDED } from '../../src/catalogue/values';
import { english } from '../../src/words/english';

describe.each(STAGES.map((type) => [type.kind, type] as const))('%s', (kind, type) => {
  it('holds water in cells of positive size, unless it pumps or doses', () => {
    const sizes = type.defaults;
    if (type.cells === 0) {
      expect(type.pumps ?? type.doses, kind).toBe(true);
      return;
    }
    const cell = type.cell(sizes, RECORDED);
    for (const part of ['volume', 'surface', 'floor', 'film', 'depth'] as const) expect(cell[part], part).toBeGreaterThan(0);
    expect(cell.volume * type.cells).toBeCloseTo(type.volume(sizes, RECORDED), 9);
    const vessel = type.vessel(sizes, RECORDED);
    expect(vessel.height_m).toBeGreaterThan(vessel.depth_m);
    expect(vessel.width_m).toBeGreaterThan(0);
  });

  it('holds twice the water as two units', () => {
    if (type.cells > 0)
      expect(type.volume({ ...type.defaults, count: 2 }, RECORDED)).toBeCloseTo(
        2 * type.volume({ ...type.defaults, count: 1 }, RECORDED),
        12,
      );
  });

  it('has words for each of its cautions', () => {
    expect(type.cautions.length).toBeGreaterThan(0);
    for (const caution of type.cautions) expect(Object.keys(english), caution).toContain(`caution.${caution}`);
  });
});

it('a kind that is not in the catalogue is refused by name', () => {
  expect(() => stageType('waterfall')).toThrow('waterfall');
});
