// The water command: each line is answered by itself, what is not known is null, and what is wrong is named.
import { spawnSync } from 'node:child_process';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FIELDS } from '../../src/tools/waterFields';
import { answerLine } from '../../src/tools/waterLine';

type Answer = Record<string, number | null> & { error?: string };
const answer = (line: unknown): Answer => JSON.parse(answerLine(typeof line === 'string' ? line : JSON.stringify(line))) as Answer;

const COLUMNS = ['pH', 'CO2_mg_L', 'DIC_mmol_L', 'NH3_fraction', 'H2S_fraction', 'O2_saturation_mg_L', 'ionicStrength_mol_L'];

describe('what is answered', () => {
  it('a full water tells everything', () => {
    const full = answer({
      T_C: 24,
      alkalinity_meq_L: 1,
      DIC_mmol_L: 1.1,
      TAN_mgN_L: 1,
      nitrate_mgN_L: 40,
      calcium_mmol_L: 1,
      chloride_mmol_L: 1,
    });
    expect(Object.keys(full)).toEqual(COLUMNS);
    for (const column of COLUMNS) expect(full[column]).toBeTypeOf('number');
  });

  it('pH and alkalinity lead to the carbon that leads back to the pH', () => {
    const there = answer({ T_C: 24, alkalinity_meq_L: 1, pH: 7.2, TAN_mgN_L: 1, phosphate_mgP_L: 10 });
    const back = answer({ T_C: 24, alkalinity_meq_L: 1, DIC_mmol_L: there['DIC_mmol_L'], TAN_mgN_L: 1, phosphate_mgP_L: 10 });
    expect(back['pH']).toBeCloseTo(7.2, 6);
    expect(back['CO2_mg_L']).toBeCloseTo(there['CO2_mg_L'] ?? NaN, 5);
  });

  it('pH alone tells fractions, not carbon', () => {
    const alone = answer({ T_C: 24, pH: 7 });
    expect(alone['CO2_mg_L']).toBeNull();
    expect(alone['DIC_mmol_L']).toBeNull();
    expect(alone['NH3_fraction']).toBeCloseTo(0.00525, 5);
    expect(alone['ionicStrength_mol_L']).toBe(0);
  });

  it('an amount of ammonia does not change its share where the water itself is unknown, a described water does', () => {
    const alone = answer({ T_C: 24, pH: 7 })['NH3_fraction'] ?? NaN;
    expect(answer({ T_C: 24, pH: 7, TAN_mgN_L: 5 })['NH3_fraction']).toBe(alone);
    expect(answer({ T_C: 24, pH: 7, TAN_mgN_L: 5, chloride_mmol_L: 5 })['NH3_fraction']).toBeLessThan(alone);
    expect(answer({ T_C: 24, pH: 7, salinity_g_kg: 5 })['NH3_fraction']).toBeLessThan(alone);
  });

  it('temperature alone tells oxygen alone', () => {
    const bare = answer({ T_C: 20 });
    expect(bare['O2_saturation_mg_L']).toBeCloseTo(9.092, 3);
    for (const column of COLUMNS) if (column !== 'O2_saturation_mg_L') expect(bare[column]).toBeNull();
  });

  it('a given ionic strength is used as it is, zero included', () => {
    const water = { T_C: 20, alkalinity_meq_L: 2, DIC_mmol_L: 2.2, salinity_g_kg: 3 };
    expect(answer({ ...water, ionicStrength_mol_L: 0 })['ionicStrength_mol_L']).toBe(0);
    expect(answer({ ...water, ionicStrength_mol_L: 0.02 })['ionicStrength_mol_L']).toBe(0.02);
    expect(answer(water)['ionicStrength_mol_L']).toBeGreaterThan(0.05);
  });
});

