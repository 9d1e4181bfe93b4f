// What a learner does with the page, from opening it to reading the score, by mouse, by keyboard and by touch.
import { expect, test, type Page } from '@playwright/test';
import { complaintsOf, open, orderOf, placeByList, REFERENCE, REFERENCE_ORDER, runToEnd, scoreOf, showLoop, tend } from './journey';

interface Box {
  x: number;
  y: number;
  width: number;
  height: number;
}
interface Anchors {
  stages: Record<string, Box>;
  gaps: Record<number, Box>;
}

/** Where the picture says that a gap lies, once it shows so many of them. */
async function gapBox(page: Page, gaps: number, gap: number): Promise<Box> {
  let box: Box | undefined;
  await expect
    .poll(async () => {
      const anchors = await page.evaluate(
        () => (window as unknown as { loopwright?: { anchors(): Anchors | null } }).loopwright?.anchors() ?? null,
      );
      const drawn = anchors === null ? 0 : Object.keys(anchors.gaps).length;
      box = anchors?.gaps[gap];
      return drawn >= gaps && box !== undefined;
    })
    .toBe(true);
  if (box === undefined) throw new Error(`The picture has no gap ${gap}.`);
  return box;
}

const middle = (box: Box): { x: number; y: number } => ({ x: box.x + box.width / 2, y: box.y + box.height / 2 });

test('a learner builds the reference loop by mouse, runs it to the end at five days a second and reads the score', async ({ page }) => {
  const complaints = complaintsOf(page);
  await open(page);
  for (const [index, { part }] of REFERENCE.entries()) {
    const target = middle(await gapBox(page, index + 2, index + 1));
    const handle = page.getByRole('heading', { level: 3, name: part });
    await handle.scrollIntoViewIfNeeded();
    await handle.hover();
    await page.mouse.down();
    await page.mouse.move(target.x - 40, target.y - 10, { steps: 4 });
    await page.mouse.move(target.x, target.y, { steps: 3 });
    await page.mouse.up();
    await expect(page.getByRole('button', { name: `Place ${part}` })).toHaveCount(0);
  }
  expect(await orderOf(page)).toEqual(REFERENCE_ORDER);
  await tend(page);
  await page.getByRole('button', { name: 'Run the season' }).click();
  await runToEnd(page);
  expect(await scoreOf(page, 'fishHealth')).toBeGreaterThan(50);
  expect(await scoreOf(page, 'harvest')).toBeGreaterThan(30);
  await expect(page.getByText('Fish health = 100 × survival × mean welfare')).toBeVisible();
  await page.getByRole('button', { name: 'Look at the season' }).click();
  await page.getByLabel('Hour shown, within the days run so far').fill('240');
  await expect(page.getByText('Day 10', { exact: true })).toBeVisible();
  expect(complaints).toEqual([]);
});

