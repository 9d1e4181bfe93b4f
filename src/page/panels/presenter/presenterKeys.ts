// The keys of presenter mode: those of a presenter remote, digits for hands, Space and arrows for the clock.
import { useEffect } from 'react';
import type { PresenterStore } from '../../state/presenter/presenterState';
import { usePresenter } from './presenterStore';

/** What has a use of its own for digits and arrows. */
const TYPING = 'input, select, textarea';
const PRESSED_BY_SPACE = `${TYPING}, button, a, summary`;

/** What a key does in front of a class; null for a key that does nothing here. */
function deedOf(key: string, state: PresenterStore): (() => void) | null {
  if (key === 'PageDown') return () => void state.forth();
  if (key === 'PageUp') return () => state.back();
  if (state.shown === null) return null;
  if (key === 'ArrowDown') return () => state.turnTint(1);
  if (key === 'ArrowUp') return () => state.turnTint(-1);
  if (key === 'ArrowRight') return () => state.nudge(1);
  if (key === 'ArrowLeft') return () => state.nudge(-1);
  return null;
}

/** The choice that a digit key counts for, from 0; −1 for any other key. By the key's place, so that Shift may take a hand away. */
function choiceOf(event: KeyboardEvent): number {
  const digit = /^(?:Digit|Numpad)([1-9])$/.exec(event.code);
  return digit === null ? -1 : Number(digit[1]) - 1;
}

/** @param leave goes back to the loop */
export function usePresenterKeys(leave: () => void): void {
  const { store } = usePresenter();
  useEffect(() => {
    const pressed = (event: KeyboardEvent): void => {
      if (event.ctrlKey || event.metaKey || event.altKey || event.defaultPrevented) return;
      const { target } = event;
      const inside = (what: string): boolean => target instanceof Element && target.closest(what) !== null;
      const state = store.getState();
      const counting = state.shown?.steps[state.step].kind === 'votes';
      let deed: (() => void) | null = null;
      if (event.key === 'Escape') deed = leave;
      else if (event.key === ' ' && state.shown !== null && !inside(PRESSED_BY_SPACE))
        deed = () => state.play(!state.playing && state.toward === null);
      else if (counting && choiceOf(event) >= 0 && !inside(TYPING)) deed = () => state.vote(choiceOf(event), event.shiftKey ? -1 : 1);
      else if (event.key.startsWith('Page') || !inside(TYPING)) deed = deedOf(event.key, state);
      if (deed === null) return;
      event.preventDefault();
      deed();
    };
    window.addEventListener('keydown', pressed);
    return () => window.removeEventListener('keydown', pressed);
  }, [store, leave]);
}
