// The sequences command in this process: its JSON, its tables, and what it says to bad input.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Plan } from '../../src/season/plan';
import { playVariant } from '../../src/tools/playVariant';
import type { Ground, Outcome } from '../../src/tools/playVariant';
import { lossOf } from '../../src/tools/lossOf';
import { quartilesOf } from '../../src/tools/sequencesAnswer';
import type { Answer, Row } from '../../src/tools/sequencesAnswer';
import { sequencesCommand } from '../../src/tools/sequencesCommand';
import { referencePlan } from '../season/plans';
import { changed, soundLesson } from '../lessons/plans';
import type { Json } from '../lessons/plans';

const PARTS = ['settler', 'mats', 'degas', 'rafts'];
const SCORES = ['fishHealth', 'harvest', 'marks', 'handOver', 'work_h'];

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'sequences-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

function kept(name: string, value: unknown): string {
  const path = join(folder, name);
  writeFileSync(path, JSON.stringify(value));
  return path;
}

/** The first lesson, three days long, with what is measured later taken out. */
function shortLesson(): Json {
  const short = changed(soundLesson(), ['plan', 'days'], 3);
  const plain = ['predictions', 'demonstrations', 'mistakes'].reduce<Json>((lesson, key) => changed(lesson, [key], []), short);
  return changed(plain, ['scoring', 'marks', 2, 'goals'], undefined);
}

async function sequences(...words: string[]): Promise<{ code: number; out: string; plans: Plan[] }> {
  let out = '';
  const plans: Plan[] = [];
  const code = await sequencesCommand(words, {
    print: (text) => {
      out += text;
    },
    note: () => undefined,
    play: (ground: Ground, all: readonly Plan[]): Promise<Outcome[]> => {
      plans.push(...all);
      return Promise.resolve(all.map((plan) => playVariant(ground, plan)));
    },
  });
  return { code, out, plans };
}

describe('the sequences of a lesson', () => {
  let answer: Answer;
  let text: string;
  beforeAll(async () => {
    const file = kept('lesson.json', shortLesson());
    const { code, out } = await sequences(file, '--json');
    expect(code).toBe(0);
    answer = JSON.parse(out) as Answer;
    text = (await sequences(file)).out;
  });

  test('are JSON of one shape, a row each, with no hand-over until it is known', () => {
    expect(Object.keys(answer)).toEqual(['lesson', 'reference', 'sequences', 'withoutPart', 'withoutRoutine', 'summary']);
    expect(answer.lesson).toBe('first-loop');
    for (const row of answer.sequences) expect(Object.keys(row)).toEqual(['order', ...SCORES]);
    for (const row of answer.withoutPart) expect(Object.keys(row)).toEqual(['part', ...SCORES]);
    for (const row of answer.withoutRoutine) expect(Object.keys(row)).toEqual(['routine', ...SCORES]);
    expect(answer.sequences.every(({ handOver }) => handOver === null)).toBe(true);
  });

  test('are all 24, the reference first, and each part and each routine is left out once', () => {
    expect(new Set(answer.sequences.map(({ order }) => order.join())).size).toBe(24);
    expect(answer.reference).toEqual(answer.sequences[0]);
    expect(answer.reference.order).toEqual(['fish', ...PARTS, 'sump', 'pump']);
    expect(answer.withoutPart.map(({ part }) => part)).toEqual(PARTS);
    expect(answer.withoutRoutine.map(({ routine }) => routine)).toMatchObject([
      { do: 'drain', stage: 'settler', every_d: 1 },
      { do: 'rinse', stage: 'mats', every_d: 3 },
    ]);
  });

  test('score as the lesson command scores them: the harvest of a loop without its bed is that of its fish alone', () => {
    const bare = answer.withoutPart.find(({ part }) => part === 'rafts');
    expect(bare?.harvest).toBeLessThanOrEqual(50);
    expect(answer.reference.harvest).toBeGreaterThan(bare?.harvest ?? Infinity);
    for (const { marks } of answer.sequences) expect([0, 1, 2, 3]).toContain(marks);
  });

  test('are summed up: best and worst by both scores, quartiles, three marks, and where the reference stands', () => {
    const { summary } = answer;
    const sums = answer.sequences.map((row) => (row.fishHealth ?? 0) + (row.harvest ?? 0));
    const sum = (row: Row | null): number => (row?.fishHealth ?? 0) + (row?.harvest ?? 0);
    expect(summary).toMatchObject({ possible: 24, played: 24, refused: 0 });
    expect(sum(summary.best)).toBe(Math.max(...sums));
    expect(sum(summary.worst)).toBe(Math.min(...sums));
    expect(summary.rankOfReference).toBe(1 + sums.filter((other) => other > sums[0]).length);
    expect(summary.shareWithThreeMarks).toBeCloseTo(answer.sequences.filter(({ marks }) => marks === 3).length / 24, 6);
    const harvests = answer.sequences.map(({ harvest }) => harvest ?? 0);
    const [first, median, third] = summary.quartiles.harvest ?? [NaN, NaN, NaN];
    expect(harvests.filter((harvest) => harvest <= median).length).toBeGreaterThanOrEqual(12);
    expect(first).toBeLessThanOrEqual(median);
    expect(median).toBeLessThanOrEqual(third);
  });

  test('are a table with a line for each and the cause of the largest loss; the hand-over has no column yet', () => {
    for (const { order } of answer.sequences) expect(text).toContain(order.join(' '));
    expect(text).toMatch(/^\* fish settler mats degas rafts sump pump +\d/m);
    expect(text).toMatch(/^rafts .*No plants take up nutrients$/m);
    expect(text).toContain('drain settler, every 1 d from day 1');
    expect(text).toMatch(/reference +rank \d+ of 24/);
    expect(text).not.toContain('hand-over');
  });
});

