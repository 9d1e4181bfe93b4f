// Sentences that panels make from numbers: why, and what a design gets wrong.
import { afterEach, describe, expect, it } from 'vitest';
import { checkDesign } from '../../../src/season/designCheck';
import { problemMark, problemWords } from '../../../src/page/panels/build/designWords';
import { whySentence } from '../../../src/page/panels/run/whyWords';
import type { Why } from '../../../src/page/state/run/why';
import { isWord } from '../../../src/words/say';
import { showUnitsOf } from '../../../src/words/units';
import { referencePlan } from '../../season/plans';

afterEach(() => showUnitsOf('metric'));

describe('why, in words', () => {
  const why: Why = {
    topic: 'nitrifiers',
    weight: 1,
    amounts: { ammonia: 11.2, nitrite: 10.6, oxygen: 50.4, alkalinity: 1.6 },
    heldBack: { by: 'oxygen', variable: 'O2_mg_L', reading: 2.13 },
  };

  it('carries the numbers of the model, every second piece one of them', () => {
    const pieces = whySentence(why, 'ammonia', 3);
    expect(pieces.join('')).toBe(
      'Bacteria here turned 11\u00a0g of ammonia nitrogen into nitrite and 11\u00a0g of nitrite nitrogen on into nitrate. Lack of oxygen held them back (2.1\u00a0mg/L).',
    );
    expect(pieces.filter((_, index) => index % 2 === 1)).toEqual(['11\u00a0g', '11\u00a0g', '2.1\u00a0mg/L']);
  });

  it('tells of the oxygen or the acid when that is what a person looks at', () => {
    expect(whySentence(why, 'oxygen', 3).join('')).toContain('which took 50\u00a0g of oxygen');
    expect(whySentence(why, 'pH', 3).join('')).toContain('used up 0.53 meq/L');
  });

  it('leaves no place unfilled', () => {
    for (const tint of ['ammonia', 'oxygen', 'pH'] as const) expect(whySentence(why, tint, 3).join('')).not.toMatch(/[{}]/);
  });
});

describe('what a design gets wrong, in words', () => {
  const steep = referencePlan();
  const uphill = { ...steep, loop: steep.loop.map((stage) => (stage.id === 'degas' ? { ...stage, stand_m: 2 } : stage)) };
  const { problems } = checkDesign(uphill);

  it("names the stage and says how much is missing, in the reader's units", () => {
    const found = problems.find(({ key, stage }) => key === 'design.uphill' && stage === 'mats');
    if (found === undefined) throw new Error('a tank raised by two metres lets water run uphill');
    expect(problemWords(uphill, found)).toMatch(/^Water cannot run uphill after Fine-solids filter: \d+\u00a0cm short\.$/);
    expect(problemMark(found)).toBe('act');
    showUnitsOf('us');
    expect(problemWords(uphill, found)).toMatch(/: [\d.]+\u00a0in short\.$/);
  });

  it('has words of its own for every problem that a check of designs can find, with every number filled in', () => {
    for (const problem of problems) {
      expect(isWord(problem.key), problem.key).toBe(true);
      expect(problemWords(uphill, problem)).not.toMatch(/[{}]/);
    }
  });
});
