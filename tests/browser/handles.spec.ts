// A size is pulled in the picture: the handle follows mouse and finger, the list tells the new size, and one step takes it back.
import { expect, test, type CDPSession, type Page } from '@playwright/test';
import { complaintsOf, expand, showLoop } from './journey';

interface Rect {
  x: number;
  y: number;
  width: number;
  height: number;
}
const handleOf = (page: Page, size: string): Promise<Rect | null> =>
  page.evaluate(
    (name) =>
      (window as { loopwright?: { anchors(): { handles: Record<string, Rect> } | null } }).loopwright?.anchors()?.handles[name] ?? null,
    size,
  );

test('the stand of a bed is pulled down in the picture, and set back', async ({ page }) => {
  const complaints = complaintsOf(page);
  await page.goto('./#lesson=09');
  await expect(page.getByText('Water cannot run uphill').first()).toBeVisible();
  await showLoop(page);
  await expand(page, 'Raft bed');
  const stand = page.getByRole('spinbutton', { name: 'Stands above the floor, cm' });
  const before = Number(await stand.inputValue());
  await expect.poll(() => handleOf(page, 'stand_m')).not.toBeNull();
  const handle = (await handleOf(page, 'stand_m')) as Rect;
  expect(Math.min(handle.width, handle.height)).toBeGreaterThanOrEqual(44);
  const [x, y] = [handle.x + handle.width / 2, handle.y + handle.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x, y + 20);
  await page.mouse.move(x, y + 40);
  await page.mouse.up();
  await expect.poll(async () => Number(await stand.inputValue())).toBeLessThan(before - 10);
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(stand).toHaveValue(String(before));
  await expect(page.getByRole('button', { name: /^Undo/ })).toBeDisabled();
  expect(complaints).toEqual([]);
});

type Point = { x: number; y: number };
const touch = (finger: CDPSession, type: 'touchStart' | 'touchMove' | 'touchEnd' | 'touchCancel', at?: Point): Promise<unknown> =>
  finger.send('Input.dispatchTouchEvent', { type, touchPoints: at === undefined ? [] : [at] });

test('a finger pulls the same stand, and a touch that is taken away leaves it as it was', async ({ browser }) => {
  const context = await browser.newContext({ hasTouch: true, viewport: { width: 1024, height: 768 } });
  const page = await context.newPage();
  const complaints = complaintsOf(page);
  await page.goto('./#lesson=09');
  await expect(page.getByText('Water cannot run uphill').first()).toBeVisible();
  await showLoop(page);
  await expand(page, 'Raft bed');
  const stand = page.getByRole('spinbutton', { name: 'Stands above the floor, cm' });
  const before = Number(await stand.inputValue());
  await expect.poll(() => handleOf(page, 'stand_m')).not.toBeNull();
  const handle = (await handleOf(page, 'stand_m')) as Rect;
  const start = { x: handle.x + handle.width / 2, y: handle.y + handle.height / 2 };
  const finger = await context.newCDPSession(page);
  const pull = async (by: number, end: 'touchEnd' | 'touchCancel'): Promise<void> => {
    await touch(finger, 'touchStart', start);
    for (let step = 1; step <= 4; step += 1) await touch(finger, 'touchMove', { x: start.x, y: start.y + (by * step) / 4 });
    await touch(finger, end);
  };
  await pull(40, 'touchCancel');
  await expect(stand).toHaveValue(String(before));
  await expect(page.getByRole('button', { name: /^Undo/ })).toBeDisabled();
  await pull(30, 'touchEnd');
  await expect.poll(async () => Number(await stand.inputValue())).toBeLessThan(before - 8);
  await page.getByRole('button', { name: /^Undo/ }).tap();
  await expect(stand).toHaveValue(String(before));
  expect(complaints).toEqual([]);
  await context.close();
});
