// The first minute by the words on the page alone; why; taking back; branches; units kept on the device.
import { expect, test } from '@playwright/test';
import { askForPredictions, complaintsOf, expand, open, orderOf, placeByList, showLoop, tend } from './journey';

test('the words on the page alone lead a stranger to the first placed stage and the first run', async ({ page }) => {
  const complaints = complaintsOf(page);
  await askForPredictions(page);
  await page.goto('./');
  const hint = page.getByRole('complementary', { name: 'What to do next' });
  await expect(hint).toContainText('press “Place”');
  while ((await page.getByRole('button', { name: /^Place / }).count()) > 0)
    await page
      .getByRole('button', { name: /^Place / })
      .first()
      .click();
  await expect(hint).toContainText('in the list “The loop”, open “Adjust” at the fish tank');
  await page.getByRole('tab', { name: 'The loop' }).click();
  await expand(page, 'Fish tank');
  await page.getByRole('spinbutton', { name: /^Feed/ }).fill('60');
  await page.keyboard.press('Enter');
  await expect(hint).toContainText('Press “Run the season”');
  await page.getByRole('button', { name: 'Run the season' }).click();
  const asked = page.getByRole('region', { name: 'Prediction' });
  await expect(asked).toContainText('Before you run: what do you expect?');
  while (await asked.isVisible()) {
    for (const part of ['I expect', 'Because']) await asked.getByRole('group', { name: part }).getByRole('radio').first().check();
    const question = await asked.getByRole('heading').innerText();
    await asked.getByRole('button', { name: 'That is my prediction' }).click();
    await expect(asked.getByRole('heading', { name: question })).toBeHidden();
  }
  await expect(page.locator('.day')).toContainText(/Day [1-9]/);
  await expect(hint).toContainText('Choose');
  expect(complaints).toEqual([]);
});

test('every step of building can be taken back and done again by keyboard', async ({ page }) => {
  await open(page);
  await placeByList(page);
  const built = await orderOf(page);
  await page.getByRole('heading', { level: 1 }).click();
  for (let step = 0; step < 4; step += 1) await page.keyboard.press('Control+z');
  expect(await orderOf(page)).toEqual(['fish', 'sump', 'pump']);
  await expect(page.getByRole('status')).toContainText('Taken back: Radial-flow settler placed after Fish tank.');
  await page.getByRole('heading', { level: 1 }).click();
  for (let step = 0; step < 4; step += 1) await page.keyboard.press('Control+Shift+z');
  expect(await orderOf(page)).toEqual(built);
});

test('acting in the past opens a branch; the course before can be compared and gone on with', async ({ page }) => {
  const complaints = complaintsOf(page);
  await open(page);
  await placeByList(page);
  await tend(page);
  await page.getByRole('button', { name: 'Run the season' }).click();
  await page.getByRole('button', { name: 'Pause' }).click();
  for (let day = 0; day < 9; day += 1) await page.getByRole('button', { name: 'Step a day' }).click();
  await page.getByLabel('Stage shown').selectOption({ label: 'Degassing tank' });
  await expect(page.getByRole('region', { name: 'Why' })).toContainText(/Bacteria here turned .* into nitrite/);
  await page.getByLabel('Hour shown, within the days run so far').fill('72');
  await page.getByRole('spinbutton', { name: /^Air/ }).fill('5');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('dialog')).toContainText('a new branch B begins');
  await page.getByRole('button', { name: 'Act here' }).click();
  await expect(page.locator('path.ghost').first()).toBeAttached();
  for (let day = 0; day < 3; day += 1) await page.getByRole('button', { name: 'Step a day' }).click();
  await page.getByRole('button', { name: /^Branches/ }).click();
  await expect(page.getByRole('row', { name: /Branch B you are here/ })).toContainText('from A, day 3, 01:00');
  await page.getByRole('button', { name: 'Go on in Branch A' }).click();
  await expect(page.getByRole('spinbutton', { name: /^Air/ })).toHaveValue('60');
  await expect(page.getByRole('status')).toContainText('Branch A');
  expect(complaints).toEqual([]);
});

test('US customary units are kept on the device', async ({ page }) => {
  await open(page);
  await page.getByRole('button', { name: 'Help' }).click();
  await expect(page.getByText('Radial-flow settler', { exact: true }).last()).toBeVisible();
  await page.getByLabel(/US customary/).check();
  await page.keyboard.press('Escape');
  await open(page);
  await showLoop(page);
  await expand(page, 'Fish tank');
  await expect(page.getByRole('spinbutton', { name: 'Feed, oz/d' })).toBeVisible();
});
