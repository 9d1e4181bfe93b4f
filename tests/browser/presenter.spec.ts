// Presenter mode by keyboard alone, as a remote and ten fingers would: one key in, down through a demonstration, one key out.
import AxeBuilder from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';
import { complaintsOf, open } from './journey';

async function violations(page: Page): Promise<string[]> {
  const found = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
    .analyze();
  return found.violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.target.join(' ')).join(', ')}`);
}

/** Words a class reads that are smaller than promised, at 1280 × 720, and controls smaller than a finger. */
async function tooSmall(page: Page): Promise<string[]> {
  return page.locator('.presenter *:visible').evaluateAll((elements) =>
    elements.flatMap((element) => {
      const words = [...element.childNodes].some((node) => node.nodeType === Node.TEXT_NODE && (node.textContent ?? '').trim() !== '');
      const box = element.getBoundingClientRect();
      const hidden = element.closest('.hidden') !== null;
      const size = parseFloat(getComputedStyle(element).fontSize);
      const least = element.matches('[data-figure], [data-outcome], .count, .choice input') ? 48 : 28;
      const name = `${element.tagName} ${element.className} "${(element.textContent ?? '').slice(0, 30)}"`;
      return [
        ...(!hidden && (words || least === 48) && size < least - 0.01 ? [`${name} ${size} px`] : []),
        ...(element.matches('button, select, input') && (box.width < 43.5 || box.height < 43.5)
          ? [`${name} ${Math.round(box.width)}×${Math.round(box.height)}`]
          : []),
      ];
    }),
  );
}

const numberIn = async (page: Page, where: string): Promise<number> => Number((await page.locator(where).innerText()).replace('<', ''));

test('page down goes through a demonstration; digits count hands; the outcome is the two seasons’ own', async ({ page }) => {
  const complaints = complaintsOf(page);
  await open(page);
  await page.keyboard.press('F2');
  const first = page.getByRole('button', { name: 'With and without the fine filter' });
  await expect(first).toBeVisible();
  await expect(page.getByRole('status').filter({ hasText: 'Reading the lessons' })).toHaveCount(0, { timeout: 60_000 });
  expect(await page.locator('.chooser-list button').count()).toBeGreaterThanOrEqual(6);
  expect(await violations(page)).toEqual([]);
  await first.focus();
  await page.keyboard.press('Enter');

  await expect(page.getByRole('heading', { name: 'how much more will settle on the roots' })).toBeVisible();
  await expect(page.locator('.pair-picture canvas')).toHaveCount(2);
  expect(await tooSmall(page)).toEqual([]);
  await page.keyboard.press('PageDown');
  for (const digit of ['1', '3', '3', '3']) await page.keyboard.press(digit);
  await page.keyboard.press('Shift+Digit3');
  await expect(page.getByRole('spinbutton', { name: /^Hands for 3/ })).toHaveValue('2');
  expect(await violations(page)).toEqual([]);
  expect(await tooSmall(page)).toEqual([]);

  await page.keyboard.press('PageDown');
  await expect(page.locator('.telling-words')).toContainText('too fine to sink');
  await expect(page.locator('.pair-day')).toHaveText('Day 10');
  await page.keyboard.press('PageUp');
  await expect(page.locator('.pair-day')).toHaveText('Day 0');
  for (let step = 0; step < 4; step += 1) await page.keyboard.press('PageDown');

  await expect(page.locator('[data-outcome="1"]')).toBeVisible();
  const [without, with_] = [await numberIn(page, '[data-outcome="1"]'), await numberIn(page, '[data-outcome="0"]')];
  expect(without / with_).toBeGreaterThan(2.4);
  await expect(page.locator('.choice[data-happened]')).toContainText('Twice as much, or more this happened');
  await expect(page.locator('.outcome-times')).toContainText('2 of 3 expected it');
  expect(await tooSmall(page)).toEqual([]);

  await page.keyboard.press('PageDown');
  await expect(page.getByRole('heading', { name: /never drained/ })).toBeVisible();
  await page.keyboard.press('F2');
  await expect(page.getByRole('heading', { level: 1 })).toContainText('First loop');
  expect(complaints).toEqual([]);
});

for (const [width, height] of [
  [1024, 768],
  [844, 390],
]) {
  test(`everything is on the page at ${width} × ${height}`, async ({ page }) => {
    await page.setViewportSize({ width, height });
    await open(page);
    await page.keyboard.press('F2');
    await page.getByRole('button', { name: 'Cycled, and not' }).click();
    await page.getByRole('button', { name: 'Votes', exact: true }).click();
    const outside = await page.locator('.pair-side, .telling, .choice, .step-bar button, .pair-figures b').evaluateAll((parts) =>
      parts
        .filter((part) => {
          const { left, right, top, bottom } = part.getBoundingClientRect();
          const floor = part.matches('.choice') ? (document.querySelector('.step-bar')?.getBoundingClientRect().top ?? 0) : innerHeight;
          return left < -1 || top < -1 || right > innerWidth + 1 || bottom > floor + 1;
        })
        .map((part) => part.className || part.textContent),
    );
    expect(outside).toEqual([]);
    await page.getByRole('button', { name: 'One hand more for 2' }).click();
    await expect(page.getByRole('spinbutton', { name: /^Hands for 2/ })).toHaveValue('1');
  });
}
