// The same bits in every browser that can be had: each is started on a page of ours, which sends back what its worker reckoned.
// Browsers are named from outside: LOOPWRIGHT_FIREFOX, LOOPWRIGHT_WEBKIT. Build the page first (npm run test:long does).
import { spawn } from 'node:child_process';
import { accessSync, constants, existsSync, mkdtempSync, readFileSync, readdirSync, rmSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { BROWSER_ARGUMENTS, findBrowser } from '../browser/findBrowser';
import { bitsExpression, bitsInNode, comparedPlans } from '../browser/hash';
import type { Plan } from '../../src/season/plan';

const DIST = fileURLToPath(new URL('../../dist/', import.meta.url));
const PATIENCE_ms = 180_000;

interface Engine {
  name: string;
  path: string | null;
  wish: string;
  args: (profile: string, url: string) => string[];
}

function runs(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** The browser that the variable names, or the first of these names on the path. */
function browserOf(variable: string, names: readonly string[]): string | null {
  const named = process.env[variable];
  if (named) {
    if (!runs(named)) throw new Error(`${variable} names ${named}, which cannot be run.`);
    return named;
  }
  return (
    (process.env['PATH'] ?? '')
      .split(delimiter)
      .flatMap((folder) => names.map((name) => join(folder, name)))
      .find(runs) ?? null
  );
}

const ENGINES: readonly Engine[] = [
  {
    name: 'Chromium',
    path: await findBrowser(),
    wish: 'LOOPWRIGHT_BROWSER',
    args: (profile, url) => [...BROWSER_ARGUMENTS, '--headless', `--user-data-dir=${profile}`, url],
  },
  {
    name: 'Firefox',
    path: browserOf('LOOPWRIGHT_FIREFOX', ['firefox', 'firefox-esr']),
    wish: 'LOOPWRIGHT_FIREFOX',
    args: (profile, url) => ['--headless', '--no-remote', '--profile', profile, url],
  },
  { name: 'WebKit', path: browserOf('LOOPWRIGHT_WEBKIT', []), wish: 'LOOPWRIGHT_WEBKIT', args: (_, url) => [url] },
];

/** Starts a browser on a page that reckons a season, and waits for what it sends back. */
async function bitsIn(engine: Engine, path: string, plan: Plan): Promise<string> {
  const worker = readdirSync(join(DIST, 'assets')).find((file) => /^entry-.*\.js$/.test(file));
  if (worker === undefined) throw new Error('The page has no worker; build it first.');
  const profile = mkdtempSync(join(tmpdir(), 'loopwright-'));
  let answered: (text: string) => void = () => undefined;
  const answer = new Promise<string>((resolve) => {
    answered = resolve;
  });
  const server = createServer((request, response) => {
    if (request.method === 'POST') {
      let text = '';
      request.on('data', (part: Buffer) => {
        text += part.toString();
      });
      request.on('end', () => {
        answered(text);
        response.end();
      });
    } else if (request.url === '/') {
      response.setHeader('content-type', 'text/html');
      response.end(`<!doctype html><meta charset="utf-8"><title>Bits</title><script type="module">
        const send = (text) => fetch('/bits', { method: 'POST', body: text });
        ${bitsExpression(`/assets/${worker}`, plan)}.then(send, (error) => send('error: ' + error.message));
      </script>`);
    } else {
      const file = join(DIST, (request.url ?? '').replaceAll('..', ''));
      response.setHeader('content-type', 'text/javascript');
      if (existsSync(file)) response.end(readFileSync(file));
      else response.writeHead(404).end();
    }
  });
  await new Promise<void>((resolve) => {
    server.listen(0, '127.0.0.1', resolve);
  });
  const browser = spawn(path, engine.args(profile, `http://127.0.0.1:${(server.address() as AddressInfo).port}/`), { stdio: 'ignore' });
  const gone = new Promise<string>((resolve) => {
    browser.on('error', (error) => resolve(`error: ${error.message}`));
  });
  const late = new Promise<string>((resolve) => {
    setTimeout(() => resolve(`error: no answer within ${PATIENCE_ms} ms`), PATIENCE_ms).unref();
  });
  try {
    return await Promise.race([answer, gone, late]);
  } finally {
    const closed = new Promise<void>((resolve) => {
      browser.on('exit', () => resolve());
      setTimeout(resolve, 5000).unref();
    });
    browser.kill();
    await closed;
    server.closeAllConnections();
    server.close();
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
  }
}

describe('a season has the same bits as in Node', () => {
  for (const engine of ENGINES) {
    const { name, path, wish } = engine;
    for (const [title, plan] of Object.entries(comparedPlans())) {
      if (path === null) it.skip(`in ${name}: ${title} (there is no ${name} here; ${wish} may name one)`, () => undefined);
      else
        it(`in ${name}: ${title}`, async () => {
          expect(await bitsIn(engine, path, plan)).toBe(await bitsInNode(plan));
        });
    }
  }
});
