// Finds a browser to drive: the one named by LOOPWRIGHT_BROWSER, else one of the system, else the Chromium that npm ships.
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';
import chromium from '@sparticuz/chromium';

const NAMES = [
  'google-chrome',
  'google-chrome-stable',
  'chromium',
  'chromium-browser',
  'microsoft-edge',
  'microsoft-edge-stable',
  'chrome.exe',
  'msedge.exe',
];
const PLACES = [
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
];

/** Arguments under which a browser starts as any user, without a network and without a graphics card. */
export const BROWSER_ARGUMENTS = [
  '--no-sandbox',
  '--disable-gpu',
  '--enable-unsafe-swiftshader',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

function runs(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/**
 * Path of the browser to drive.
 * @throws Error when LOOPWRIGHT_BROWSER names a file that cannot be run
 */
export async function findBrowser(): Promise<string> {
  const named = process.env['LOOPWRIGHT_BROWSER'];
  if (named !== undefined && named !== '') {
    if (!runs(named)) throw new Error(`LOOPWRIGHT_BROWSER names ${named}, which cannot be run.`);
    return named;
  }
  const onPath = (process.env['PATH'] ?? '').split(delimiter).flatMap((folder) => NAMES.map((name) => join(folder, name)));
  return [...onPath, ...PLACES].find(runs) ?? chromium.executablePath();
}
