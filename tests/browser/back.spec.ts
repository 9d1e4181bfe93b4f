// The browser's Back button, and closing the page, while a season runs: asked where acts would be lost, at once where none would, and never
// a trap.
import { expect, test, type Locator, type Page } from '@playwright/test';
import { complaintsOf } from './journey';

const dialogOf = (page: Page): Locator => page.getByRole('dialog', { name: 'Leave this season?' });
const heading = (page: Page): Locator => page.locator('.page h1');
const inSeason = (page: Page): Locator => page.getByRole('button', { name: 'Back to build' });

/** Opens the first lesson by its address, with another lesson behind it in the history. */
async function comeFromThird(page: Page): Promise<void> {
  await page.goto('./#lesson=03');
  await expect(heading(page)).toContainText('Cycling first');
  await page.getByRole('button', { name: 'Lessons', exact: true }).click();
  await page
    .getByRole('link', { name: /First loop/ })
    .first()
    .click();
  await expect(heading(page)).toContainText('First loop');
}

async function run(page: Page, act: boolean): Promise<void> {
  await page.getByRole('button', { name: 'Place Radial-flow settler' }).click();
  await page.getByRole('button', { name: 'Run the season' }).click();
  await expect(inSeason(page)).toBeVisible();
  if (!act) return;
  await page.getByLabel('Stage shown').selectOption({ label: 'Radial-flow settler' });
  await page.getByRole('button', { name: 'Drain now' }).click();
}

/** Steps back as the button does; what comes of it is looked at afterwards. */
const back = async (page: Page): Promise<void> => page.evaluate(() => history.back());

test('Back asks before it ends a season that was acted in; to stay keeps it, to leave goes to what was before', async ({ page }) => {
  const complaints = complaintsOf(page);
  await comeFromThird(page);
  await run(page, true);
  const answers: (() => Promise<void>)[] = [
    () => page.getByRole('button', { name: 'Stay with this season' }).click(),
    () => page.keyboard.press('Escape'),
  ];
  for (const stay of answers) {
    await back(page);
    await expect(dialogOf(page)).toContainText('First loop');
    await stay();
    await expect(dialogOf(page)).toHaveCount(0);
    await expect(inSeason(page)).toBeVisible();
    await expect(heading(page)).toContainText('First loop');
    expect(new URL(page.url()).hash).toBe('#lesson=00');
  }
  await back(page);
  await page.getByRole('button', { name: 'Leave this season', exact: true }).click();
  await expect(heading(page)).toContainText('Cycling first');
  expect(new URL(page.url()).hash).toBe('#lesson=03');
  // nothing of the season that was left asks here
  await page.evaluate(() => history.forward());
  await expect(heading(page)).toContainText('First loop');
  await expect(page.getByRole('button', { name: 'Run the season' })).toBeVisible();
  await expect(dialogOf(page)).toHaveCount(0);
  expect(complaints).toEqual([]);
});

test('Back leaves at once a season without acts, and one whose loop is being built again', async ({ page }) => {
  await comeFromThird(page);
  await run(page, false);
  await back(page);
  await expect(heading(page)).toContainText('Cycling first');
  await page.evaluate(() => history.forward());
  await expect(heading(page)).toContainText('First loop');
  await run(page, true);
  await inSeason(page).click();
  await expect(page.getByRole('button', { name: 'Run the season' })).toBeVisible();
  await back(page);
  await expect(heading(page)).toContainText('Cycling first');
  await expect(dialogOf(page)).toHaveCount(0);
});

test('Back to another site is asked once, and then leaves for good', async ({ page }) => {
  await page.goto('about:blank');
  await page.goto('./');
  await run(page, true);
  let native = 0;
  page.on('dialog', (dialog) => {
    native += 1;
    void dialog.accept();
  });
  await back(page);
  await expect(dialogOf(page)).toBeVisible();
  await page.getByRole('button', { name: 'Leave this season', exact: true }).click();
  await page.waitForURL('about:blank');
  expect(native).toBe(0);
});

test('closing the page is asked by the browser where acts would be lost, and only there', async ({ page }) => {
  const asked: string[] = [];
  page.on('dialog', (dialog) => {
    asked.push(dialog.type());
    void dialog.accept();
  });
  await page.goto('./');
  await run(page, false);
  await page.reload();
  expect(asked).toEqual([]);
  await run(page, true);
  await page.reload();
  expect(asked).toEqual(['beforeunload']);
  await expect(page.getByRole('button', { name: 'Run the season' })).toBeVisible();
});
