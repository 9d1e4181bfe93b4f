// The composition root: store, worker client, picture and panels meet here and nowhere else.
import '@fontsource-variable/atkinson-hyperlegible-next/wght.css';
import './page/panels/common/tokens.css';
import './page/panels/common/page.css';
import './page/panels/run/brief.css';
import './page/panels/build/build.css';
import './page/panels/run/inspector.css';
import './page/panels/run/season.css';
import { createRoot } from 'react-dom/client';
import { App } from './page/panels/App';
import type { CardRead } from './lessons/card';
import { cardIn } from './lessons/texts';
import { keptIn } from './page/state/common/device';
import { createPresenter } from './page/state/presenter/presenter';
import { createPageStore } from './page/state/common/store';
import { chooseLanguage, ENGLISH, languageTag } from './words/language';
import { pseudoLanguage } from './words/pseudo';
import { say } from './words/say';
import { createClient, type Client } from './worker/client';
import type { World } from './page/picture/scene/world';

const LESSONS = import.meta.glob<string>('../levels/[0-9][0-9]-*.json', { query: '?raw', import: 'default' });
const CARDS = import.meta.glob<CardRead>('../levels/[0-9][0-9]-*.json', { query: '?card', import: 'card', eager: true });
/** A lesson is far shorter; a longer answer is no lesson. */
const TEXT_MAX = 1_000_000;

// a journey through the page asks for the language that nobody speaks
if (new URLSearchParams(location.search).get('words') === 'pseudo') chooseLanguage(pseudoLanguage(ENGLISH));
document.documentElement.lang = languageTag();

const startWorker = (): Client => createClient(new Worker(new URL('./worker/entry.ts', import.meta.url), { type: 'module' }));
const client = startWorker();
const store = createPageStore(client, {
  cards: Object.keys(CARDS)
    .sort()
    .map((path) => cardIn(CARDS[path], languageTag())),
  readCard: async (file) => LESSONS[`../levels/${file}`](),
  fetchText,
  page: location.href,
  setAddress,
  device: keptIn(() => localStorage),
  today: () => new Date().toISOString().slice(0, 10),
  side: startWorker,
});
const presenter = createPresenter(
  client,
  store,
  Object.keys(LESSONS)
    .sort()
    .map((path) => ({ name: path.slice(path.lastIndexOf('/') + 1), read: LESSONS[path] })),
);
let world: World | null = null;

declare global {
  interface Window {
    /** Where the gaps and stages of the picture lie on the page, for journeys that use the mouse. */
    loopwright?: { anchors(): ReturnType<World['anchors']> | null };
  }
}

const messageOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));

/** Whether anything can be drawn at all. */
function canDraw(): boolean {
  const canvas = document.createElement('canvas');
  return canvas.getContext('webgl') !== null || canvas.getContext('2d') !== null;
}

/** The picture is loaded after the panels have painted; the page works without it. @returns whether it can be drawn */
async function drawPicture(place: HTMLElement): Promise<boolean> {
  if (!canDraw()) return false;
  try {
    const { createWorld } = await import('./page/picture/scene/world');
    world = createWorld(place, store);
    window.loopwright = { anchors: () => world?.anchors() ?? null };
    return true;
  } catch (error) {
    store.getState().reportFailure(say('failure.world', { message: messageOf(error) }));
    return false;
  }
}

/** Draws the presenter's two loops; the answer takes them away again. */
function drawPair(left: HTMLElement, right: HTMLElement): () => void {
  let wanted = true;
  let pair: World[] = [];
  const draw = async (): Promise<void> => {
    if (!canDraw()) throw new Error(say('failure.noCanvas'));
    const { createWorld } = await import('./page/picture/scene/world');
    if (wanted) pair = [left, right].map((place, side) => createWorld(place, presenter.sides[side], 'class'));
  };
  draw().catch((error: unknown) => store.getState().reportFailure(say('failure.world', { message: messageOf(error) })));
  return () => {
    wanted = false;
    for (const one of pair) one.destroy();
  };
}

const importFrom = (address: string): Promise<unknown> => import(/* @vite-ignore */ address);

async function fetchText(url: string): Promise<string> {
  const answer = await fetch(url, { credentials: 'omit', cache: 'no-cache' });
  if (!answer.ok) throw new Error(say('failure.status', { status: answer.status }));
  const text = await answer.text();
  if (text.length > TEXT_MAX) throw new Error(say('failure.tooLong'));
  return text;
}

function setAddress(hash: string, step: 'new' | 'same'): void {
  if (location.hash === hash) return;
  const address = `${location.pathname}${location.search}${hash}`;
  if (step === 'new') history.pushState(null, '', address);
  else history.replaceState(null, '', address);
}

/** The address says which lesson is open; going back and forth goes through lessons. */
function followAddress(): void {
  const follow = (): void => void store.getState().openAddress(location.hash);
  addEventListener('hashchange', follow);
  follow();
}

function followMotionWish(): void {
  const wish = matchMedia('(prefers-reduced-motion: reduce)');
  store.getState().setReducedMotion(wish.matches);
  wish.addEventListener('change', () => store.getState().setReducedMotion(wish.matches));
}

/** The page's clock: seconds between frames advance the season on screen. */
function runClock(): void {
  let before = performance.now();
  const frame = (now: number): void => {
    store.getState().tick((now - before) / 1000);
    presenter.store.getState().tick((now - before) / 1000);
    before = now;
    requestAnimationFrame(frame);
  };
  requestAnimationFrame(frame);
}

const root = document.getElementById('panels');
if (root === null) throw new Error('The page has no element for its panels.');
createRoot(root).render(
  <App
    store={store}
    gapAt={(x, y) => world?.gapAt(x, y) ?? null}
    onPicture={drawPicture}
    presenting={{ presenter, drawPair }}
    importFrom={importFrom}
  />,
);
followMotionWish();
runClock();
followAddress();
