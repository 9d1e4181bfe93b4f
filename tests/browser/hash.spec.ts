// The built page's worker, in Chromium, reckons the very bits that Node does.
import { expect, test } from '@playwright/test';
import { bitsExpression, bitsInNode, comparedPlans } from './hash';

test('a season has the same bits in the page as in Node', async ({ page }) => {
  const started = page.waitForEvent('worker');
  await page.goto('./');
  const worker = (await started).url();
  for (const [name, plan] of Object.entries(comparedPlans())) {
    expect(await page.evaluate(bitsExpression(worker, plan)), name).toBe(await bitsInNode(plan));
  }
});
