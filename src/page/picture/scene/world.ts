// The world: the loop as a cutaway side view on a canvas. It reads the store and calls its actions.
import { AUTO, CANVAS, Game, Scale } from 'phaser';
import { INK } from '../kit/palette';
import { gapNear } from './gaps';
import { handleNear, pulledTo, REACH_px, type Handle } from './handles';
import { FOR_A_CLASS, forOne, scaled, type Legible } from '../marks/legible';
import { LoopScene } from './loopScene';
import { hasFastWebGL } from './fastWebGL';
import { followPointer } from './pointer';
import type { PageSource } from '../kit/terms';

/** A rectangle on the page, CSS pixels. */
export interface ScreenRect {
  x: number;
  y: number;
  width: number;
  height: number;
}
export interface Anchors {
  stages: Record<string, ScreenRect>;
  gaps: Record<number, ScreenRect>;
  /** of the selected stage, by the size they pull */
  handles: Record<string, ScreenRect>;
}
export interface World {
  destroy(): void;
  /** Takes over the size of the parent element. */
  resize(): void;
  /** The gap a part would go into if it were dropped at this point of the page; null off the picture. */
  gapAt(clientX: number, clientY: number): number | null;
  /** Where stages and gaps lie on the page now. */
  anchors(): Anchors;
}

/** Pages are drawn at no more than this many device pixels a page pixel. */
const MOST_RATIO = 2;
/** Frames a second where the processor draws, so that it has time for the page. */
const PLAIN_FRAMES_s = 20;

/**
 * Draws the loop of a store into an element and keeps it in step.
 * @param parent an element with a size of its own
 * @param audience for a class, names and numbers are drawn larger
 * @throws when the browser offers neither WebGL nor a 2D canvas
 */
export function createWorld(parent: HTMLElement, store: PageSource, audience: 'one' | 'class' = 'one'): World {
  const scene = new LoopScene(store);
  const ratio = (): number => Math.max(1, Math.min(MOST_RATIO, window.devicePixelRatio || 1));
  const legible = (): Legible => (audience === 'one' ? forOne(window.innerHeight) : scaled(FOR_A_CLASS, window.innerHeight / 720));
  scene.ratio = ratio();
  scene.legible = legible();
  const fast = hasFastWebGL();
  const game = new Game({
    type: fast ? AUTO : CANVAS,
    ...(fast ? {} : { fps: { limit: PLAIN_FRAMES_s } }),
    parent,
    width: Math.max(1, Math.round(parent.clientWidth * scene.ratio)),
    height: Math.max(1, Math.round(parent.clientHeight * scene.ratio)),
    backgroundColor: INK.paper,
    banner: false,
    disableContextMenu: false,
    audio: { noAudio: true },
    input: { keyboard: false, mouse: false, touch: false, gamepad: false },
    render: { antialiasGL: false, maxTextures: 1 },
    scale: { mode: Scale.NONE },
    scene,
  });

  const canvasRect = (): DOMRect => game.canvas.getBoundingClientRect();
  const toWorld = (clientX: number, clientY: number): { x: number; y: number } | null => {
    if (!game.canvas) return null;
    const bounds = canvasRect();
    if (clientX < bounds.left || clientX > bounds.right || clientY < bounds.top || clientY > bounds.bottom) return null;
    return {
      x: (clientX - bounds.left) / scene.view.scale + scene.view.left,
      y: (clientY - bounds.top) / scene.view.scale + scene.view.top,
    };
  };
  const gapAt = (clientX: number, clientY: number): number | null => {
    const point = toWorld(clientX, clientY);
    return point === null || scene.layout === null ? null : gapNear(scene.layout.gaps, point.x);
  };
  const stageAt = (clientX: number, clientY: number): string | null => {
    const point = toWorld(clientX, clientY);
    const { layout } = scene;
    if (point === null || layout === null) return null;
    const { x, y } = point;
    const { pump } = layout;
    if (pump !== null && Math.abs(x - pump.x) < 34 && y > pump.y - 34 && y < pump.y + 28) return pump.id;
    for (const box of [...layout.sides, ...layout.stages])
      if (x > box.x - 16 && x < box.x + box.w + 16 && y > box.rim - 60 && y < box.floor + 30) return box.id;
    return null;
  };

  const handleAt = (clientX: number, clientY: number): Handle | null => {
    const point = toWorld(clientX, clientY);
    const { game, view } = store.getState();
    return point === null || game.mode !== 'build' ? null : handleNear(scene.handles, view.selected, point.x, point.y, scene.view.scale);
  };
  const pull = (handle: Handle | null, dx_px: number, dy_px: number): number | null => {
    const { layout, view } = scene;
    scene.pulled =
      handle === null || layout === null ? null : pulledTo(handle, dx_px / view.scale, dy_px / view.scale, view.scale, layout.unitsPerM);
    return scene.pulled?.value ?? null;
  };

  /** The canvas covers its parent exactly, whatever its device pixels are. */
  const fill = (): void => {
    game.canvas.style.width = `${parent.clientWidth}px`;
    game.canvas.style.height = `${parent.clientHeight}px`;
  };
  let stop: (() => void) | null = null;
  const begin = (): void => {
    game.canvas.setAttribute('aria-hidden', 'true');
    game.canvas.style.display = 'block';
    fill();
    stop = followPointer(game.canvas, store, { stageAt, gapAt, handleAt, pull });
  };
  if (game.isBooted) begin();
  else game.events.once('boot', begin);

  const resize = (): void => {
    const width = Math.round(parent.clientWidth * ratio());
    const height = Math.round(parent.clientHeight * ratio());
    if (!game.isBooted) return;
    // a picture that nobody sees costs nothing
    if (width < 1 || height < 1) game.loop.sleep();
    else game.loop.wake();
    if (width < 1 || height < 1 || (width === game.scale.width && height === game.scale.height)) return;
    scene.ratio = ratio();
    scene.legible = legible();
    game.scale.resize(width, height);
    fill();
    scene.refresh();
    scene.resized();
  };
  const watch = new ResizeObserver(resize);
  watch.observe(parent);

  return {
    destroy() {
      watch.disconnect();
      stop?.();
      game.destroy(true);
    },
    resize,
    gapAt,
    anchors() {
      const stages: Record<string, ScreenRect> = {};
      const gaps: Record<number, ScreenRect> = {};
      const handles: Record<string, ScreenRect> = {};
      const { layout, view } = scene;
      if (layout === null) return { stages, gaps, handles };
      const bounds = canvasRect();
      const rect = (x: number, y: number, w: number, h: number): ScreenRect => ({
        x: bounds.left + (x - view.left) * view.scale,
        y: bounds.top + (y - view.top) * view.scale,
        width: w * view.scale,
        height: h * view.scale,
      });
      for (const box of [...layout.stages, ...layout.sides]) stages[box.id] = rect(box.x, box.rim, box.w, box.floor - box.rim);
      if (layout.pump !== null) stages[layout.pump.id] = rect(layout.pump.x - 26, layout.pump.y - 28, 52, 52);
      for (const gap of layout.gaps) gaps[gap.gap] = rect(gap.x, gap.top, gap.w, gap.bottom - gap.top);
      const reach = REACH_px / view.scale;
      for (const { offer, x, y } of scene.handles)
        if (offer.stage === store.getState().view.selected) handles[offer.size] = rect(x - reach, y - reach, 2 * reach, 2 * reach);
      return { stages, gaps, handles };
    },
  };
}
