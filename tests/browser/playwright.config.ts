// Journeys through the built page in a real browser. Build first; the page is served by vite preview.
import { fileURLToPath } from 'node:url';
import { defineConfig } from '@playwright/test';
import { BROWSER_ARGUMENTS, findBrowser } from './findBrowser';

const PORT = 4183;
const project = fileURLToPath(new URL('../..', import.meta.url));

export default defineConfig({
  testDir: '.',
  outputDir: `${project}/test-results`,
  timeout: 120_000,
  expect: { timeout: 20_000 },
  workers: 1,
  retries: 0,
  forbidOnly: true,
  reporter: [['list']],
  use: {
    baseURL: `http://127.0.0.1:${PORT}/`,
    viewport: { width: 1280, height: 720 },
    screenshot: 'only-on-failure',
    launchOptions: { executablePath: await findBrowser(), args: BROWSER_ARGUMENTS },
  },
  webServer: { command: `npx vite preview --port ${PORT} --strictPort --host 127.0.0.1`, cwd: project, port: PORT, reuseExistingServer: false, timeout: 60_000 },
});
