// The composition root: store, worker client, picture and panels meet here and nowhere else.
import '@fontsource-variable/atkinson-hyperlegible-next/wght.css';
import './panels/tokens.css';
import './panels/page.css';
import './panels/brief.css';
import './panels/build.css';
import './panels/inspector.css';
import './panels/season.css';
import { createRoot } from 'react-dom/client';
import { App } from './panels/App';
import { createPageStore } from './store/store';
import { say } from './words/say';
import { createClient } from './worker/client';
import type { World } from './world/world';

const LESSONS = import.meta.glob<string>('../levels/[0-9][0-9]-*.json', { query: '?raw', import: 'default' });

const worker = new Worker(new URL('./worker/entry.ts', import.meta.url), { type: 'module' });
const store = createPageStore(createClient(worker));
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

/** The picture is loaded after the panels have painted; the page works without it. */
async function drawPicture(place: HTMLElement): Promise<void> {
  try {
    if (!canDraw()) throw new Error(say('failure.noCanvas'));
    const { createWorld } = await import('./world/world');
    world = createWorld(place, store);
    window.loopwright = { anchors: () => world?.anchors() ?? null };
  } catch (error) {
    store.getState().reportFailure(say('failure.world', { message: messageOf(error) }));
  }
}

async function openFirstLesson(): Promise<void> {
  const [path] = Object.keys(LESSONS).sort();
  if (path === undefined) return;
  try {
    await store.getState().openLesson(path.slice(path.lastIndexOf('/') + 1), await LESSONS[path]());
  } catch (error) {
    store.getState().reportFailure(say('failure.read', { message: messageOf(error) }));
  }
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
    before = now;
    requestAnimationFrame(frame);
  };
  requestAnimationFrame(frame);
}

const root = document.getElementById('panels');
if (root === null) throw new Error('The page has no element for its panels.');
createRoot(root).render(<App store={store} gapAt={(x, y) => world?.gapAt(x, y) ?? null} onPicture={(place) => void drawPicture(place)} />);
followMotionWish();
runClock();
void openFirstLesson();
