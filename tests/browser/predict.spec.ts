// Predict, observe, explain, to the result; hints one step at a time; sizes a lesson leaves free; fish put in by hand.
import AxeBuilder from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';
import { askForPredictions, complaintsOf, expand, open, placeByList, runToEnd, showLoop, tend } from './journey';

async function violations(page: Page): Promise<string[]> {
  const found = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
    .analyze();
  return found.violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.target.join(' ')).join(', ')}`);
}

test('a prediction is made before the run, comes due, is explained, and stands in the result', async ({ page }) => {
  const complaints = complaintsOf(page);
  await askForPredictions(page);
  await open(page);
  await placeByList(page);
  await tend(page);
  await page.getByRole('button', { name: 'Run the season' }).click();
  const card = page.getByRole('region', { name: 'Prediction' });
  await expect(card).toBeFocused();
  await expect(card.getByRole('heading')).toContainText('How high will nitrite rise');
  expect(await violations(page)).toEqual([]);
  await card.getByRole('radio', { name: '5 mg/L or more' }).check();
  await card.getByRole('radio', { name: 'in my own words' }).check();
  await card.getByRole('textbox', { name: 'My reason in my own words' }).fill('nobody eats it yet');
  await card.getByRole('button', { name: 'That is my prediction' }).press('Enter');
  await expect(card.getByRole('heading')).toContainText('How much dirt');
  await card.getByRole('button', { name: 'Skip' }).press('Enter');
  await expect(card).toBeHidden();
  await page.getByRole('button', { name: '5 d/s' }).click();
  await expect(card).toContainText('Day 20: your prediction has come due', { timeout: 60_000 });
  await expect(page.locator('.day')).toContainText('Day 20');
  await expect(page.getByLabel('Stage shown')).toHaveValue('degas');
  await expect(card.getByRole('listitem').filter({ hasText: 'your prediction' })).toContainText('5 mg/L or more');
  await expect(card.getByRole('listitem').filter({ hasText: 'the water' })).toContainText(/stays below 1 mg\/L.*0\.\d\d\smg N\/L/s);
  await expect(card).toContainText('nobody eats it yet');
  await card.getByRole('radio', { name: /leaves into the air/ }).check();
  await card.getByRole('button', { name: 'See what the figures say' }).click();
  await expect(card.getByRole('listitem').filter({ hasText: 'your explanation' })).toContainText(/does not hold.*\d\sg N/s);
  await expect(card.getByRole('listitem').filter({ hasText: 'keep up' })).toContainText('holds');
  expect(await violations(page)).toEqual([]);
  await card.getByRole('button', { name: 'Go on' }).press('Enter');
  await expect(page.getByRole('button', { name: /^(Run|Pause)$/ })).toBeFocused();
  await runToEnd(page);
  const result = page.getByRole('region', { name: 'The season is over' });
  await expect(result).toContainText(/you: 5 mg\/L or more · the water: stays below 1 mg\/L/);
  await expect(result).toContainText('Skipped: 1');
  await expect(result).toContainText('Mark 1: reached');
  await expect(result.getByText(/^Harvest: at least 30: \d+/)).toBeVisible();
  await expect(result).toContainText('What this water does not show');
  await result.getByRole('button', { name: 'Back to build' }).click();
  await page.getByRole('button', { name: 'Run the season' }).click();
  await expect(card).toContainText('Last time: you expected “5 mg/L or more”, it came to “stays below 1 mg/L”.');
  await card.getByRole('button', { name: 'Do not ask again in this season' }).click();
  await expect(page.locator('.day')).toBeVisible();
  expect(complaints).toEqual([]);
});

test("hints come one step at a time; sizes and fish are the learner's where the lesson says so", async ({ page }) => {
  const complaints = complaintsOf(page);
  await open(page);
  await page.getByRole('button', { name: 'Hints', exact: true }).click();
  const ladder = page.getByRole('region', { name: 'Hints of this lesson' });
  await ladder.getByRole('button', { name: 'Sinking pH' }).press('Enter');
  await expect(ladder).toContainText('Notice');
  await expect(ladder).not.toContainText('Think');
  for (const step of ['Think', 'Do']) {
    await ladder.getByRole('button', { name: /^One step further/ }).press('Enter');
    await expect(ladder).toContainText(step);
  }
  await page.goto('./#lesson=15');
  await expect(page.getByRole('heading', { level: 1 })).not.toContainText('First loop');
  await showLoop(page);
  await expand(page, 'Fish tank');
  const volume = page.getByRole('spinbutton', { name: 'Volume, L' });
  const before = await volume.inputValue();
  await volume.fill('99999');
  await page.keyboard.press('Enter');
  await expect(volume).toHaveValue('3000');
  const put = page.getByRole('button', { name: /^Put in 60 tilapia/ }).first();
  await put.press('Enter');
  await expect(page.getByRole('button', { name: /^Leave out 60 tilapia/ })).toBeVisible();
  await expect(page.getByText(/ % of body mass a day/)).toBeVisible();
  for (let step = 0; step < 2; step += 1) await page.getByRole('button', { name: 'Undo' }).click();
  await expect(volume).toHaveValue(before);
  await expect(page.getByRole('button', { name: /^Leave out/ })).toBeHidden();
  await page.getByRole('button', { name: /^What counts/ }).click();
  await expect(page.getByRole('dialog', { name: 'What counts in this lesson' })).toContainText('Fish health: at least');
  expect(await violations(page)).toEqual([]);
  expect(complaints).toEqual([]);
});
