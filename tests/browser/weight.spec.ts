// Light on old laptops: what the built page weighs, how much script a frame takes with everything in view, how long a season's arrival
// holds the page, and what the picture leaves for the collector.
import { expect, test, type CDPSession, type Page } from '@playwright/test';
import { readdirSync, readFileSync } from 'node:fs';
import { extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { drawnByWebGL, open, placeByList, tend } from './journey';

const DIST = fileURLToPath(new URL('../../dist', import.meta.url));
const MOST_IN_ALL_kB = 700;
const MOST_BEFORE_PAINT_kB = 250;
/** Script in a frame, ms of the main thread's own time: what is promised, and room for slower machines than the one it was measured on. */
const SCRIPT = { median: 4, high: 8, room: 2 };
const WATCHED_ms = 8000;
/** The longest that the page is held when a season arrives, ms of the main thread's own time, with the same room. */
const HELD_ms = 16;
const ARRIVES_ms = 3500;
/**
 * What the picture may leave for the collector, B/s, by its own code and by all that it calls, collected objects counted. Measured with 256
 * B between samples after the browser has compiled what runs often. While a season runs, code that changes of the season call up is still
 * compiled now and then, and the browser's own notes on that count too. In a season that is paused, with fish, bubbles and water moving,
 * nothing is left, but for one such note now and then (seen: 4.8 kB in one function in half a minute).
 */
const LEFT_B_s = { running: 200, paused: 200 };
const WARM_ms = 90_000;
const SAMPLED_ms = { running: 60_000, paused: 30_000 };
/** What comes packed already is sent as it is. */
const PACKED: ReadonlySet<string> = new Set(['.woff2', '.png']);

function weight_kB(path: string): number {
  const bytes = readFileSync(path);
  return (PACKED.has(extname(path)) ? bytes : gzipSync(bytes, { level: 9 })).length / 1000;
}

test('the built page weighs no more than old laptops bear, in all and before its panels are painted', () => {
  const files = readdirSync(DIST, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));
  const all = files.filter((file) => extname(file) !== '.map').reduce((sum, file) => sum + weight_kB(file), 0);
  const page = readFileSync(join(DIST, 'index.html'), 'utf8');
  const first = [...page.matchAll(/(?:src|href)="\.\/([^"]+\.(?:js|css))"/g)].map(([, file]) => join(DIST, file));
  const face = files.filter((file) => /latin-wght-normal.*woff2$/.test(file));
  const before = [join(DIST, 'index.html'), ...first, ...face].reduce((sum, file) => sum + weight_kB(file), 0);
  console.log(`weight: ${all.toFixed(0)} kB in all, ${before.toFixed(0)} kB before the first paint`);
  expect(first.length).toBeGreaterThan(2);
  expect(face).toHaveLength(1);
  expect(before).toBeLessThan(MOST_BEFORE_PAINT_kB);
  expect(all).toBeLessThan(MOST_IN_ALL_kB);
});

interface Happening {
  name: string;
  ph: string;
  pid: number;
  tid: number;
  ts: number;
  dur: number;
  tdur?: number;
}
const SCRIPTS: ReadonlySet<string> = new Set([
  'FireAnimationFrame',
  'TimerFire',
  'FunctionCall',
  'RunMicrotasks',
  'HandlePostMessage',
  'EventDispatch',
  'MinorGC',
  'MajorGC',
]);

async function traced(cdp: CDPSession, categories: string[], watched: () => Promise<void>): Promise<Happening[]> {
  const events: Happening[] = [];
  cdp.on('Tracing.dataCollected', ({ value }) => events.push(...(value as unknown as Happening[])));
  const done = new Promise<void>((resolve) => cdp.once('Tracing.tracingComplete', () => resolve()));
  await cdp.send('Tracing.start', { transferMode: 'ReportEvents', traceConfig: { includedCategories: categories } });
  await watched();
  await cdp.send('Tracing.end');
  await done;
  return events;
}

/** Milliseconds of script in each frame, from outermost calls only. */
function scriptOfFrames(events: readonly Happening[]): number[] {
  const main = events.find(({ name }) => name === 'FireAnimationFrame');
  if (main === undefined) return [];
  const calls = events
    .filter((event) => event.pid === main.pid && event.tid === main.tid && event.ph === 'X' && SCRIPTS.has(event.name))
    .sort((a, b) => a.ts - b.ts);
  const frames: number[] = [];
  let ended = 0;
  let begun = -Infinity;
  for (const call of calls) {
    if (call.ts < ended) continue;
    ended = call.ts + call.dur;
    if (call.name === 'FireAnimationFrame' && call.ts - begun > 4000) {
      frames.push(0);
      begun = call.ts;
    }
    if (frames.length > 0) frames[frames.length - 1] += (call.tdur ?? call.dur) / 1000;
  }
  return frames;
}

async function runReference(page: Page): Promise<void> {
  await drawnByWebGL(page);
  await open(page);
  await placeByList(page);
  await tend(page);
  await page.getByRole('button', { name: 'Run the season' }).click();
  await page.getByRole('button', { name: '6 h/s' }).click();
}

