// Keeps predictions on this device as they are settled, and hands the page those of earlier seasons.
import type { StoreApi } from 'zustand/vanilla';
import { keptText, type Device } from '../common/device';
import type { PageStore } from '../common/page';
import { openedOf } from '../common/selectors';
import { answersIn, FORMAT, KEPT_AS, withAnswers } from './keptAnswers';

/**
 * Takes up what this device has kept, and keeps what is settled from now on. What the page shows as earlier changes when the next season
 * begins.
 */
export function watchAnswers(store: StoreApi<PageStore>, device: Device): void {
  store.setState({ earlier: answersIn(device.read(KEPT_AS)) });
  store.subscribe((page, pageBefore) => {
    const [now, before] = [openedOf(page), openedOf(pageBefore)];
    if (now === null || now.answers === before?.answers) return;
    if (now.answers.length === 0) {
      store.setState({ earlier: answersIn(device.read(KEPT_AS)) });
      return;
    }
    if (now.lesson !== before?.lesson) return;
    const kept = answersIn(device.read(KEPT_AS));
    const next = withAnswers(kept, now.lesson.id, now.answers);
    if (next !== kept) device.write(KEPT_AS, keptText(FORMAT, next));
  });
}
