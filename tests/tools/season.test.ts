// The season command: its table, its texts, and what it says when it cannot run.
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { seasonTable } from '../../src/tools/seasonTable';
import { readWish, seasonCommand } from '../../src/tools/seasonCommand';
import { runSeason } from '../../src/season/season';
import type { Plan } from '../../src/season/plan';
import { CommandError } from '../../src/tools/planText';
import { csvText, jsonText } from '../../src/tools/tableText';
import { tinyLoop, tinySeason } from './tinySeason';

const WATER = [
  'TAN_mgN_L',
  'NO2_mgN_L',
  'NO3_mgN_L',
  'NH3_mgN_L',
  'O2_mg_L',
  'CO2_mg_L',
  'pH',
  'alkalinity_meq_L',
  'H2S_ug_L',
  'CH4_mg_L',
  'organics_mgCOD_L',
  'solidsCoarse_mg_L',
  'solidsFine_mg_L',
  'PO4_mgP_L',
  'K_mg_L',
  'Ca_mg_L',
  'Fe_mg_L',
  'sludge_g',
  'T_C',
  'flow_m3_d',
  'level_m',
];
const named = (id: string, names: string[]): string[] => names.map((name) => `${id}.${name}`);
const END = [
  'score.fishHealth',
  'score.harvest',
  'score.stewardship',
  'ledger.N',
  'ledger.P',
  'ledger.C',
  'ledger.S',
  'ledger.COD',
  'ledger.water',
  'ledger.clipped',
];

function column(every: 'day' | 'hour', name: string): number[] {
  return seasonTable(tinySeason(), every, tinyLoop).find((candidate) => candidate.name === name)?.values ?? [];
}

describe('the season table', () => {
  test('has a day column, the columns of each stage that holds or lifts water, scores and ledger', () => {
    expect(seasonTable(tinySeason(), 'day', tinyLoop).map((one) => one.name)).toEqual([
      'day',
      ...named('fish', [...WATER, 'number', 'mass_g', 'eaten_g_d', 'welfare']),
      ...named('rafts', [...WATER, 'leafDry_g_m2', 'rootHealth', 'rootMat_g_m2', 'cut_kg']),
      ...named('pump', WATER),
      ...END,
    ]);
  });

  test('begins at the start and ends with the last day', () => {
    expect(column('day', 'day')).toEqual([0, 1, 2]);
    expect(column('day', 'fish.TAN_mgN_L')).toEqual([0, 24, 48]);
    const hours = column('hour', 'day');
    expect([hours.length, hours[0], hours[6], hours[48]]).toEqual([49, 0, 0.25, 2]);
    expect(column('hour', 'fish.TAN_mgN_L')[6]).toBe(6);
  });

  test('shows a long bed by its mean and a pump by the water it lifts, in flow order', () => {
    expect(column('day', 'rafts.NO3_mgN_L')).toEqual([0, 72, 144]);
    expect(column('day', 'rafts.flow_m3_d')).toEqual([0, 96, 192]);
    // the last cell of the bed before it
    expect(column('day', 'pump.NO3_mgN_L')).toEqual([0, 96, 192]);
    expect(column('day', 'pump.sludge_g')).toEqual([0, 0, 0]);
  });

  test('gives what was eaten as the mean of the day, hour by hour as it was', () => {
    expect(column('day', 'fish.eaten_g_d')).toEqual([0, 12.5, 36.5]);
    expect(column('hour', 'fish.eaten_g_d').slice(0, 3)).toEqual([0, 1, 2]);
  });

  test('carries the scores of the last midnight and the ledger of the season', () => {
    expect(column('day', 'score.fishHealth').slice(1)).toEqual([90, 91]);
    expect(column('hour', 'score.harvest').slice(24, 26)).toEqual([10, 10]);
    expect(column('day', 'ledger.N')).toEqual([1.5e-13, 1.5e-13, 1.5e-13]);
    expect(column('day', 'ledger.clipped')).toEqual([2e-9, 2e-9, 2e-9]);
  });

  test('as text has one line a row and as many fields as columns', () => {
    const table = seasonTable(tinySeason(), 'day', tinyLoop);
    const lines = csvText(table)
      .trimEnd()
      .split('\n')
      .map((line) => line.split(','));
    expect(lines).toHaveLength(4);
    for (const line of lines) expect(line).toHaveLength(table.length);
    expect(lines[1][0]).toBe('0');
    // no score is known before the first day is over
    expect(lines[1][table.findIndex((one) => one.name === 'score.harvest')]).toBe('NaN');
  });

  test('as JSON has the same columns as arrays, and the summary', () => {
    const table = seasonTable(tinySeason(), 'day', tinyLoop);
    const read = JSON.parse(jsonText(table, tinySeason().summary)) as Record<string, unknown>;
    expect(Object.keys(read)).toEqual([...table.map((one) => one.name), 'summary']);
    expect(read['fish.TAN_mgN_L']).toEqual([0, 24, 48]);
    expect(read['ledger.P']).toEqual([null, null, null]);
    expect(read['summary']).toMatchObject({ days: 2, steps: 10 });
  });
});

