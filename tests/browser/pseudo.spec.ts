// The page in a language that nobody speaks: nothing is said outside the catalogue, and longer words have room.
import { expect, test, type Page } from '@playwright/test';
import { chooseLanguage, ENGLISH } from '../../src/words/language';
import { pseudoLanguage } from '../../src/words/pseudo';
import { say } from '../../src/words/say';
import { unitOf } from '../../src/words/units';
import { kindName } from '../../src/words/stageNames';
import { askForPredictions, complaintsOf } from './journey';
import { cutOff, unmarked, unmarkedInPicture, watchPicture } from './pseudo';

const SIZES = [[1280, 720], [1024, 768]] as const;
const ORDER = ['fishTank', 'radialFlowSettler', 'fineFilter', 'degassingTank', 'raftBed'];

async function dialog(page: Page, open: string, look: (name: string) => Promise<void>): Promise<void> {
  await page.getByRole('button', { name: open, exact: true }).click();
  await look(`dialog ${open}`);
  await page.keyboard.press('Escape');
}

test.setTimeout(300_000);

test('every word of the page comes from the catalogue, and longer ones have room', async ({ page }) => {
  chooseLanguage(pseudoLanguage(ENGLISH));
  const complaints = complaintsOf(page);
  const found: string[] = [];
  const look = async (name: string): Promise<void> => {
    if (process.env['PSEUDO_LOG']) console.log(name, Date.now());
    for (const words of await unmarked(page)) found.push(`${name}: not from the catalogue: ${words}`);
    for (const [width, height] of SIZES) {
      await page.setViewportSize({ width, height });
      await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
      for (const words of await cutOff(page)) found.push(`${name}, ${width} × ${height}: ${words}`);
    }
    if (process.env['PSEUDO_LOG']) { console.log(found.splice(0).join('\n')); }
    await page.setViewportSize({ width: 1280, height: 720 });
  };
  await askForPredictions(page);
  await watchPicture(page);
  await page.goto('./?words=pseudo');
  await expect(page.locator('.picture canvas')).toBeVisible({ timeout: 60_000 });
  await look('build');

  for (const [index, kind] of ORDER.slice(1).entries()) {
    await page.getByLabel(say('build.placeWhere', { part: kindName(kind) })).selectOption({ label: say('build.after', { stage: kindName(ORDER[index]) }) });
    await page.getByRole('button', { name: say('build.placePart', { part: kindName(kind) }) }).click();
  }
  await page.getByRole('tab', { name: say('build.tab.loop') }).click();
  for (const kind of ['fishTank', 'radialFlowSettler', 'baseDosing']) await page.getByRole('button', { name: say('build.set', { stage: kindName(kind) }), exact: true }).click();
  await page.getByRole('spinbutton', { name: say('control.feedAmount', { unit: unitOf('feed_g_d') }) }).fill('60');
  await page.keyboard.press('Enter');
  await look('the loop, built');
  await dialog(page, say('help.button'), look);
  await page.getByRole('button', { name: say('ladder.open'), exact: true }).click();
  await look('hints of the lesson');
  await page.getByRole('button', { name: say('ladder.close') }).click();
  await page.getByRole('button', { name: say('more.button'), exact: true }).click();
  await look('more');
  await page.keyboard.press('Escape');

  await page.getByRole('button', { name: say('build.run') }).click();
  const card = page.getByRole('region', { name: say('ask.region') });
  await expect(card).toBeVisible({ timeout: 60_000 });
  await look('a prediction');
  while (await card.isVisible()) {
    const question = await card.getByRole('heading').innerText();
    await card.getByRole('button', { name: say('ask.skip'), exact: true }).click();
    await expect(card.getByRole('heading', { name: question, exact: true })).toBeHidden();
  }
  await page.getByRole('button', { name: say('season.pause'), exact: true }).click();
  for (let day = 0; day < 2; day += 1) await page.getByRole('button', { name: say('season.step'), exact: true }).click();
  for (const kind of ORDER) {
    await page.getByLabel(say('inspect.choose')).selectOption({ label: kindName(kind) });
    await look(`run, ${kind}`);
  }
  await page.locator('.goals-button').click();
  await look('what counts');
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: say('season.days5'), exact: true }).click();
  await expect(page.getByRole('heading', { name: say('result.title') })).toBeVisible({ timeout: 90_000 });
  await look('result');

  await page.getByRole('button', { name: say('path.button'), exact: true }).click();
  await look('path');
  await page.getByRole('button', { name: say('path.back') }).click();

  await page.getByRole('button', { name: say('more.button'), exact: true }).click();
  await page.getByRole('button', { name: say('paper.button') }).click();
  for (const sheet of ['learner', 'lesson', 'season', 'key'] as const) {
    await page.getByRole('radio', { name: say(`paper.sheet.${sheet}`) }).check();
    await expect(page.locator('.sheet-head')).toBeVisible({ timeout: 60_000 });
    await look(`paper, ${sheet}`);
  }
  await page.getByRole('button', { name: say('paper.close') }).click();

  await page.keyboard.press('F2');
  const first = page.locator('.chooser-list button').first();
  await expect(first).toBeVisible({ timeout: 60_000 });
  await look('presenter, choosing');
  await first.click();
  await expect(page.locator('.pair-picture canvas')).toHaveCount(2, { timeout: 60_000 });
  for (const step of ['question', 'votes', 'turning point', 'turning point 2', 'turning point 3', 'reveal']) {
    await look(`presenter, ${step}`);
    await page.keyboard.press('PageDown');
  }
  expect(await unmarkedInPicture(page)).toEqual([]);
  expect(found).toEqual([]);
  expect(complaints).toEqual([]);
});
