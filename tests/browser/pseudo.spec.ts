// The page in a language that nobody speaks: nothing is said outside the catalogue, and longer words have room.
import { expect, test, type Page } from '@playwright/test';
import { chooseLanguage, ENGLISH } from '../../src/words/language';
import { pseudoLanguage } from '../../src/words/pseudo';
import { say } from '../../src/words/say';
import { unitOf } from '../../src/words/units';
import { kindName } from '../../src/words/stageNames';
import { askForPredictions, complaintsOf } from './journey';
import { cutOff, unmarked, unmarkedInPicture, watchPicture } from './pseudo';

const SIZES = [
  [1280, 720],
  [1024, 768],
] as const;
const ORDER = ['fishTank', 'radialFlowSettler', 'fineFilter', 'degassingTank', 'raftBed'];

/** Looks at one screen after another, each at both sizes, and keeps what is wrong with it. */
class Looker {
  readonly found: string[] = [];
  /** the size at hand comes first: each change of it draws the picture anew */
  private sizes = [...SIZES];
  constructor(private readonly page: Page) {}

  async at(name: string): Promise<void> {
    for (const words of await unmarked(this.page)) this.found.push(`${name}: not from the catalogue: ${words}`);
    for (const [width, height] of this.sizes) {
      await this.page.setViewportSize({ width, height });
      await this.page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
      for (const words of await cutOff(this.page)) this.found.push(`${name}, ${width} × ${height}: ${words}`);
    }
    this.sizes.reverse();
  }
}

async function openPage(page: Page): Promise<{ look: Looker; complaints: string[] }> {
  chooseLanguage(pseudoLanguage(ENGLISH));
  page.setDefaultTimeout(60_000);
  const complaints = complaintsOf(page);
  await watchPicture(page);
  await page.goto('./?words=pseudo');
  await expect(page.locator('.picture canvas')).toBeVisible({ timeout: 60_000 });
  await expect(page.getByRole('heading', { level: 1 })).toContainText('First loop');
  await expect(page.getByRole('button', { name: say('build.placePart', { part: kindName(ORDER[1]) }) })).toBeVisible();
  return { look: new Looker(page), complaints };
}

/** Goes on day by day to the result, as fast as the page follows: what is said on the way is looked at elsewhere. */
async function stepToEnd(page: Page): Promise<void> {
  const step = page.getByRole('button', { name: say('season.step'), exact: true });
  const days = Number(await page.getByRole('slider', { name: say('season.scrub') }).getAttribute('max')) / 24;
  for (let day = 0; day < days && !(await page.getByRole('heading', { name: say('result.title') }).isVisible()); day += 1)
    await step.dispatchEvent('click');
  await expect(page.getByRole('heading', { name: say('result.title') })).toBeVisible();
}

// two sizes of screen at every step, and seasons worked out for the key and the presenter
test.setTimeout(240_000);

test.describe.configure({ mode: 'parallel' });

test.afterAll(() => chooseLanguage(ENGLISH));

test('every word of building, running, the result and the path comes from the catalogue, and longer words have room', async ({ page }) => {
  await askForPredictions(page);
  const { look, complaints } = await openPage(page);
  await look.at('build');

  for (const [index, kind] of ORDER.slice(1).entries()) {
    await page
      .getByLabel(say('build.placeWhere', { part: kindName(kind) }))
      .selectOption({ label: say('build.after', { stage: kindName(ORDER[index]) }) });
    await page.getByRole('button', { name: say('build.placePart', { part: kindName(kind) }) }).click();
  }
  await page.getByRole('tab', { name: say('build.tab.loop') }).click();
  for (const kind of ['radialFlowSettler', 'baseDosing', 'fishTank'])
    await page.getByRole('button', { name: say('build.set', { stage: kindName(kind) }), exact: true }).click();
  await page.getByRole('spinbutton', { name: say('control.feedAmount', { unit: unitOf('feed_g_d') }) }).fill('60');
  await page.keyboard.press('Enter');
  await look.at('the loop, built');
  await page.getByRole('button', { name: say('help.button'), exact: true }).click();
  await look.at('help');
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: say('ladder.open'), exact: true }).click();
  await look.at('hints of the lesson');
  await page.getByRole('button', { name: say('ladder.close') }).click();
  await page.getByRole('button', { name: say('more.button'), exact: true }).click();
  await look.at('more');
  await page.keyboard.press('Escape');

  await page.getByRole('button', { name: say('build.run') }).click();
  const card = page.getByRole('region', { name: say('ask.region') });
  await expect(card).toBeVisible({ timeout: 60_000 });
  await look.at('a prediction');
  while (await card.isVisible()) {
    const question = await card.getByRole('heading').innerText();
    await card.getByRole('button', { name: say('ask.skip'), exact: true }).click();
    await expect(card.getByRole('heading', { name: question, exact: true })).toBeHidden();
  }
  await page.getByRole('button', { name: say('season.pause'), exact: true }).click();
  for (let day = 0; day < 2; day += 1) await page.getByRole('button', { name: say('season.step'), exact: true }).click();
  for (const kind of ORDER) {
    await page.getByLabel(say('inspect.choose')).selectOption({ label: kindName(kind) });
    await look.at(`run, ${kind}`);
  }
  await page.locator('.goals-button').click();
  await look.at('what counts');
  await page.keyboard.press('Escape');
  await stepToEnd(page);
  await look.at('result');

  await page.getByRole('button', { name: say('path.button'), exact: true }).click();
  await look.at('path');
  await page.getByRole('button', { name: say('path.back') }).click();

  await page.getByRole('button', { name: say('more.button'), exact: true }).click();
  await page.getByRole('button', { name: say('paper.button') }).click();
  await page.getByRole('radio', { name: say('paper.sheet.season') }).check();
  await expect(page.locator('.sheet-head')).toBeVisible();
  await look.at('paper, season');
  expect(await unmarkedInPicture(page)).toEqual([]);
  expect(look.found).toEqual([]);
  expect(complaints).toEqual([]);
});

test('every word of paper and presenter comes from the catalogue, and longer words have room', async ({ page }) => {
  const { look, complaints } = await openPage(page);
  await page.getByRole('button', { name: say('more.button'), exact: true }).click();
  await page.getByRole('button', { name: say('paper.button') }).click();
  for (const sheet of ['learner', 'lesson', 'key'] as const) {
    await page.getByRole('radio', { name: say(`paper.sheet.${sheet}`) }).check();
    await expect(page.locator('.sheet-head')).toBeVisible({ timeout: 60_000 });
    await look.at(`paper, ${sheet}`);
  }
  await page.getByRole('button', { name: say('paper.close') }).click();

  await page.keyboard.press('F2');
  const first = page.locator('.chooser-list button').first();
  await expect(first).toBeVisible({ timeout: 60_000 });
  await look.at('presenter, choosing');
  await first.click();
  await expect(page.locator('.pair-picture canvas')).toHaveCount(2, { timeout: 60_000 });
  for (const step of ['question', 'votes', 'turning point', 'turning point 2', 'turning point 3', 'reveal']) {
    await look.at(`presenter, ${step}`);
    await page.keyboard.press('PageDown');
  }
  expect(await unmarkedInPicture(page)).toEqual([]);
  expect(look.found).toEqual([]);
  expect(complaints).toEqual([]);
});
