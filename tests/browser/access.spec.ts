// Accessibility and room: no violation of WCAG 2.2 AA that can be found by machine, nothing cut off at the sizes we promise.
import AxeBuilder from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';
import { complaintsOf, open, placeByList, runToEnd, showLoop, tend } from './journey';

/** @param colours whether to look at contrasts too, which takes several times as long and does not change with the size of the page */
async function violations(page: Page, colours: boolean): Promise<string[]> {
  const found = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
    .disableRules(colours ? [] : ['color-contrast'])
    .analyze();
  return found.violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.target.join(' ')).join(', ')}`);
}

/** Controls that are smaller than a finger: under 44 px high or wide (sliders and radios count with their label). */
async function smallControls(page: Page): Promise<string[]> {
  return page.locator('button:visible, select:visible, .tint-choice:visible, summary:visible').evaluateAll((controls) =>
    controls
      .map((control) => ({ box: control.getBoundingClientRect(), name: control.getAttribute('aria-label') ?? control.textContent ?? '' }))
      .filter(({ box }) => box.height < 43.5 || box.width < 43.5)
      .map(({ box, name }) => `${name} ${Math.round(box.width)}×${Math.round(box.height)}`),
  );
}

/** Elements of the fixed bars whose words do not fit into them. */
async function cutOff(page: Page): Promise<string[]> {
  return page.locator('.brief *, .tint *, .season-bar *, .build-bar *').evaluateAll((elements) =>
    elements
      .filter(
        (element): element is HTMLElement =>
          element instanceof HTMLElement && element.offsetParent !== null && !element.closest('dialog, .hidden, .rail, .trace-box'),
      )
      .filter(
        (element) =>
          getComputedStyle(element).overflow !== 'visible'
          && (element.scrollWidth > element.clientWidth + 1 || element.scrollHeight > element.clientHeight + 2),
      )
      .map((element) => `${element.className || element.tagName} "${(element.textContent ?? '').slice(0, 40)}"`),
  );
}

/** Panels that lie over each other, by their boxes. */
async function overlaps(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const boxes = [...document.querySelectorAll<HTMLElement>('.page > *')]
      .filter((panel) => getComputedStyle(panel).position !== 'absolute' && getComputedStyle(panel).position !== 'fixed')
      .map((panel) => ({ name: panel.className, box: panel.getBoundingClientRect() }));
    const wrong = boxes
      .filter(({ box }) => box.right > innerWidth + 1 || box.bottom > innerHeight + 1)
      .map(({ name }) => `${name} leaves the page`);
    boxes.forEach((a, i) =>
      boxes.slice(i + 1).forEach((b) => {
        if (a.box.left < b.box.right - 1 && b.box.left < a.box.right - 1 && a.box.top < b.box.bottom - 1 && b.box.top < a.box.bottom - 1)
          wrong.push(`${a.name} over ${b.name}`);
      }),
    );
    return wrong;
  });
}

const SIZES = [
  [1920, 1080],
  [1280, 720],
  [1024, 768],
] as const;

test('build, run and result are accessible and fit at 1920 × 1080, 1280 × 720 and 1024 × 768', async ({ page }) => {
  const complaints = complaintsOf(page);
  const examine = async (): Promise<void> => {
    for (const [width, height] of SIZES) {
      await page.setViewportSize({ width, height });
      await expect
        .poll(() => page.locator('.picture canvas').evaluate((canvas) => Math.round(canvas.getBoundingClientRect().right)))
        .toBeLessThanOrEqual(width);
      const at = `at ${width} × ${height}`;
      expect(await violations(page, width === 1280), at).toEqual([]);
      expect(await smallControls(page), at).toEqual([]);
      expect(await cutOff(page), at).toEqual([]);
      expect(await overlaps(page), at).toEqual([]);
    }
  };
  await page.setViewportSize({ width: 1920, height: 1080 });
  await open(page);
  await examine();
  await placeByList(page);
  await tend(page);
  await showLoop(page);
  await examine();
  await page.getByRole('button', { name: 'Run the season' }).click();
  await page.getByRole('button', { name: 'Pause' }).click();
  await page.getByRole('button', { name: 'Step a day' }).click();
  await page.getByLabel('Stage shown').selectOption({ label: 'Raft bed' });
  await examine();
  await runToEnd(page);
  await examine();
  expect(complaints).toEqual([]);
});

test('with reduced motion a season starts paused', async ({ browser }) => {
  const context = await browser.newContext({ reducedMotion: 'reduce' });
  const page = await context.newPage();
  await open(page);
  await page.getByRole('button', { name: 'Run the season' }).click();
  await expect(page.getByRole('button', { name: 'Run', exact: true })).toBeVisible();
  await context.close();
});
