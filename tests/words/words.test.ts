// Words and numbers as a person reads them.
import { describe, expect, it } from 'vitest';
import { STAGES } from '../../src/catalogue/kinds';
import { english } from '../../src/words/english';
import { isWord, say, sayOr } from '../../src/words/say';
import { stageName } from '../../src/words/stageNames';
import { figure, measured, momentOf, valueOf, whole, withUnit } from '../../src/words/units';
import { VARIABLES } from '../../src/season/trajectory';

describe('words', () => {
  it('fill in their values and leave unknown names standing', () => {
    expect(say('build.after', { stage: 'Fish tank' })).toBe('after Fish tank');
    expect(sayOr('build.after', 'stage.unknown.name')).toBe('after {stage}');
    expect(sayOr('stage.nothing.name', 'stage.unknown.name')).toBe('Stage');
  });

  it('every kind of stage has a name, says what it does and what people get wrong', () => {
    const kinds = STAGES.map(({ kind }) => kind);
    expect(kinds.length).toBeGreaterThan(5);
    for (const kind of kinds)
      for (const what of ['name', 'does', 'mistake']) expect(isWord(`stage.${kind}.${what}`), `stage.${kind}.${what}`).toBe(true);
  });

  it('every caution names who decides in the end: codes, law, rules, or a licensed or trained person', () => {
    const hazards = Object.entries(english).filter(
      ([key]) => key.startsWith('caution.') && !['caution.title', 'caution.all', 'caution.teaching'].includes(key),
    );
    expect(hazards.length).toBeGreaterThanOrEqual(8);
    for (const [key, words] of hazards) expect(words, key).toMatch(/code|law|rule|licensed|engineer|authorit/i);
  });

  it('stages of one kind are numbered when there are several', () => {
    const stages = [
      { id: 'a', kind: 'raftBed' },
      { id: 'b', kind: 'raftBed' },
      { id: 'c', kind: 'sump' },
    ];
    expect(stageName(stages, 'b')).toBe('Raft bed 2');
    expect(stageName(stages, 'c')).toBe('Sump');
  });
});

describe('numbers', () => {
  it('a trace is shown as less than the smallest step, never as nothing', () => {
    expect(figure(0.004, 1)).toBe('<0.1');
    expect(figure(0, 1)).toBe('0.0');
    expect(figure(-0.001, 1)).toBe('0.0');
    expect(figure(-2.5, 1)).toBe('−2.5');
    expect(figure(NaN, 1)).toBe('–');
  });

  it('large numbers shed decimals, and heads are counted', () => {
    expect([measured(1.234, 2), measured(96.04, 2), measured(102.13, 2), measured(NaN, 1)]).toEqual(['1.23', '96.0', '102', '–']);
    expect(whole(0.2)).toBe('0');
    expect(valueOf('number', 59.6)).toBe('60');
  });

  it('carry their unit, and pH has none', () => {
    expect(withUnit('O2_mg_L', 5.64)).toBe('5.6\u00a0mg/L');
    expect(withUnit('pH', 6.994)).toBe('6.99');
    expect(withUnit('welfare', 0.824)).toBe('82\u00a0%');
    expect(valueOf('H2S_ug_L', 0.01)).toBe('<0.1');
  });

  it('every variable whose name carries a unit is shown with one', () => {
    for (const variable of VARIABLES)
      if (/_(mg|ug|meq|g|kg|L|C|m)/.test(variable)) expect(withUnit(variable, 1), variable).toMatch(/\u00a0/);
  });

  it('the first day is day 0, as in a plan', () => {
    expect(momentOf(0)).toMatchObject({ day: 0, clock: '00' });
    expect(momentOf(49.9)).toMatchObject({ day: 2, clock: '01' });
  });
});