describe('the season command line', () => {
  test('is understood in any order', () => {
    expect(readWish(['--json', '-', '--every', 'hour'])).toMatchObject({ plan: '-', json: true, every: 'hour' });
    expect(readWish(['plan.json', '--every=day', '--csv'])).toMatchObject({ plan: 'plan.json', json: false, every: 'day' });
    expect(readWish(['--preset'])).toMatchObject({ preset: '' });
    expect(readWish(['--preset', 'first-loop'])).toMatchObject({ preset: 'first-loop', plan: null });
    expect(readWish(['--preset=first-loop', '--json'])).toMatchObject({ preset: 'first-loop', json: true });
    expect(readWish(['--preset', '--csv'])).toMatchObject({ preset: '', json: false });
    expect(readWish(['--json', '--csv', 'a.json'])).toMatchObject({ plan: 'a.json', json: false });
    expect(readWish(['a.json', '--ensemble=12', '-h'])).toMatchObject({ ensemble: 12, help: true });
  });

  test('is refused with what was got and expected', () => {
    expect(() => readWish(['--every', 'week'])).toThrow('--every: got week; expected hour or day');
    expect(() => readWish(['a.json', '--every'])).toThrow('--every: got nothing; expected hour or day');
    expect(() => readWish(['a.json', '--ensemble'])).toThrow('--ensemble: got nothing; expected a number of draws');
    expect(() => readWish(['--colour'])).toThrow('got --colour; expected --every, --csv, --json, --ensemble, --preset or --help');
    expect(() => readWish(['-x'])).toThrow('got -x; expected');
    expect(() => readWish(['a.json', 'b.json'])).toThrow('expected one plan');
    expect(() => readWish(['a.json', '--ensemble', '0'])).toThrow('--ensemble: got 0; expected a number of draws');
  });
});

interface Outcome {
  code: number | null;
  out: string;
  err: string;
}

/** The command in this process: what it prints, and what runCommand would say of a failure. */
function season(...words: string[]): Outcome {
  let out = '';
  let err = '';
  const surroundings = {
    print: (text: string) => {
      out += text;
    },
    note: (text: string) => {
      err += text;
    },
    run: (plan: Plan) => runSeason(plan),
  };
  try {
    return { code: seasonCommand(words, surroundings), out, err };
  } catch (failure) {
    if (!(failure instanceof CommandError)) throw failure;
    return { code: failure.exitCode, out, err: `${err}${failure.message}\n` };
  }
}

/** The command as a person starts it. */
function started(words: string[], input: string): Outcome {
  const root = fileURLToPath(new URL('../../', import.meta.url));
  const done = spawnSync(process.execPath, ['--import', 'tsx', 'src/tools/season.ts', ...words], { cwd: root, input, encoding: 'utf8' });
  return { code: done.status, out: done.stdout, err: done.stderr };
}

describe('the season command', () => {
  test('prints the season of an example plan given on standard input', () => {
    const listed = season('--preset').out.trim().split('\n');
    expect(listed).toContain('nitrification-rig');
    const plan = season('--preset', 'nitrification-rig').out;
    const { code, out, err } = started(['-'], plan);
    expect(err).toBe('');
    expect(code).toBe(0);
    const lines = out.trimEnd().split('\n');
    expect(lines).toHaveLength(1 + 1 + (JSON.parse(plan) as { days: number }).days);
    expect(lines[0].split(',')).toEqual(['day', ...named('media', WATER), ...END]);
  });

  test('prints the bands of an ensemble', () => {
    const { code, out, err } = season('--ensemble', '2', 'tests/season/plans/nitrification-rig.json');
    expect(err).toBe('');
    expect(code).toBe(0);
    const [head, first] = out.split('\n').map((line) => line.split(','));
    expect(head.slice(0, 4)).toEqual(['day', 'media.TAN_mgN_L.p10', 'media.TAN_mgN_L.p50', 'media.TAN_mgN_L.p90']);
    expect(first).toHaveLength(head.length);
  });

  test('tells on standard error what was changed in a plan of an older format, and prints the same table', () => {
    const plan = season('--preset', 'settler-rig').out;
    const today = season('tests/season/plans/settler-rig.json', '--json');
    const old = started(
      ['-', '--json'],
      plan.replace('loopwright.plan/2', 'loopwright.plan/1').replaceAll('conicalClarifier', 'coneSettler'),
    );
    expect(old.out).toBe(today.out);
    expect(old.err).toContain('written in the format loopwright.plan/1, read as it was meant');
  });

  test('names the place of a fault and prints no stack', () => {
    const { code, out, err } = started(
      ['-'],
      '{"format": "loopwright.plan/2", "loop": [{"id": "fish", "kind": "fishTank", "volume_m3": "big"}]}',
    );
    expect(code).toBe(1);
    expect(out).toBe('');
    expect(err).toBe('standard input cannot be used:\n  loop[0].volume_m3: got "big"; expected a number from 0.00001 to 1000 m³\n');
  });

  test('leaves with 1 for a file that is not there and 2 for a line it cannot understand', () => {
    expect(season('nowhere.json')).toMatchObject({ code: 1, err: 'nowhere.json: no such file\n' });
    expect(season().code).toBe(2);
    expect(season('--preset', 'nothing')).toMatchObject({ code: 2, out: '' });
  });
});
