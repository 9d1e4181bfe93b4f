// The path of lessons in the browser: opened by hand, by keyboard and by address; an author's file dropped broken, then whole, and played.
import AxeBuilder from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { complaintsOf, open, orderOf, runToEnd } from './journey';

const FIRST = readFileSync(new URL('../../levels/00-first-loop.json', import.meta.url), 'utf8');

/** A lesson of two short seasons beside the idle one, on two marks of the first lesson's. */
function shortLesson(change: (lesson: Record<string, unknown>) => void = () => undefined): string {
  const lesson = JSON.parse(FIRST) as Record<string, unknown> & { plan: { days: number }; mistakes: unknown[] };
  Object.assign(lesson, {
    id: 'my-own',
    title: 'My own lesson',
    predictions: [],
    demonstrations: [],
    hints: [],
    mistakes: [
      { ...(lesson.mistakes[0] as object), shows: [{ stage: 'rafts', variable: 'rootMat_g_m2', statistic: 'max', atLeastTimes: 1.2 }] },
    ],
  });
  lesson.scoring = {
    plantsWeight: 0.5,
    marks: [
      { fishHealth: 5, harvest: 1 },
      { fishHealth: 6, harvest: 2 },
      { fishHealth: 7, harvest: 3 },
    ],
  };
  lesson.plan.days = 12;
  change(lesson);
  return JSON.stringify(lesson, null, 2);
}

async function drop(page: Page, name: string, text: string): Promise<void> {
  await page.evaluate(
    ([file, content]) => {
      const data = new DataTransfer();
      data.items.add(new File([content], file, { type: 'application/json' }));
      for (const kind of ['dragover', 'drop'])
        document.body.dispatchEvent(new DragEvent(kind, { dataTransfer: data, bubbles: true, cancelable: true }));
    },
    [name, text],
  );
}

const heading = (page: Page) => page.locator('.brief h1');

