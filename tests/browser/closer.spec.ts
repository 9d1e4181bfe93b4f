// A stage is looked at from close by: by key, by a double click, by a double tap; and the whole loop comes back.
import { expect, test, type Page } from '@playwright/test';
import { complaintsOf, expand, open, showLoop } from './journey';

interface Rect {
  x: number;
  y: number;
  width: number;
  height: number;
}
const stageOf = (page: Page, id: string): Promise<Rect | null> =>
  page.evaluate(
    (name) =>
      (window as { loopwright?: { anchors(): { stages: Record<string, Rect> } | null } }).loopwright?.anchors()?.stages[name] ?? null,
    id,
  );

/** Where a stage lies once the picture stands still. */
async function still(page: Page, id: string): Promise<Rect> {
  let last: Rect | null = null;
  await expect
    .poll(
      async () => {
        const now = await stageOf(page, id);
        const same = now !== null && last !== null && Math.abs(now.x - last.x) < 0.01 && Math.abs(now.width - last.width) < 0.01;
        last = now;
        return same;
      },
      { intervals: [250] },
    )
    .toBe(true);
  if (last === null) throw new Error(`The picture has no stage ${id}.`);
  return last;
}

const middle = ({ x, y, width, height }: Rect): { x: number; y: number } => ({ x: x + width / 2, y: y + height / 2 });
const whole = (page: Page) => page.getByRole('button', { name: 'Whole loop' });

/** The stage has come close, by at least a quarter; and it lies within the picture. */
async function isClose(page: Page, id: string, before: Rect): Promise<void> {
  await expect(whole(page)).toBeVisible();
  await expect.poll(async () => (await stageOf(page, id))?.width ?? 0).toBeGreaterThan(1.24 * before.width);
  const now = middle(await still(page, id));
  const picture = await page.locator('#world').boundingBox();
  if (picture === null) throw new Error('There is no picture.');
  expect(now.x).toBeGreaterThan(picture.x);
  expect(now.x).toBeLessThan(picture.x + picture.width);
}

async function isWhole(page: Page, id: string, before: Rect): Promise<void> {
  await expect(whole(page)).toHaveCount(0);
  await expect.poll(async () => Math.abs(((await stageOf(page, id))?.width ?? 0) - before.width)).toBeLessThan(1);
}

test('by the keyboard: Z looks closer and back, Escape goes back, and neither is taken from who types', async ({ page }) => {
  const complaints = complaintsOf(page);
  await open(page);
  const before = await still(page, 'fish');
  await page.locator('body').press('z');
  await isClose(page, 'fish', before);
  await page.keyboard.press('z');
  await isWhole(page, 'fish', before);
  await page.keyboard.press('z');
  await isClose(page, 'fish', before);
  await page.keyboard.press('Escape');
  await isWhole(page, 'fish', before);
  await showLoop(page);
  await expand(page, 'Fish tank');
  await page.getByRole('spinbutton', { name: 'Feed, g/d' }).press('z');
  await expect(whole(page)).toHaveCount(0);
  expect(complaints).toEqual([]);
});

test('by the mouse: a double click on a stage, and another anywhere', async ({ page }) => {
  const complaints = complaintsOf(page);
  await open(page);
  const before = await still(page, 'sump');
  const at = middle(before);
  await page.mouse.dblclick(at.x, at.y);
  await isClose(page, 'sump', before);
  const close = middle(await still(page, 'sump'));
  await page.mouse.dblclick(close.x, close.y);
  await isWhole(page, 'sump', before);
  expect(complaints).toEqual([]);
});

test('by a finger: a double tap, while two slow taps only choose', async ({ browser }) => {
  const context = await browser.newContext({ hasTouch: true, viewport: { width: 1024, height: 768 } });
  const page = await context.newPage();
  const complaints = complaintsOf(page);
  await open(page);
  const before = await still(page, 'fish');
  const at = middle(before);
  await page.touchscreen.tap(at.x, at.y);
  await page.waitForTimeout(600);
  await page.touchscreen.tap(at.x, at.y);
  await page.waitForTimeout(600);
  await expect(whole(page)).toHaveCount(0);
  await page.touchscreen.tap(at.x, at.y);
  await page.touchscreen.tap(at.x, at.y);
  await isClose(page, 'fish', before);
  await whole(page).tap();
  await isWhole(page, 'fish', before);
  expect(complaints).toEqual([]);
  await context.close();
});
