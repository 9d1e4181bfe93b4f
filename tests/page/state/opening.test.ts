// Opening lessons by address, from the path and by hand; the check of an author's file; what counts as progress.
import { describe, expect, it } from 'vitest';
import type { LessonCard } from '../../../src/lessons/card';
import type { OldFile } from '../../../src/lessons/oldFormats';
import type { Played } from '../../../src/lessons/playLesson';
import type { Answers, Request } from '../../../src/worker/messages';
import { forgetful } from '../../../src/page/state/common/device';
import { farOnPath, nextOnPath, NOWHERE, type Surroundings } from '../../../src/page/state/path/path';
import type { Client } from '../../../src/page/state/common/state';
import { createPageStore } from '../../../src/page/state/common/store';
import { openedLesson } from '../../../src/page/state/build/build';
import { atResult, begun } from '../../../src/page/state/run/lived';
import { mergeSeason } from '../../../src/page/state/run/view';
import { fakeClient, smallLesson, smallSeason } from './fakeClient';
import { seen } from './seen';

const card = (number: string, more: Partial<LessonCard> = {}): LessonCard => ({
  number,
  file: `${number}-x.json`,
  id: `x${number}`,
  title: `X ${number}`,
  teaches: '',
  aim: '',
  minutes: 20,
  free: false,
  loop: [],
  ...more,
});
const OLD: OldFile = { format: 'loopwright.lesson/1', renamed: [{ was: 'cut', is: 'harvest' }] };
const PLAYED: Played[] = [
  { role: 'reference', key: 'reference', title: '', fishHealth: 90, harvest: 80, marks: 3, shown: [], asked: [], passes: true },
];

/** A page with a path of three, a web of two files, and a worker whose every step can be held. */
function page(more: Partial<Surroundings> = {}) {
  const fake = fakeClient();
  const addresses: [string, 'new' | 'same'][] = [];
  const read: string[] = [];
  const held: (() => void)[] = [];
  let holding = false;
  const client: Client = {
    async ask<R extends Request>(request: R): Promise<Answers[R['ask']]> {
      if (request.ask === 'play') {
        if (holding) await new Promise<void>((go) => held.push(go));
        return PLAYED as Answers[R['ask']];
      }
      if (request.ask === 'openLesson' && request.text !== 'broken')
        return {
          lesson: { ...smallLesson(), id: request.text, title: request.text },
          ...(request.text === 'old' ? { old: OLD } : {}),
        } as Answers[R['ask']];
      return fake.ask(request);
    },
  };
  const store = createPageStore(client, {
    ...NOWHERE,
    cards: [card('00'), card('01'), card('02', { free: true })],
    page: 'https://school.example/',
    readCard: async (file) => {
      read.push(file);
      return `text of ${file}`;
    },
    fetchText: (url) =>
      url.endsWith('gone.json')
        ? Promise.reject(new Error('the answer was 404'))
        : Promise.resolve(url.endsWith('bad.json') ? 'broken' : `text at ${url}`),
    setAddress: (hash, step) => addresses.push([hash, step]),
    device: forgetful(),
    today: () => '2026-11-26',
    ...more,
  });
  return {
    store,
    state: () => seen(store),
    addresses,
    read,
    hold: () => {
      holding = true;
    },
    release: () => {
      holding = false;
      while (held.length > 0) held.shift()?.();
    },
  };
}

describe('an address', () => {
  it('opens a lesson of the path, the first one where it asks for none', async () => {
    const { state } = page();
    await state().openAddress('');
    expect(state().lesson?.title).toBe('text of 00-x.json');
    await state().openAddress('#lesson=1');
    expect(state().lesson?.title).toBe('text of 01-x.json');
    expect(state().path.opened).toEqual({ from: 'path', name: '01-x.json', address: '#lesson=01' });
  });

  it('opens a file of the web', async () => {
    const { state } = page();
    await state().openAddress('#lesson=own/roots.json');
    expect(state().lesson?.title).toBe('text at https://school.example/own/roots.json');
  });

  it.each([
    ['#lesson=99', 'There is no lesson 99. They are numbered 00 to 02'],
    ['#lesson=gone.json', 'The lesson at https://school.example/gone.json could not be fetched: the answer was 404.'],
    ['#lesson=http://else.example/a.json', 'The address asks for “http://else.example/a.json”, which is no lesson'],
    ['#file=mine.json', 'mine.json was opened by hand'],
  ])('%s says why not, keeps the lesson and its loop, and puts the address back', async (hash, words) => {
    const { state, addresses } = page();
    await state().openAddress('#lesson=01');
    state().place('settler', 1);
    const { plan, lesson } = state();
    await state().openAddress(hash);
    expect(state().failure).toContain(words);
    expect(state()).toMatchObject({ plan, lesson });
    expect(addresses).toEqual([['#lesson=01', 'same']]);
  });

  it('of a file with problems lists them and keeps the lesson', async () => {
    const { state } = page();
    await state().openAddress('#lesson=01');
    await state().openAddress('#lesson=bad.json');
    expect(state().problems).toHaveLength(1);
    expect(state().lesson?.title).toBe('text of 01-x.json');
  });

  it('that fails on a page just begun opens the first lesson beside the message', async () => {
    const { state, addresses } = page();
    await state().openAddress('#lesson=99');
    expect(state().lesson?.title).toBe('text of 00-x.json');
    expect(state().failure).toContain('no lesson 99');
    expect(addresses).toEqual([['', 'same']]);
  });

  it('of the lesson at hand brings the loop back as it is', async () => {
    const { state, read } = page();
    await state().openAddress('');
    state().place('settler', 1);
    const { plan } = state();
    state().setScreen('lessons');
    await state().openAddress('#lesson=00');
    expect(state()).toMatchObject({ screen: 'loop', plan });
    expect(read).toHaveLength(1);
  });

  it('asked for last wins, however long the others take', async () => {
    const waiting: (() => void)[] = [];
    const { state } = page({
      readCard: async (file) => {
        if (file === '00-x.json') await new Promise<void>((go) => waiting.push(go));
        return `text of ${file}`;
      },
    });
    const slow = state().openAddress('#lesson=00');
    await state().openAddress('#lesson=01');
    waiting[0]();
    await slow;
    expect(state().lesson?.title).toBe('text of 01-x.json');
  });

  it('of something else leaves the page alone', async () => {
    const { state, read } = page();
    await state().openAddress('#lesson=01');
    await state().openAddress('#anything');
    expect(read).toEqual(['01-x.json']);
  });
});