test('the path is open to keyboard and screen reader, and an address opens a lesson', async ({ page }) => {
  const complaints = complaintsOf(page);
  await open(page);
  const button = page.getByRole('button', { name: 'Lessons', exact: true });
  await button.focus();
  await page.keyboard.press('Enter');
  const cards = page.getByRole('list', { name: 'The path of lessons' }).getByRole('link');
  await expect(cards.first()).toContainText('First loop');
  expect(await cards.count()).toBeGreaterThan(10);
  await expect(cards.nth(1)).toContainText(/not played yet.*min/);
  const found = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
    .analyze();
  expect(found.violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.target.join(' ')).join(', ')}`)).toEqual([]);
  for (const [width, height] of [
    [1920, 1080],
    [1024, 768],
    [844, 390],
  ]) {
    await page.setViewportSize({ width, height });
    expect(await page.evaluate(() => document.querySelector('.lessons-body')?.scrollWidth), `${width}`).toBeLessThanOrEqual(width);
    expect(
      await page
        .locator('.lessons a:visible, .lessons button:visible')
        .evaluateAll((targets) => targets.filter((one) => one.getBoundingClientRect().height < 43.5).length),
    ).toBe(0);
  }
  await page.setViewportSize({ width: 1280, height: 720 });
  const title = await cards.nth(2).locator('.lesson-title').innerText();
  await cards.nth(2).focus();
  await page.keyboard.press('Enter');
  await expect(heading(page)).toContainText(title);
  await expect(button).toBeFocused();
  expect(new URL(page.url()).hash).toBe('#lesson=02');
  await page.goBack();
  await expect(heading(page)).toContainText('First loop');
  await page.goto('./#lesson=4');
  await expect(heading(page)).not.toContainText('First loop');
  const fourth = await heading(page).innerText();
  await page.goto('./#lesson=99');
  await expect(page.getByRole('alert')).toContainText('There is no lesson 99');
  await expect(heading(page)).toHaveText(fourth);
  expect(new URL(page.url()).hash).toBe('#lesson=04');
  expect(complaints).toEqual([]);
});

test('an author drops a broken file, mends it, has it played, and drops it again', async ({ page }) => {
  const complaints = complaintsOf(page);
  await open(page);
  await page.getByRole('button', { name: 'Place Radial-flow settler' }).click();
  await drop(
    page,
    'my-own.json',
    shortLesson((lesson) => {
      lesson.minutes = 'long';
    }),
  );
  const sheet = page.getByRole('region', { name: 'File check: my-own.json' });
  await expect(sheet.getByRole('row', { name: /minutes/ })).toContainText(/Line \d+.*"long".*a whole number from 1 to 240 minutes/);
  await sheet.press('Escape');
  await expect(sheet).toHaveCount(0);
  expect(await orderOf(page)).toContain('settler');
  await drop(page, 'my-own.json', shortLesson());
  await expect(heading(page)).toContainText('My own lesson');
  expect(new URL(page.url()).hash).toBe('#file=my-own.json');
  await page.getByRole('button', { name: 'File check' }).click();
  await sheet.getByRole('button', { name: 'Play it through' }).click();
  await expect(sheet).toContainText('Everything passes.', { timeout: 60_000 });
  await expect(sheet.getByRole('row', { name: /^No fine-solids filter/ })).toContainText('pass');
  expect((await new AxeBuilder({ page }).include('.file-sheet').analyze()).violations.map((one) => one.id)).toEqual([]);
  await drop(
    page,
    'my-own.json',
    shortLesson((lesson) => {
      Object.assign((lesson.mistakes as { shows: object[] }[])[0].shows[0], { atLeastTimes: 500 });
    }),
  );
  await expect(sheet).toContainText('1 of 3 does not pass.', { timeout: 60_000 });
  await expect(sheet).toContainText('asked: at least 500');
  await sheet.press('Escape');
  await page.getByRole('button', { name: 'Run the season' }).click();
  await runToEnd(page);
  await expect
    .poll(() => page.evaluate(() => localStorage.getItem('loopwright.progress')))
    .toMatch(/"my-own":\{"marks":0,"played":"\d{4}-\d\d-\d\d"\}/);
  expect(complaints).toEqual([]);
});

test('another lesson asks once before it takes the place of a season that was acted in', async ({ page }) => {
  const complaints = complaintsOf(page);
  await open(page);
  const toLesson = async (): Promise<void> => {
    await page.getByRole('button', { name: 'Lessons', exact: true }).click();
    await page
      .getByRole('link', { name: /Bacteria arrive/ })
      .first()
      .focus();
    await page.keyboard.press('Enter');
  };
  await page.getByRole('button', { name: 'Place Radial-flow settler' }).click();
  await page.getByRole('button', { name: 'Run the season' }).click();
  await page.getByLabel('Stage shown').selectOption({ label: 'Radial-flow settler' });
  await page.getByRole('button', { name: 'Drain now' }).click();
  await toLesson();
  const dialog = page.getByRole('dialog', { name: 'Leave this season?' });
  await expect(dialog).toContainText('First loop');
  const found = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
    .analyze();
  expect(found.violations.map((one) => one.id)).toEqual([]);
  await expect(page.getByRole('button', { name: 'Stay with this season' })).toBeFocused();
  await page.keyboard.press('Escape');
  await expect(dialog).toHaveCount(0);
  await page.keyboard.press('Escape');
  await expect(page.getByRole('button', { name: 'Back to build' })).toBeVisible();
  await expect(heading(page)).toContainText('First loop');
  await toLesson();
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect(heading(page)).toContainText('Bacteria arrive');
  // nothing was done here yet, so nothing is asked
  await page.getByRole('button', { name: 'Run the season' }).click();
  await page.getByRole('button', { name: 'Lessons', exact: true }).click();
  await page
    .getByRole('link', { name: /First loop/ })
    .first()
    .click();
  await expect(heading(page)).toContainText('First loop');
  expect(complaints).toEqual([]);
});
