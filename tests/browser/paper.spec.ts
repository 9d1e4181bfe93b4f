// What is printed: sheets and paper as chosen, pages as they come out, and the cautions of the first start.
import AxeBuilder from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';
import { complaintsOf, open } from './journey';

const POINTS = { A4: [595, 842], Letter: [612, 792] } as const;

/** Pages of a PDF and the size of its first, in points. */
async function printed(page: Page): Promise<{ pages: number; width: number; height: number }> {
  const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
  const [, width, height] = /MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)/.exec(pdf) ?? [];
  return { pages: (pdf.match(/\/Type\s*\/Page[^s]/g) ?? []).length, width: Math.round(Number(width)), height: Math.round(Number(height)) };
}

async function choose(page: Page, sheet: string): Promise<void> {
  await page.getByRole('radio', { name: sheet }).check();
  await expect(page.locator('.sheet-head')).toBeVisible({ timeout: 60_000 });
}

test('sheets print on the paper chosen, alone and on the pages they should take; the paper is remembered', async ({ page }) => {
  const complaints = complaintsOf(page);
  await open(page);
  await page.getByRole('button', { name: 'More' }).click();
  await page.getByRole('button', { name: 'On paper' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'On paper' })).toBeFocused();
  await page.getByRole('radio', { name: /My season/ }).check();
  await expect(page.getByText('No season has been run yet')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Print' })).toBeDisabled();
  for (const [size, label] of [
    ['Letter', 'US Letter'],
    ['A4', 'A4'],
  ] as const) {
    await page.getByRole('radio', { name: label, exact: true }).check();
    for (const [sheet, most] of [
      ['Learner’s sheet', 1],
      ['Lesson plan', 1],
      ['Teacher’s key', 4],
    ] as const) {
      await choose(page, sheet);
      const { pages, width, height } = await printed(page);
      expect([width, height], sheet).toEqual([...POINTS[size]]);
      expect(pages, sheet).toBeGreaterThan(0);
      expect(pages, `${sheet} on ${size}`).toBeLessThanOrEqual(most);
    }
  }
  expect(
    await new AxeBuilder({ page })
      .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
      .analyze()
      .then(({ violations }) => violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.target.join(' ')).join(', ')}`)),
  ).toEqual([]);
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.sheet')).toBeVisible();
  for (const other of ['.page', '.paper-top', '.paper-side']) await expect(page.locator(other)).toBeHidden();
  await page.emulateMedia({ media: 'screen' });
  await page.setViewportSize({ width: 844, height: 390 });
  expect(await page.evaluate(() => document.querySelector('.sheet')?.getBoundingClientRect().right ?? Infinity)).toBeLessThanOrEqual(844);
  await page.keyboard.press('Escape');
  await expect(page.locator('.paper')).toHaveCount(0);
  await page.reload();
  await page.getByRole('button', { name: 'More' }).click();
  await page.getByRole('button', { name: 'On paper' }).click();
  await expect(page.getByRole('radio', { name: 'A4', exact: true })).toBeChecked();
  expect(complaints).toEqual([]);
});

test.describe('on a device that never saw the page', () => {
  test.use({ storageState: { cookies: [], origins: [] } });

  test('the cautions are shown once, and come back from help', async ({ page }) => {
    await page.goto('./');
    const first = page.getByRole('dialog', { name: 'Before you build anything real' });
    await expect(first).toBeVisible();
    await expect(first).toContainText('Local codes and licensed practice decide');
    await page.keyboard.press('Escape');
    await expect(first).toBeHidden();
    await page.reload();
    await expect(page.getByRole('button', { name: 'Help' })).toBeVisible();
    await expect(first).toBeHidden();
    await page.getByRole('button', { name: 'Help' }).click();
    await page.getByRole('dialog', { name: 'Help' }).getByRole('button', { name: 'Cautions' }).click();
    await expect(page.getByRole('dialog', { name: 'Cautions' })).toContainText('residual-current device');
  });
});
