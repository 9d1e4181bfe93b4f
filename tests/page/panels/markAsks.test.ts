// The lines of a mark: what it asks, with limits and units, and how a season answered.
import { describe, expect, it } from 'vitest';
import { linesOf } from '../../../src/page/panels/result/MarkAsks';
import type { MarkRule } from '../../../src/lessons/lesson';

const rule: MarkRule = {
  fishHealth: 70,
  harvest: 40,
  moves: 1,
  goals: [{ text: 'Nitrite stays low', stage: 'fish', variable: 'NO2_mgN_L', statistic: 'max', fromDay: 0, atMost: 2 }],
};

describe('the lines of a mark', () => {
  it('say what is asked before there is anything to judge', () => {
    expect(linesOf(rule, null, null, null)).toEqual([
      { asks: 'Fish health: at least 70', value: null, met: null },
      { asks: 'Harvest: at least 40', value: null, met: null },
      { asks: 'Nitrite stays low (at most 2.00\u00a0mg N/L)', value: null, met: null },
      { asks: 'At most one change to the loop as it was given', value: null, met: null },
    ]);
  });

  it("carry the season's own numbers, met and missed", () => {
    const [goal] = rule.goals ?? [];
    const lines = linesOf(
      rule,
      { fishHealth: true, harvest: false, goals: [{ goal, value: 3.456, met: false }], moves: { made: 2, met: false }, earned: false },
      { fishHealth: 83.4, harvest: 12 },
      null,
    );
    expect(lines.map(({ value, met }) => [value, met])).toEqual([
      ['83', true],
      ['12', false],
      ['3.46\u00a0mg N/L', false],
      ['2\u00a0made', false],
    ]);
  });

  it('a goal whose days have not come is neither met nor missed', () => {
    const [goal] = rule.goals ?? [];
    const lines = linesOf(
      rule,
      { fishHealth: true, harvest: true, goals: [{ goal, value: NaN, met: false }], moves: null, earned: false },
      { fishHealth: 83, harvest: 50 },
      null,
    );
    expect(lines[2]).toMatchObject({ value: 'no number yet', met: null });
    expect(lines[3]).toMatchObject({ value: null, met: null });
  });
});
