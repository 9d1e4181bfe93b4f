// Every process of the model has words; families of solids and film share theirs.
import { describe, expect, it } from 'vitest';
import { PROCESS_NAMES } from '../../src/model/processes/catalogue';
import { processName } from '../../src/words/processNames';

describe('names of processes', () => {
  it('are there for all that a lesson may measure', () => {
    expect(PROCESS_NAMES.filter((name) => processName(name) === name)).toEqual([]);
  });

  it('are shared by a family, and kept apart where the place matters', () => {
    expect(processName('settleFineSlow')).toBe(processName('settleCoarseFast'));
    expect(
      new Set(['hydrolysisFineFast', 'hydrolysisCaughtFast', 'hydrolysisSludgeFast', 'catchFineFast', 'nitritation'].map(processName)).size,
    ).toBe(5);
    expect(processName('doseCalciumHydroxide')).toBe(processName('dosePotassiumHydroxide'));
    expect(processName('nothing')).toBe('nothing');
  });
});
