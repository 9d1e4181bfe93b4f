// Pieces of the page that are fetched when they are wanted: one that does not arrive leaves loop and season standing, and can be asked for
// again.
import { expect, test } from '@playwright/test';
import { open, orderOf, placeByList, REFERENCE_ORDER } from './journey';

const PIECES = /\/(LessonsScreen|PaperScreen|PresenterScreen|FileSheet)-[^/]*\.(js|css)(\?.*)?$/;

for (const lost of ['js', 'css'] as const) {
  test(`a screen whose ${lost} file does not arrive says so, keeps the loop, and comes when it is asked for again`, async ({ page }) => {
    const faults: string[] = [];
    page.on('pageerror', (error) => faults.push(error.message));
    await page.route(PIECES, (route) => (new URL(route.request().url()).pathname.endsWith(`.${lost}`) ? route.abort() : route.continue()));
    await open(page);
    await placeByList(page);
    await page.getByRole('button', { name: 'Lessons', exact: true }).click();
    const alert = page.getByRole('alert');
    await expect(alert).toContainText('This part of the page did not arrive');
    await page.getByRole('button', { name: 'Go on without it' }).click();
    await expect(alert).toHaveCount(0);
    expect(await orderOf(page)).toEqual(REFERENCE_ORDER);

    await page.getByRole('button', { name: 'Lessons', exact: true }).click();
    await page.getByRole('button', { name: 'Try again' }).click();
    await expect(alert).toContainText('This part of the page did not arrive');
    await page.unroute(PIECES);
    await page.getByRole('button', { name: 'Try again' }).click();
    await expect(page.getByRole('heading', { name: 'Lessons' })).toBeVisible();
    await expect.poll(() => page.locator('.lessons-body').evaluate((body) => getComputedStyle(body).display)).toBe('flex');
    await page.keyboard.press('Escape');
    expect(await orderOf(page)).toEqual(REFERENCE_ORDER);
    expect(faults).toEqual([]);
  });
}

test('pieces are there before they are wanted: without a network the lessons still open', async ({ page, context }) => {
  const fetched = page.waitForResponse((response) => /\/FileSheet-[^/]*\.js$/.test(response.url()));
  await open(page);
  await fetched;
  await page.waitForLoadState('networkidle');
  await context.setOffline(true);
  await page.getByRole('button', { name: 'Lessons', exact: true }).click();
  await expect(page.getByRole('heading', { name: 'Lessons' })).toBeVisible();
  await expect(page.getByRole('alert')).toHaveCount(0);
});
