// Key states of the picture, held against kept pictures with a tolerance: a season is the same each time, and with reduced motion nothing
// moves. After a change that is meant, LOOPWRIGHT_RENEW_PICTURES=1 writes them anew; look at each before keeping it.
import { expect, test, type Page } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { drawnByWebGL } from './journey';

/** Share of pixels that may differ, and by how much one may: letters and edges come out a little otherwise on other machines. */
const TOLERANCE = { scale: 'device', maxDiffPixelRatio: 0.04, threshold: 0.25 } as const;
/** A new picture is drawn within this time, and with reduced motion it is looked at once a second, ms. */
const SETTLED_ms = 2600;

test.beforeEach(async ({ page }) => {
  await page.addInitScript(() => localStorage.setItem('loopwright.hints', 'off'));
});

test.use({ viewport: { width: 800, height: 480 }, deviceScaleFactor: 0.6, contextOptions: { reducedMotion: 'reduce' } });

interface Plan {
  loop: unknown[];
  actions: unknown[];
}

/** The first lesson with its loop already in order, as a file a teacher might have. */
function builtLesson(without: string | null): string {
  const lesson = JSON.parse(readFileSync(new URL('../../levels/00-first-loop.json', import.meta.url), 'utf8')) as {
    plan: Plan;
    reference: { order: string[]; actions: { stage?: string; every_d?: number }[] };
  };
  const { order, actions } = lesson.reference;
  const given = order.filter((id) => id !== without);
  // without a part nobody looks after the rest either, so that there is something to see
  lesson.plan.actions = actions.filter((action) => action.every_d === undefined || (action.stage !== without && without === null));
  return JSON.stringify({ ...lesson, id: 'pictured', given, predictions: [], hints: [], demonstrations: [], mistakes: [] });
}

async function openBuilt(page: Page, without: string | null): Promise<void> {
  await expect(page.getByRole('heading', { level: 1 })).toContainText('First loop');
  await page.evaluate((text) => {
    const data = new DataTransfer();
    data.items.add(new File([text], 'pictured.json', { type: 'application/json' }));
    for (const kind of ['dragover', 'drop'])
      document.body.dispatchEvent(new DragEvent(kind, { dataTransfer: data, bubbles: true, cancelable: true }));
  }, builtLesson(without));
  await expect(page.getByText('Water can flow')).toBeVisible();
}

async function goTo(page: Page, day: number, hour: number): Promise<void> {
  await page.getByRole('button', { name: 'Run the season' }).click();
  await expect(page.getByLabel('Hour shown, within the days run so far')).toBeVisible();
  const step = page.getByRole('button', { name: 'Step a day' });
  for (let d = 0; d <= day; d += 1) await step.click();
  await page.getByLabel('Hour shown, within the days run so far').fill(String(24 * day + hour));
}

async function looksLike(page: Page, name: string): Promise<void> {
  await page.waitForTimeout(SETTLED_ms);
  await expect(page.locator('#world')).toHaveScreenshot(`${name}.png`, TOLERANCE);
}

for (const renderer of ['WebGL', 'plain canvas'])
  test(`a loop being built${renderer === 'WebGL' ? '' : ', at noon and at night'} looks as it did, drawn by ${renderer}`, async ({
    page,
  }) => {
    if (renderer === 'WebGL') await drawnByWebGL(page);
    await page.goto('./');
    await openBuilt(page, null);
    const drawn = await page.locator('#world canvas').evaluate((canvas: HTMLCanvasElement) => canvas.getContext('2d') === null);
    expect(drawn).toBe(renderer === 'WebGL');
    await looksLike(page, 'building');
    if (renderer === 'WebGL') return;
    await goTo(page, 20, 12);
    await looksLike(page, 'noon');
    await page.getByLabel('Hour shown, within the days run so far').fill(String(24 * 20 + 1));
    await looksLike(page, 'night');
  });

test('sludge that nobody drained, and roots without a fine filter, look from close by as they did', async ({ page }) => {
  await page.goto('./');
  await openBuilt(page, 'mats');
  await goTo(page, 45, 12);
  await page.getByLabel('Stage shown').selectOption({ label: 'Radial-flow settler' });
  await page.getByRole('button', { name: 'Look closer' }).click();
  await looksLike(page, 'sludge');
  await page.getByLabel('Stage shown').selectOption({ label: 'Raft bed' });
  await looksLike(page, 'roots');
});

for (const [what, lost] of [
  ['without WebGL the loop is drawn on a plain canvas', 'webgl'],
  ['without any canvas the page says so and goes on', ''],
] as const) {
  test(what, async ({ page }) => {
    await page.addInitScript((kind) => {
      const { getContext } = HTMLCanvasElement.prototype as {
        getContext: (this: HTMLCanvasElement, type: string, ...rest: unknown[]) => RenderingContext | null;
      };
      Object.defineProperty(HTMLCanvasElement.prototype, 'getContext', {
        value(this: HTMLCanvasElement, type: string, ...rest: unknown[]) {
          return type.includes(kind) ? null : getContext.call(this, type, ...rest);
        },
      });
    }, lost);
    await page.goto('./');
    await openBuilt(page, null);
    if (lost === '') await expect(page.getByText('This browser cannot draw the picture')).toBeVisible();
    else
      await expect
        .poll(() =>
          page.evaluate(
            () =>
              Object.keys((window as { loopwright?: { anchors(): { stages: object } | null } }).loopwright?.anchors()?.stages ?? {}).length,
          ),
        )
        .toBe(8);
    await expect(page.getByRole('alert')).toHaveCount(0);
    await page.getByRole('button', { name: 'Run the season' }).click();
    await expect(page.getByRole('button', { name: 'Step a day' })).toBeVisible();
  });
}