/** Moves the focus by Tab until it stands on the control of this name. */
async function tabTo(page: Page, name: string): Promise<void> {
  for (let presses = 0; presses < 80; presses += 1) {
    const here = await page.evaluate(() => {
      const element = document.activeElement;
      if (element === null) return '';
      const named =
        element.getAttribute('aria-label')
        ?? element
          .getAttribute('aria-labelledby')
          ?.split(' ')
          .map((id) => document.getElementById(id)?.textContent ?? '')
          .join(' ');
      return named ?? (element.closest('label')?.querySelector('.label')?.textContent || element.textContent || '');
    });
    if (here.trim() === name) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab never reaches "${name}".`);
}

test('the same loop is built, set and run with the keyboard alone', async ({ page }) => {
  const complaints = complaintsOf(page);
  await open(page);
  for (const [index, { part }] of REFERENCE.entries()) {
    await tabTo(page, `Where to place ${part}`);
    for (let down = 0; down < index; down += 1) await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await expect(page.getByRole('status')).toContainText(`${part} placed after`);
  }
  await page.keyboard.press('Shift+Tab');
  await page.keyboard.press('Shift+Tab');
  await tabTo(page, 'Parts');
  await page.keyboard.press('ArrowRight');
  await tabTo(page, 'Move Degassing tank earlier');
  await page.keyboard.press('Enter');
  await tabTo(page, 'Move Degassing tank later');
  await page.keyboard.press('Enter');
  expect(await page.locator('.loop-list ol > li').evaluateAll((items) => items.map((item) => item.getAttribute('data-stage')))).toEqual(
    REFERENCE_ORDER,
  );
  await page.keyboard.press('Shift+Tab');
  await tabTo(page, 'Adjust Base dosing');
  await page.keyboard.press('Enter');
  await tabTo(page, 'Dose at most, g/d');
  await page.keyboard.type('15');
  await tabTo(page, 'Run the season');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('button', { name: 'Pause' })).toBeFocused();
  await page.keyboard.press('Space');
  await expect(page.getByRole('button', { name: 'Run', exact: true })).toBeVisible();
  await tabTo(page, 'Step a day');
  await page.keyboard.press('Enter');
  await page.keyboard.press('Enter');
  await expect(page.locator('.day')).toContainText(/Day [2-9]/);
  await tabTo(page, '5 d/s');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'The season is over' })).toBeVisible({ timeout: 90_000 });
  expect(complaints).toEqual([]);
});

test('what is done while the season runs takes hold at the next hour, and doing it in the past asks first', async ({ page }) => {
  const complaints = complaintsOf(page);
  await open(page);
  await placeByList(page);
  await tend(page);
  await page.getByRole('button', { name: 'Run the season' }).click();
  await page.getByRole('button', { name: 'Pause' }).click();
  for (let day = 0; day < 6; day += 1) await page.getByRole('button', { name: 'Step a day' }).click();
  await page.getByLabel('Stage shown').selectOption({ label: 'Return pump' });
  await page.getByRole('button', { name: 'Stop the pump' }).click();
  await expect(page.getByRole('button', { name: 'Start the pump' })).toBeVisible();
  for (let day = 0; day < 2; day += 1) await page.getByRole('button', { name: 'Step a day' }).click();
  await expect(page.getByRole('button', { name: /The return pump stands still/ })).toBeVisible();
  await page.getByLabel('Hour shown, within the days run so far').fill('48');
  await page.getByLabel('Stage shown').selectOption({ label: 'Radial-flow settler' });
  await page.getByRole('button', { name: 'Drain now' }).click();
  await expect(page.getByRole('dialog')).toContainText('Act in the past?');
  await page.getByRole('button', { name: 'Act here' }).click();
  for (let day = 0; day < 6; day += 1) await page.getByRole('button', { name: 'Step a day' }).click();
  await expect(page.getByRole('button', { name: /The return pump stands still/ })).toHaveCount(0);
  expect(complaints).toEqual([]);
});

test('a broken lesson file is told with path, got and expected, and the page stays alive', async ({ page }) => {
  const complaints = complaintsOf(page);
  await open(page);
  const broken = JSON.stringify({
    format: 'loopwright.lesson/2',
    id: 'broken',
    title: 'Broken',
    brief: ['x'],
    plan: { days: 'many' },
    shelf: [],
  });
  const openFile = async (name: string, text: string): Promise<void> => {
    await page.getByRole('button', { name: 'Lessons', exact: true }).click();
    await page.locator('[data-lesson-file]').setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
  };
  await openFile('broken.json', broken);
  const alert = page.getByRole('alert');
  await expect(alert).toContainText('This lesson file cannot be used');
  await expect(alert.getByRole('row', { name: /plan\S*days/ })).toContainText(/Line 1.*many.*a whole number/);
  await page.getByRole('button', { name: 'Close' }).click();
  await page.getByRole('button', { name: 'Back to the loop' }).click();
  await openFile('torn.json', '{ "format": ');
  await expect(alert).toContainText('line 1, column 13');
  await page.getByRole('button', { name: 'Close' }).click();
  await page.getByRole('button', { name: 'Back to the loop' }).click();
  await page.getByRole('button', { name: 'Place Radial-flow settler' }).click();
  expect(await orderOf(page)).toContain('settler');
  expect(complaints).toEqual([]);
});

test('a finger drags a part from the shelf into the loop', async ({ browser }) => {
  const context = await browser.newContext({ hasTouch: true, viewport: { width: 1280, height: 720 } });
  const page = await context.newPage();
  const complaints = complaintsOf(page);
  await open(page);
  const target = middle(await gapBox(page, 2, 1));
  const from = await page.getByRole('heading', { level: 3, name: 'Radial-flow settler' }).boundingBox();
  if (from === null) throw new Error('The settler is not on the shelf.');
  const finger = await context.newCDPSession(page);
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', at?: { x: number; y: number }) =>
    finger.send('Input.dispatchTouchEvent', { type, touchPoints: at === undefined ? [] : [at] });
  const start = middle(from);
  await touch('touchStart', start);
  for (let step = 1; step <= 8; step += 1)
    await touch('touchMove', { x: start.x + ((target.x - start.x) * step) / 8, y: start.y + ((target.y - start.y) * step) / 8 });
  // a finger comes to rest before it lets go; one that flings has its next tap taken for stopping the fling
  await page.waitForTimeout(200);
  await touch('touchMove', target);
  await touch('touchEnd');
  await expect(page.getByRole('button', { name: 'Place Radial-flow settler' })).toHaveCount(0);
  await expect.poll(() => orderOf(page)).toEqual(['fish', 'settler', 'sump', 'pump']);
  await showLoop(page);
  await page.getByRole('button', { name: 'Take out Radial-flow settler' }).tap();
  await expect.poll(() => orderOf(page)).toEqual(['fish', 'sump', 'pump']);
  expect(complaints).toEqual([]);
  await context.close();
});

test('a browser that cannot draw the picture says so, and the lists still build and run a loop', async ({ page }) => {
  await page.addInitScript(() => {
    HTMLCanvasElement.prototype.getContext = () => null;
  });
  await open(page);
  await expect(page.getByText('This browser cannot draw the picture')).toBeVisible();
  await placeByList(page);
  expect(await orderOf(page)).toEqual(REFERENCE_ORDER);
  await page.getByRole('button', { name: 'Run the season' }).click();
  await expect(page.locator('.day')).toContainText(/Day [1-9]/);
});
