// Pointers on the picture: a tap selects a stage, a double tap looks at it from close by or goes back, a press that moves lifts a free
// stage or pulls a handle, and a part in the hand follows the pointer anywhere on the page.
import { isFree } from '../../state/build/planEdits';
import { buildOf, dragOf } from '../../state/common/selectors';
import type { Handle } from './handles';
import type { PageSource } from '../kit/terms';

/** A press that moves farther than this is a drag, px. */
const SLACK_px = 8;
/** Two taps on one thing within this time are one double tap, ms. */
const DOUBLE_ms = 350;

export interface Eyes {
  stageAt(clientX: number, clientY: number): string | null;
  gapAt(clientX: number, clientY: number): number | null;
  /** a handle of the selected stage */
  handleAt(clientX: number, clientY: number): Handle | null;
  /** Shows a handle pulled so far, or let go. @returns the size that gives */
  pull(handle: Handle | null, dx_px: number, dy_px: number): number | null;
}

/**
 * Listens on the canvas and the window.
 * @returns a function that stops listening
 */
export function followPointer(canvas: HTMLCanvasElement, store: PageSource, eyes: Eyes): () => void {
  let tapped: { id: string | null; at: number } = { id: null, at: -Infinity };
  let held: { handle: Handle; x: number; y: number; pointer: number } | null = null;
  let pressed: { id: string | null; x: number; y: number; pointer: number } | null = null;

  const letGo = (): void => {
    held = null;
    eyes.pull(null, 0, 0);
  };
  const down = (event: PointerEvent): void => {
    if (!event.isPrimary || event.button !== 0 || dragOf(store.getState()) !== null) return;
    const handle = eyes.handleAt(event.clientX, event.clientY);
    if (handle !== null) {
      held = { handle, x: event.clientX, y: event.clientY, pointer: event.pointerId };
      eyes.pull(handle, 0, 0);
      return;
    }
    pressed = { id: eyes.stageAt(event.clientX, event.clientY), x: event.clientX, y: event.clientY, pointer: event.pointerId };
  };
  const move = (event: PointerEvent): void => {
    const page = store.getState();
    const { dragMove, dragStart } = page;
    const build = buildOf(page);
    if (build !== null && build.drag !== null) {
      dragMove(event.clientX, event.clientY, eyes.gapAt(event.clientX, event.clientY));
      return;
    }
    if (held !== null) {
      if (held.pointer === event.pointerId) eyes.pull(held.handle, event.clientX - held.x, event.clientY - held.y);
      return;
    }
    if (pressed === null || pressed.pointer !== event.pointerId) {
      if (event.target === canvas) canvas.style.cursor = cursorAt(eyes, event);
      return;
    }
    if (pressed.id === null || build === null || !isFree(build.lesson, pressed.id)) return;
    if (Math.hypot(event.clientX - pressed.x, event.clientY - pressed.y) < SLACK_px) return;
    dragStart(pressed.id, event.clientX, event.clientY);
    pressed = null;
  };
  const up = (event: PointerEvent): void => {
    const page = store.getState();
    const {
      dragMove,
      dragEnd,
      select,
      lookCloser,
      view: { selected, closer },
    } = page;
    if (held !== null) {
      if (held.pointer !== event.pointerId) return;
      const { offer } = held.handle;
      const value = eyes.pull(held.handle, event.clientX - held.x, event.clientY - held.y);
      const changed = value !== null && value !== held.handle.value;
      letGo();
      if (changed) store.getState().setSize(offer.stage, offer.size, value);
    } else if (dragOf(page) !== null) {
      const gap = eyes.gapAt(event.clientX, event.clientY);
      dragMove(event.clientX, event.clientY, gap);
      dragEnd(gap !== null || !within(canvas, event));
    } else if (
      pressed !== null
      && pressed.pointer === event.pointerId
      && event.target === canvas
      && Math.hypot(event.clientX - pressed.x, event.clientY - pressed.y) < SLACK_px
    ) {
      select(pressed.id ?? (closer ? selected : null));
      const double = event.timeStamp - tapped.at < DOUBLE_ms && (closer || tapped.id === pressed.id);
      if (double && (closer || pressed.id !== null)) lookCloser(!closer);
      tapped = { id: pressed.id, at: double ? -Infinity : event.timeStamp };
    }
    pressed = null;
  };
  const cancel = (): void => {
    pressed = null;
    if (held !== null) letGo();
    const page = store.getState();
    if (dragOf(page) !== null) page.dragEnd(false);
  };
  const key = (event: KeyboardEvent): void => {
    if (event.key === 'Escape') cancel();
  };

  canvas.style.touchAction = 'none';
  canvas.addEventListener('pointerdown', down);
  window.addEventListener('pointermove', move);
  window.addEventListener('pointerup', up);
  window.addEventListener('pointercancel', cancel);
  window.addEventListener('keydown', key);
  return () => {
    canvas.removeEventListener('pointerdown', down);
    window.removeEventListener('pointermove', move);
    window.removeEventListener('pointerup', up);
    window.removeEventListener('pointercancel', cancel);
    window.removeEventListener('keydown', key);
  };
}

function cursorAt(eyes: Eyes, event: PointerEvent): string {
  const handle = eyes.handleAt(event.clientX, event.clientY);
  if (handle !== null) return handle.pull === 'along' ? 'ew-resize' : 'ns-resize';
  return eyes.stageAt(event.clientX, event.clientY) === null ? '' : 'pointer';
}

function within(canvas: HTMLCanvasElement, event: PointerEvent): boolean {
  const bounds = canvas.getBoundingClientRect();
  return event.clientX >= bounds.left && event.clientX <= bounds.right && event.clientY >= bounds.top && event.clientY <= bounds.bottom;
}
