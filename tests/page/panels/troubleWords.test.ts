// Every event that counts as a trouble has words of its own, which name its stage or speak for the whole loop.
import { describe, expect, it } from 'vitest';
import { troubleWords } from '../../../src/page/panels/common/troubleWords';
import { EVENT_MARKS } from '../../../src/page/state/run/troubles';
import type { EventTrouble } from '../../../src/page/state/run/troubles';
import { isWord, say } from '../../../src/words/say';
import { referencePlan } from '../../season/plans';

describe('the words of troubles', () => {
  const plan = referencePlan();
  const events = [...Object.keys(EVENT_MARKS), 'pumpOff'] as EventTrouble['event'][];

  it.each(events)('tell of %s', (event) => {
    expect(isWord(`trouble.${event}`)).toBe(true);
    const words = troubleWords(plan, { kind: 'event', mark: 'act', stage: 'sump', event, amount: 3 });
    expect(words).not.toBe(say('design.unknown', { stage: 'Sump' }));
    expect(words).not.toContain('{');
  });
});
