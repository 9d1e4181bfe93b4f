// The card of the next thing to do keeps out of the way: it lies over the sky alone, over a small picture not at all, and never where a
// stage is looked at from close by.
import { expect, test, type Locator, type Page } from '@playwright/test';

const hintOf = (page: Page): Locator => page.getByRole('complementary', { name: 'What to do next' });

interface Box {
  x: number;
  y: number;
  width: number;
  height: number;
}
async function boxOf(where: Locator): Promise<Box> {
  const box = await where.boundingBox();
  if (box === null) throw new Error('not on the page');
  return box;
}

async function run(page: Page, lesson: string): Promise<void> {
  await page.goto(`./#lesson=${lesson}`);
  await page.getByRole('button', { name: 'Run the season' }).click();
  await expect(page.getByRole('button', { name: 'Back to build' })).toBeVisible();
  await expect(hintOf(page)).toBeVisible();
}

test('at 1024 by 768 it has a row of its own over the picture, and the picture fills the rest', async ({ page }) => {
  await page.setViewportSize({ width: 1024, height: 768 });
  await run(page, '12');
  const [hint, world, picture] = [
    await boxOf(hintOf(page)),
    await boxOf(page.locator('#world')),
    await boxOf(page.locator('main.picture')),
  ];
  expect(hint.y + hint.height).toBeLessThanOrEqual(world.y + 0.5);
  expect(Math.abs(world.y + world.height - picture.y - picture.height)).toBeLessThan(1);
  await expect.poll(async () => (await boxOf(page.locator('#world canvas'))).height).toBeCloseTo(world.height, 0);
  // what lies over the picture can still be reached
  await page.getByLabel('Stage shown').selectOption({ label: 'Raft bed' });
  await page.getByRole('button', { name: 'Look closer' }).click();
  await page.getByRole('button', { name: 'Whole loop' }).click();
  await expect(page.getByRole('button', { name: 'Whole loop' })).toHaveCount(0);
  await page.getByRole('button', { name: 'Put hints away' }).click();
  await expect.poll(async () => (await boxOf(page.locator('#world'))).height).toBeCloseTo(picture.height, 0);
});

for (const [width, height] of [
  [1280, 720],
  [1366, 768],
  [1920, 1080],
]) {
  test(`at ${width} by ${height} it is no higher than the sky that is kept for it, and gives way to a close look`, async ({ page }) => {
    await page.setViewportSize({ width, height });
    await run(page, '09');
    // twelve days would be over before a busy machine has looked at all of it
    await page.getByRole('button', { name: 'Pause' }).click();
    // the picture is laid out anew a moment after the panels of a season have come
    await expect(async () => {
      const [hint, world] = [await boxOf(hintOf(page)), await boxOf(page.locator('#world'))];
      expect(hint.y + hint.height - world.y).toBeLessThanOrEqual(height > 800 ? 76 : 58);
      const anchors = await page.evaluate(
        () => (window as unknown as { loopwright: { anchors(): { stages: Record<string, Box> } } }).loopwright.anchors().stages,
      );
      expect(Object.keys(anchors).length).toBeGreaterThan(5);
      for (const stage of Object.values(anchors)) expect(stage.y).toBeGreaterThan(hint.y + hint.height);
    }).toPass({ timeout: 20_000 });
    await page.getByRole('button', { name: 'Look closer' }).click();
    await expect(hintOf(page)).toBeHidden();
    await page.getByRole('button', { name: 'Whole loop' }).click();
    await expect(hintOf(page)).toBeVisible();
  });
}

test('at 844 by 390 it is folded while a season runs, and unfolds and folds when asked', async ({ page }) => {
  await page.setViewportSize({ width: 844, height: 390 });
  await run(page, '08');
  const unfold = page.getByRole('button', { name: 'What next?' });
  const [button, world] = [await boxOf(unfold), await boxOf(page.locator('#world'))];
  expect(button.width).toBeLessThan(world.width / 4);
  expect(button.height).toBeGreaterThanOrEqual(44);
  await unfold.click();
  await expect(hintOf(page)).toContainText('Next');
  await page.getByRole('button', { name: 'Fold the hint' }).click();
  await expect(unfold).toBeVisible();
});