describe('what is refused', () => {
  it.each([
    ['not JSON', 'tap water', 'line: found "tap water", expected one JSON object'],
    ['a list', [24, 7], 'line: found [24,7], expected one JSON object'],
    ['null', null, 'line: found null, expected one JSON object'],
    ['no temperature', { pH: 7 }, 'T_C: found nothing, expected a number from 0 to 40 (°C)'],
    ['words for numbers', { T_C: 'warm' }, 'T_C: found "warm", expected a number from 0 to 40 (°C)'],
    ['too hot', { T_C: 60, pH: 7 }, 'T_C: found 60, expected a number from 0 to 40 (°C)'],
    ['pH off the scale', { T_C: 24, pH: 15 }, 'pH: found 15, expected a number from 0 to 14'],
    ['negative ammonia', { T_C: 24, pH: 7, TAN_mgN_L: -1 }, 'TAN_mgN_L: found -1, expected a number from 0 to'],
    ['null for a number', { T_C: 24, pH: null }, 'pH: found null, expected a number'],
    ['a misspelt key', { T_C: 24, ph: 7 }, '"ph": found 7, expected no other keys than T_C, pH'],
    ['three of two', { T_C: 24, pH: 7, alkalinity_meq_L: 1, DIC_mmol_L: 1 }, 'found all three, expected two of them'],
    ['alkalinity alone', { T_C: 24, alkalinity_meq_L: 1 }, 'alkalinity_meq_L: found it alone, expected DIC_mmol_L or pH with it'],
    ['carbon alone', { T_C: 24, DIC_mmol_L: 1 }, 'DIC_mmol_L: found it alone, expected alkalinity_meq_L or pH with it'],
    [
      'a pH the alkalinity cannot reach',
      { T_C: 24, pH: 10, alkalinity_meq_L: 0.01 },
      'alkalinity_meq_L: found 0.01 at pH 10, expected at least 0.09',
    ],
    ['brine', { T_C: 24, pH: 7, salinity_g_kg: 40 }, 'ionicStrength_mol_L: found 0.83'],
  ])('%s', (_what, line, message) => {
    expect(answer(line).error).toContain(message);
  });

  it('all faults of a line are named at once', () => {
    expect(answer({ T_C: 'warm', pH: 99 }).error?.split('; ')).toHaveLength(2);
  });

  it('keys of the language itself are keys like others', () => {
    expect(answer('{"T_C": 20, "__proto__": 1, "constructor": 2}').error).toMatch(/__proto__.*constructor/);
  });
});

describe('any line', () => {
  it('is answered by finite numbers, null or an error, never by a crash', () => {
    const values = Object.fromEntries(
      Object.entries(FIELDS).map(([key, { low, high }]) => [key, fc.double({ min: low, max: high, noNaN: true })]),
    ) as Record<string, fc.Arbitrary<number>>;
    fc.assert(
      fc.property(fc.record(values, { requiredKeys: ['T_C'] }), (water) => {
        const found = answer(water);
        if (found.error !== undefined) return;
        expect(Object.keys(found)).toEqual(COLUMNS);
        for (const value of Object.values(found)) expect(value === null || Number.isFinite(value)).toBe(true);
      }),
      { numRuns: 1000 },
    );
    fc.assert(
      fc.property(fc.oneof(fc.json(), fc.string()), (line) => {
        JSON.parse(answerLine(line));
      }),
    );
  });
});

describe('the command', () => {
  const run = (args: string[], input: string) =>
    spawnSync(process.execPath, ['--import', 'tsx', 'src/tools/water.ts', ...args], { input, encoding: 'utf8' });

  it('answers every line in order, bad ones included, and skips blank ones', () => {
    const { stdout, status } = run(['-'], '\uFEFF{"T_C": 20}\r\n\n  \n{"T_C": "x"}\n{"T_C": 20, "pH": 7}');
    const lines = stdout
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line) as Answer);
    expect(status).toBe(0);
    expect(lines).toHaveLength(3);
    expect(lines[1].error).toContain('T_C');
    expect(lines[2]['pH']).toBe(7);
  });

  it('says nothing to an empty input', () => {
    expect(run(['-'], '')).toMatchObject({ stdout: '', status: 0 });
  });

  it('says so when a file is not there, or none is named', () => {
    const missing = run(['no-such-file.jsonl'], '');
    expect(missing.status).toBe(1);
    expect(missing.stderr).toBe('Cannot read no-such-file.jsonl: there is no such file.\n');
    expect(run([], '').status).toBe(2);
  });
});
