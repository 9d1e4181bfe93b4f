// Level and fall marks: in the reader's units, and where their words stand.
import { afterEach, describe, expect, it } from 'vitest';
import { showUnitsOf } from '../../../src/words/units';
import { layOut, type WorldLayout } from '../../../src/page/picture/scene/layout';
import { steppedTags } from '../../../src/page/picture/scene/positions';
import { fallWords, fallY, heightY, heightYs, levelWords } from '../../../src/page/picture/marks/planMarks';
import { designOf, loopOf } from './loops';

function laid(): WorldLayout {
  const loop = loopOf('fish', 'settler', 'mats', 'degas', 'rafts', 'sump', 'pump');
  const layout = layOut({ design: designOf(loop), loop, side: [], aspect: 1.6 });
  if (layout === null) throw new Error('no layout');
  return layout;
}

describe('marks of levels and falls', () => {
  afterEach(() => showUnitsOf('metric'));
  const box = { ...laid().stages[0], level_cm: 127 };

  it('are told in whole centimetres, or in inches', () => {
    showUnitsOf('metric');
    expect([levelWords(box), fallWords(5), fallWords(-27)]).toEqual(['127\u00a0cm', 'falls 5\u00a0cm', 'rises 27\u00a0cm']);
    showUnitsOf('us');
    expect([levelWords(box), fallWords(5), fallWords(-27)]).toEqual(['50.0\u00a0in', 'falls 2.0\u00a0in', 'rises 10.6\u00a0in']);
  });

  it('stand clear of each other where letters are large against the tanks', () => {
    const { stages, bottom } = laid();
    const text = 44;
    const ys = heightYs(stages, text, bottom);
    expect(ys).not.toEqual(stages.map((one) => heightY(one, text)));
    for (let i = 0; i < stages.length; i += 1)
      for (let j = 0; j < i; j += 1) {
        const apart = Math.abs(stages[i].x + stages[i].w / 2 - stages[j].x - stages[j].w / 2);
        const wide = (0.56 * text * (levelWords(stages[i]).length + levelWords(stages[j]).length)) / 2 + 18;
        expect(apart >= wide || Math.abs(ys[i] - ys[j]) >= 1.6 * text).toBe(true);
      }
  });

  it('of a fall that is wider than its gap stand under the height in the tank', () => {
    expect(fallY(box, 2, 20, false, box.level + 60)).toBeGreaterThan(box.level + 60 + 20);
    expect(fallY(box, 1, 20, true, null)).toBeLessThan(box.level);
  });
});

describe('number tags', () => {
  it('keep their place where there is room, and step the shorter way where there is none', () => {
    expect(
      steppedTags(
        [
          { x: 0, y: 0, half: 20 },
          { x: 100, y: 5, half: 20 },
        ],
        30,
        500,
      ),
    ).toEqual([0, 5]);
    expect(
      steppedTags(
        [
          { x: 0, y: 0, half: 20 },
          { x: 30, y: 5, half: 20 },
        ],
        30,
        500,
      ),
    ).toEqual([0, 30]);
    expect(
      steppedTags(
        [
          { x: 0, y: 0, half: 20 },
          { x: 30, y: 5, half: 20 },
        ],
        30,
        40,
      ),
    ).toEqual([0, -30]);
  });
});
