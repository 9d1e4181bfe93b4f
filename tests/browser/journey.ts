// Steps shared by the journeys: opening the page, building by list, setting what a season needs, reading the result.
import { expect, type Locator, type Page } from '@playwright/test';

export const REFERENCE = [
  { id: 'settler', part: 'Radial-flow settler', after: 'Fish tank' },
  { id: 'mats', part: 'Fine-solids filter', after: 'Radial-flow settler' },
  { id: 'degas', part: 'Degassing tank', after: 'Fine-solids filter' },
  { id: 'rafts', part: 'Raft bed', after: 'Degassing tank' },
] as const;

export const REFERENCE_ORDER = ['fish', 'settler', 'mats', 'degas', 'rafts', 'sump', 'pump'];

/** Collects everything the page complains about on its console; graphics drivers' performance notes are no complaint of ours. */
export function complaintsOf(page: Page): string[] {
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  return complaints;
}

/** Begins as on a device that has not said no to predictions. */
export async function askForPredictions(page: Page): Promise<void> {
  await page.addInitScript(() => localStorage.removeItem('loopwright.predicting'));
}

export async function open(page: Page): Promise<void> {
  await page.goto('./');
  await expect(page.getByRole('heading', { level: 1 })).toContainText('First loop');
  await expect(page.getByRole('button', { name: 'Place Radial-flow settler' })).toBeVisible();
}

/** Shows the list of the loop, whether it stands beside the parts or behind a tab. */
export async function showLoop(page: Page): Promise<Locator> {
  const tab = page.getByRole('tab', { name: 'The loop' });
  if ((await tab.count()) > 0) await tab.click();
  return page.getByRole('region', { name: 'In the order of the water' });
}

/** Ids of the loop in the order of the list. */
export async function orderOf(page: Page): Promise<(string | null)[]> {
  const list = await showLoop(page);
  return list.locator('ol > li').evaluateAll((items) => items.map((item) => item.getAttribute('data-stage')));
}

export async function expand(page: Page, stage: string): Promise<void> {
  const button = page.getByRole('button', { name: `Adjust ${stage}`, exact: true });
  if ((await button.getAttribute('aria-expanded')) !== 'true') await button.click();
}

/** Feed, chores and base under which the reference loop thrives. */
export async function tend(page: Page): Promise<void> {
  await showLoop(page);
  await expand(page, 'Fish tank');
  await page.getByRole('spinbutton', { name: 'Feed, g/d' }).fill('60');
  await page.keyboard.press('Enter');
  await expand(page, 'Radial-flow settler');
  await page.getByLabel('Drain by routine').selectOption({ label: 'every day' });
  await expand(page, 'Fine-solids filter');
  await page.getByLabel('Rinse by routine').selectOption({ label: 'every 3 days' });
  await expand(page, 'Base dosing');
  await page.getByRole('spinbutton', { name: 'Dose at most, g/d' }).fill('15');
  await page.keyboard.press('Enter');
}

export async function placeByList(page: Page): Promise<void> {
  for (const { part, after } of REFERENCE) {
    await page.getByLabel(`Where to place ${part}`).selectOption({ label: `after ${after}` });
    await page.getByRole('button', { name: `Place ${part}` }).click();
  }
}

/** Lets the season pass at five days a second, to its result. */
export async function runToEnd(page: Page): Promise<void> {
  await page.getByRole('button', { name: '5 d/s' }).click();
  await expect(page.getByRole('heading', { name: 'The season is over' })).toBeVisible({ timeout: 90_000 });
}

export async function scoreOf(page: Page, which: 'fishHealth' | 'harvest'): Promise<number> {
  return Number(await page.locator(`[data-score="${which}"]`).innerText());
}

/** Has the picture drawn by WebGL, as with a graphics card, though here the processor plays one; to be asked before the page is opened. */
export async function drawnByWebGL(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const { getParameter } = WebGLRenderingContext.prototype;
    WebGLRenderingContext.prototype.getParameter = function read(this: WebGLRenderingContext, name: number): unknown {
      const told: unknown = getParameter.call(this, name);
      return typeof told === 'string' ? 'Graphics card' : told;
    };
  });
}