test('the threads of the built command bring home what this process would find, each to its own row', async () => {
  const file = kept('threads.json', referencePlan({ days: 1 }));
  const root = fileURLToPath(new URL('../../', import.meta.url));
  const node = (...words: string[]) => spawnSync(process.execPath, words, { cwd: root, encoding: 'utf8' });
  expect(node('node_modules/vite/bin/vite.js', 'build', '--config', 'tests/bench/commands.config.ts').status).toBe(0);
  const done = node('node_modules/.commands/sequences.js', file, '--json');
  expect(done.stderr).toBe('');
  expect(JSON.parse(done.stdout)).toEqual(JSON.parse((await sequences(file, '--json')).out));
});

describe('the sequences of a plan', () => {
  test('have no lesson and no marks, and the plan is their reference', async () => {
    const { out } = await sequences(kept('plan.json', referencePlan({ days: 1 })), '--json');
    const answer = JSON.parse(out) as Answer;
    expect(answer.lesson).toBeNull();
    expect(answer.sequences).toHaveLength(24);
    expect(answer.sequences.every(({ marks }) => marks === null)).toBe(true);
    expect(answer.summary.shareWithThreeMarks).toBeNull();
  });

  test('keep the heights that the plan gives, and let all others follow the sequence, as the page does', async () => {
    const plan = referencePlan({ days: 1 });
    const loop = plan.loop.map((stage) => (stage.id === 'rafts' ? { ...stage, stand_m: 0.9 } : stage));
    const { out, plans } = await sequences(kept('stand.json', { ...plan, loop }));
    for (const one of plans) for (const stage of one.loop) expect(stage.stand_m).toBe(stage.id === 'rafts' ? 0.9 : undefined);
    // water cannot run up to the bed: the loop is lived all the same, and the row says what is wrong with it
    expect(out).toMatch(/^\* fish settler mats degas rafts sump pump +\d/m);
    expect(out).toContain('Water cannot run uphill after');
  });

  test('tell what cannot be played, with a code and words and no scores', async () => {
    const plan = referencePlan({ days: 1 });
    const side = plan.side.map((one) => ('into' in one ? { ...one, into: 'degas' } : one));
    const { out } = await sequences(kept('into.json', { ...plan, side }), '--json');
    const { withoutPart } = JSON.parse(out) as Answer;
    const gone = withoutPart.find(({ part }) => part === 'degas');
    expect(gone).toMatchObject({ fishHealth: null, harvest: null, marks: null, handOver: null, work_h: null });
    expect(gone?.refused?.code).toBe('missing');
    expect(gone?.refused?.words).toContain('side[0].into: got "degas"');
    expect(withoutPart.filter(({ refused }) => refused !== undefined)).toHaveLength(1);
  });
});

describe('the largest loss', () => {
  const ground = { lesson: null, plantsWeight: 0.5 };

  test('of a season without power is fish health, for want of oxygen', () => {
    const plan = referencePlan({ days: 4 });
    const dark = { ...plan, actions: [...plan.actions, { day: 1, do: 'power' as const, on: false }] };
    const loss = lossOf(playVariant(ground, dark), playVariant(ground, plan));
    expect(loss?.score).toBe('fishHealth');
    expect(loss?.mishaps).toContainEqual({ kind: 'powerOff', stage: expect.any(String) as string, day: 1 });
    expect(loss?.trouble).toMatchObject({ stage: 'fish', variable: 'O2_mg_L', side: 'below' });
  });

  test('of a season against itself is none', () => {
    const own = playVariant(ground, referencePlan({ days: 2 }));
    expect(lossOf(own, own)).toBeNull();
  });
});

test('quartiles lie between the values where a quarter falls between them', () => {
  expect(quartilesOf([4, 1, 3, 2])).toEqual([1.75, 2.5, 3.25]);
  expect(quartilesOf([7])).toEqual([7, 7, 7]);
  expect(quartilesOf([])).toBeNull();
});

describe('bad input', () => {
  test('is told by file and place', async () => {
    await expect(sequences(kept('other.json', { format: 'x' }))).rejects.toThrow(
      /format: got "x"; expected one of loopwright\.lesson\/2, loopwright\.plan\/2/,
    );
    await expect(sequences(kept('list.json', null))).rejects.toThrow(/format: got nothing/);
    await expect(sequences(kept('broken.json', changed(shortLesson(), ['reference', 'order', 1], 'nobody')))).rejects.toThrow(
      /reference\.order\[1\]: got "nobody"/,
    );
    await expect(sequences(join(folder, 'nowhere.json'))).rejects.toThrow('no such file');
  });

  test('on the command line is told with what is understood', async () => {
    await expect(sequences()).rejects.toMatchObject({ exitCode: 2 });
    await expect(sequences('a.json', 'b.json')).rejects.toThrow('expected one lesson or plan');
    await expect(sequences('a.json', '--jsn')).rejects.toThrow('got --jsn; expected --json or --help');
    expect((await sequences('--help')).out).toContain('npm run -s sequences');
  });
});
