// The one key into presenter mode and out of it.
import { useEffect } from 'react';
import type { PageStore } from '../../state/common/page';
import { usePageStore } from '../common/pageStore';

/** Presents, or goes back to the loop; the season at hand pauses meanwhile. */
export function togglePresenter({ screen, setScreen }: PageStore): void {
  setScreen(screen === 'presenter' ? 'loop' : 'presenter');
}

/**
 * F2 opens presenter mode from anywhere on the page and leaves it again, unless something waits for an answer; the season at hand pauses
 * meanwhile.
 */
export function usePresenterToggle(): void {
  const page = usePageStore();
  useEffect(() => {
    const pressed = (event: KeyboardEvent): void => {
      if (event.key !== 'F2' || event.ctrlKey || event.metaKey || event.altKey || document.querySelector('dialog[open]') !== null) return;
      event.preventDefault();
      togglePresenter(page.getState());
    };
    window.addEventListener('keydown', pressed);
    return () => window.removeEventListener('keydown', pressed);
  }, [page]);
}
