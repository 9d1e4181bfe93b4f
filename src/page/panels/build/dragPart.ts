// Drags a part out of the shelf with the Pointer Events of mouse, pen or touch; the drag itself lives in the store.
import type { PointerEvent as ReactPointerEvent } from 'react';
import { useCallback } from 'react';
import { useGapAt } from './gapAt';
import { usePageStore } from '../common/pageStore';

/** A pointer must move this far before it drags, CSS pixels; until then it is a press. */
const SLACK_PX = 4;

/** Handler for pointerdown on a part. */
export function useDragPart(): (event: ReactPointerEvent<HTMLElement>, stageId: string) => void {
  const store = usePageStore();
  const gapAt = useGapAt();
  return useCallback(
    (event, stageId) => {
      if (event.button !== 0 || !event.isPrimary) return;
      const { pointerId, clientX: startX, clientY: startY } = event;
      const handle = event.currentTarget;
      handle.setPointerCapture(pointerId);
      let dragging = false;

      const moved = (next: PointerEvent): void => {
        if (next.pointerId !== pointerId) return;
        const { clientX, clientY } = next;
        if (!dragging) {
          if (Math.hypot(clientX - startX, clientY - startY) < SLACK_PX) return;
          dragging = true;
          store.getState().dragStart(stageId, clientX, clientY);
        }
        store.getState().dragMove(clientX, clientY, gapAt(clientX, clientY));
      };
      const finish = (drop: boolean): void => {
        window.removeEventListener('pointermove', moved);
        window.removeEventListener('pointerup', released);
        window.removeEventListener('pointercancel', cancelled);
        window.removeEventListener('keydown', escaped);
        if (handle.hasPointerCapture(pointerId)) handle.releasePointerCapture(pointerId);
        if (dragging) store.getState().dragEnd(drop);
      };
      const released = (next: PointerEvent): void => {
        if (next.pointerId !== pointerId) return;
        moved(next);
        finish(true);
      };
      const cancelled = (next: PointerEvent): void => {
        if (next.pointerId === pointerId) finish(false);
      };
      const escaped = (next: KeyboardEvent): void => {
        if (next.key === 'Escape') finish(false);
      };
      window.addEventListener('pointermove', moved);
      window.addEventListener('pointerup', released);
      window.addEventListener('pointercancel', cancelled);
      window.addEventListener('keydown', escaped);
    },
    [store, gapAt],
  );
}