describe('a file given by hand', () => {
  it('is opened, has an address of its own, and comes back with it', async () => {
    const { state, addresses } = page();
    await state().openAddress('');
    await state().openFile('mine.json', 'my text');
    expect(state().lesson?.title).toBe('my text');
    expect(addresses).toEqual([['#file=mine.json', 'new']]);
    await state().openAddress('#lesson=01');
    expect(state().path.file).toBeNull();
    await state().openAddress('#file=mine.json');
    expect(state().lesson?.title).toBe('my text');
  });

  it('with problems shows them on its sheet; the lesson stays, and the mended file takes its place', async () => {
    const { state } = page();
    await state().openAddress('#lesson=01');
    await state().openFile('mine.json', 'broken');
    expect(state().path.file).toMatchObject({ name: 'mine.json', shown: true, lesson: null, problems: [{ path: 'plan.days' }] });
    expect(state()).toMatchObject({ problems: [], path: { opened: { address: '#lesson=01' } } });
    await state().openFile('mine.json', 'mended');
    expect(state().path.file).toMatchObject({ shown: true, problems: [] });
    expect(state().lesson?.title).toBe('mended');
  });

  it('is played when asked, and played again by itself when it is given again', async () => {
    const { state, hold, release } = page();
    await state().openFile('mine.json', 'a');
    expect(state().path.file?.played).toBeNull();
    await state().playFile();
    expect(state().path.file?.played).toEqual(PLAYED);
    hold();
    const again = state().openFile('mine.json', 'b');
    for (let turn = 0; turn < 20; turn += 1) await Promise.resolve();
    expect(state().path.file).toMatchObject({ playing: true, played: null });
    release();
    await again;
    expect(state().path.file).toMatchObject({ playing: false, played: PLAYED });
  });

  it('shows no seasons of a version before', async () => {
    const { state, hold, release } = page();
    await state().openFile('mine.json', 'a');
    hold();
    const first = state().playFile();
    await state().openFile('mine.json', 'broken');
    release();
    await first;
    expect(state().path.file).toMatchObject({ played: null, lesson: null });
  });
});

describe('a file of an older format', () => {
  it('opens, and what was changed in it is told until it was read', async () => {
    const { state } = page();
    await state().openFile('mine.json', 'old');
    expect(state().lesson?.title).toBe('old');
    expect(state().path.old).toEqual(OLD);
    state().dismissOld();
    expect(state().path.old).toBeNull();
    await state().openAddress('#lesson=old.json');
    await state().openFile('mine.json', 'new');
    expect(state().path.old).toBeNull();
  });
});

describe('progress', () => {
  const earned = (n: number) => [0, 1, 2].map((index) => ({ fishHealth: true, harvest: true, goals: [], moves: null, earned: index < n }));
  const end = (store: ReturnType<typeof page>['store'], marks: number): void => {
    const { plan, lesson } = seen(store);
    if (plan === null || lesson === null) throw new Error('no lesson is open');
    const season = mergeSeason(null, smallSeason(plan, 0));
    const result = atResult(begun(openedLesson(lesson, true), season, 'paused'));
    store.setState({ game: result });
    store.setState({ game: { ...result, judged: { marks: earned(marks), predictions: [] } } });
  };

  it('is booked when a season comes to its judged result, and survives on the device', async () => {
    const device = forgetful();
    const { store, state } = page({ device });
    await state().openAddress('#lesson=01');
    end(store, 2);
    end(store, 1);
    expect(state().path.progress).toEqual({ 'text of 01-x.json': { marks: 2, played: '2026-11-26' } });
    expect(page({ device }).state().path.progress).toEqual(state().path.progress);
  });

  it("of a teacher's copy that kept a lesson's id is not that lesson's", async () => {
    const { store, state } = page({ cards: [card('00', { id: 'copied' })] });
    await state().openFile('copy.json', 'copied');
    end(store, 3);
    expect(state().path.progress).toEqual({});
    await state().openFile('own.json', 'own');
    end(store, 1);
    expect(state().path.progress).toEqual({ own: { marks: 1, played: '2026-11-26' } });
  });

  it('leads on: to the first without a mark, then the first short of three, then the bench', () => {
    const cards = [card('00'), card('01'), card('02', { free: true })];
    const after = (...marks: number[]) => ({
      cards,
      opened: null,
      file: null,
      old: null,
      progress: Object.fromEntries(marks.map((n, index) => [`x0${index}`, { marks: n, played: '2026-11-26' }])),
    });
    expect(nextOnPath(after(), 3)?.number).toBe('00');
    expect(nextOnPath(after(1), 3)?.number).toBe('01');
    expect(nextOnPath(after(3, 2), 3)?.number).toBe('01');
    expect(nextOnPath(after(3, 3), 3)?.number).toBe('02');
    expect(farOnPath(after(1))).toEqual({ done: 1, of: 2, minutesLeft: 20 });
  });
});
