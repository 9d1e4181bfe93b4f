// Journeys through the built page in a real browser. Build first; the page is served by vite preview.
import { fileURLToPath } from 'node:url';
import { defineConfig } from '@playwright/test';
import { BROWSER_ARGUMENTS, findBrowser } from './findBrowser';

/** Another port lets two copies of the project be tested side by side. */
const PORT = Number(process.env['LOOPWRIGHT_PORT'] ?? 4183);
const project = fileURLToPath(new URL('../..', import.meta.url));

export default defineConfig({
  testDir: '.',
  // those wait for long.config.ts
  grepInvert: /@long/,
  outputDir: `${project}/test-results`,
  // a guard against a journey that hangs, wide enough for a busy machine
  timeout: 300_000,
  expect: { timeout: 20_000 },
  workers: 2,
  // a machine that is busy with something else may upset a journey once: it is played again, and told as flaky; one that fails twice has
  // failed
  retries: 1,
  forbidOnly: true,
  // kept pictures stand beside their journey; they are written only when it is asked for
  snapshotPathTemplate: '{testDir}/pictures/{arg}{ext}',
  updateSnapshots: process.env['LOOPWRIGHT_RENEW_PICTURES'] === '1' ? 'all' : 'none',
  reporter: [['list']],
  use: {
    baseURL: `http://127.0.0.1:${PORT}/`,
    viewport: { width: 1280, height: 720 },
    // as on a device that has seen the cautions and wants no predictions; journeys of their own begin without
    storageState: {
      cookies: [],
      origins: [
        {
          origin: `http://127.0.0.1:${PORT}`,
          localStorage: [
            { name: 'loopwright.cautions', value: 'read' },
            { name: 'loopwright.predicting', value: 'off' },
          ],
        },
      ],
    },
    screenshot: 'only-on-failure',
    launchOptions: { executablePath: await findBrowser(), args: BROWSER_ARGUMENTS },
  },
  webServer: {
    command: `npx vite preview --port ${PORT} --strictPort --host 127.0.0.1`,
    cwd: project,
    port: PORT,
    reuseExistingServer: false,
    timeout: 60_000,
  },
});