test('a frame of the whole loop, running, takes little script', { tag: '@long' }, async ({ page }) => {
  await runReference(page);
  await page.waitForTimeout(6000);
  const frames = scriptOfFrames(
    await traced(await page.context().newCDPSession(page), ['devtools.timeline'], () => page.waitForTimeout(WATCHED_ms)),
  ).sort((a, b) => a - b);
  const at = (share: number): number => frames[Math.min(frames.length - 1, Math.floor(share * frames.length))];
  console.log(
    `script: ${at(0.5).toFixed(1)} ms a frame at the median, ${at(0.95).toFixed(1)} ms at the 95th percentile, of ${frames.length} frames`,
  );
  expect(frames.length).toBeGreaterThan(10);
  expect(at(0.5)).toBeLessThan(SCRIPT.median * SCRIPT.room);
  expect(at(0.95)).toBeLessThan(SCRIPT.high * SCRIPT.room);
});

test(
  'the arrival of a season, with its panels and its picture, holds the page for no longer than a frame',
  { tag: '@long' },
  async ({ page }) => {
    await drawnByWebGL(page);
    await open(page);
    await placeByList(page);
    await tend(page);
    // the picture of the last step of building is drawn
    await page.waitForTimeout(2500);
    const events = await traced(await page.context().newCDPSession(page), ['devtools.timeline', 'toplevel'], async () => {
      await page.getByRole('button', { name: 'Run the season' }).click();
      await expect(page.getByLabel('Stage shown')).toBeVisible();
      await page.waitForTimeout(ARRIVES_ms);
    });
    const main = events.find(({ name }) => name === 'FireAnimationFrame');
    const tasks = events
      .filter((event) => event.ph === 'X' && event.pid === main?.pid && event.tid === main.tid && event.name.endsWith('RunTask'))
      .map(({ tdur, dur }) => (tdur ?? dur) / 1000);
    const longest = Math.max(...tasks);
    console.log(`arrival: the longest of ${tasks.length} tasks takes ${longest.toFixed(1)} ms`);
    expect(tasks.length).toBeGreaterThan(50);
    expect(longest).toBeLessThan(HELD_ms * SCRIPT.room);
  },
);

interface Sampled {
  callFrame: { url: string; functionName: string };
  selfSize: number;
  children: Sampled[];
}

/** Bytes by who made them: the picture's own functions, and what they call. */
function sizesUnder(node: Sampled, from: RegExp, within: boolean, into: Map<string, number>): void {
  const inside = within || from.test(node.callFrame.url);
  if (inside && node.selfSize > 0) into.set(node.callFrame.functionName, (into.get(node.callFrame.functionName) ?? 0) + node.selfSize);
  for (const child of node.children) sizesUnder(child, from, inside, into);
}

async function sampled(page: Page, ms: number): Promise<Sampled> {
  const cdp = await page.context().newCDPSession(page);
  await cdp.send('HeapProfiler.enable');
  await cdp.send('HeapProfiler.startSampling', {
    samplingInterval: 256,
    includeObjectsCollectedByMajorGC: true,
    includeObjectsCollectedByMinorGC: true,
  });
  await page.waitForTimeout(ms);
  const { profile } = await cdp.send('HeapProfiler.stopSampling');
  await cdp.detach();
  return profile.head as Sampled;
}

/** @returns bytes a second */
function left(what: string, head: Sampled, from: RegExp, ms: number): number {
  const sizes = new Map<string, number>();
  sizesUnder(head, from, false, sizes);
  const rate = ([...sizes.values()].reduce((sum, size) => sum + size, 0) * 1000) / ms;
  const most = [...sizes]
    .sort((a, b) => b[1] - a[1])
    .slice(0, 5)
    .map(([name, size]) => `${name} ${((size * 1000) / ms).toFixed(0)}`);
  console.log(`allocation, ${what}: ${rate.toFixed(0)} B/s (${most.join(', ')})`);
  return rate;
}

test(
  'the picture of a season in its steady state leaves next to nothing for the collector, running or paused',
  { tag: '@long' },
  async ({ page }) => {
    test.setTimeout(300_000);
    await runReference(page);
    await page.waitForTimeout(WARM_ms);
    const running = await sampled(page, SAMPLED_ms.running);
    await page.getByRole('button', { name: 'Pause' }).click();
    // levels and colours come to rest
    await page.waitForTimeout(5000);
    const paused = await sampled(page, SAMPLED_ms.paused);
    // that anything is attributed at all
    expect(left('by what draws the picture', running, /\/phaser-/, SAMPLED_ms.running)).toBeGreaterThan(1000);
    expect(left('by the picture of a running season', running, /\/world-/, SAMPLED_ms.running)).toBeLessThan(LEFT_B_s.running);
    expect(left('by the picture of a paused season', paused, /\/world-/, SAMPLED_ms.paused)).toBeLessThan(LEFT_B_s.paused);
  },
);
