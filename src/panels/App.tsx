// The page around the picture: which panel stands where in each mode, the live region, and the one key that works everywhere.
import { useEffect, useRef, useState } from 'react';
import type { StoreApi } from 'zustand/vanilla';
import type { PageStore, Speed } from '../store/state';
import { say } from '../words/say';
import { BriefBar } from './BriefBar';
import { BuildBar } from './BuildBar';
import { BuildTabs } from './BuildSide';
import { DragGhost } from './DragGhost';
import { Failures } from './Failures';
import { GapAtContext, type GapAt } from './gapAt';
import { Inspector } from './Inspector';
import { LensPicker } from './LensPicker';
import { LoopList } from './LoopList';
import { useMedia } from './media';
import { MomentProvider } from './moment';
import { PageStoreProvider, usePage, usePageStore } from './pageStore';
import { PastGuard } from './past';
import { ResultCard } from './ResultCard';
import { SeasonBar } from './SeasonBar';
import { Shelf } from './Shelf';

const CONTROLS = 'a, button, input, select, textarea, summary, dialog, [role="tab"], [contenteditable]';

/** Space runs and pauses, as long as nothing that has its own use for Space is in focus. */
function useSpaceBar(): void {
  const store = usePageStore();
  useEffect(() => {
    let last: Speed = 'day1';
    const pressed = (event: KeyboardEvent): void => {
      const { target } = event;
      if (event.key !== ' ' || event.ctrlKey || event.metaKey || event.altKey || (target instanceof Element && target.closest(CONTROLS) !== null)) return;
      const { mode, speed, setSpeed } = store.getState();
      if (mode === 'build') return;
      event.preventDefault();
      if (speed !== 'paused') last = speed;
      setSpeed(speed === 'paused' ? last : 'paused');
    };
    window.addEventListener('keydown', pressed);
    return () => window.removeEventListener('keydown', pressed);
  }, [store]);
}

function Page({ onPicture }: { onPicture: (place: HTMLElement) => void }) {
  const mode = usePage((page) => page.mode);
  const hasLesson = usePage((page) => page.lesson !== null);
  const failed = usePage((page) => page.problems.length > 0 || page.failure !== null);
  const said = usePage((page) => page.announcement);
  const wide = useMedia('(min-width: 1600px)');
  const [looking, setLooking] = useState(false);
  const picture = useRef<HTMLDivElement>(null);
  useSpaceBar();
  useEffect(() => {
    if (picture.current !== null) onPicture(picture.current);
  }, [onPicture]);
  useEffect(() => {
    if (mode !== 'result') setLooking(false);
  }, [mode]);
  return (
    <div className="page" data-mode={mode}>
      <BriefBar resultHidden={looking} onShowResult={() => setLooking(false)} />
      {mode === 'build' && (wide ? <aside className="left scroll" aria-label={say('build.shelf')} tabIndex={0}><Shelf /></aside> : <BuildTabs />)}
      {mode !== 'build' && <LensPicker />}
      <main className="picture">
        <div id="world" role="img" aria-label={say('page.world')} ref={picture} />
        {!hasLesson && <p className="card opening">{say(failed ? 'failure.noLesson' : 'page.loading')}</p>}
        {mode === 'result' && !looking && <ResultCard onClose={() => setLooking(true)} />}
      </main>
      {mode === 'build' && wide && <aside className="right scroll" aria-label={say('build.loop')} tabIndex={0}><LoopList /></aside>}
      {mode !== 'build' && <aside className="right scroll" aria-label={say('inspect.region')} tabIndex={0}><Inspector /></aside>}
      {mode === 'build' ? <BuildBar /> : <SeasonBar />}
      <footer className="foot">{say('caution.footer')}</footer>
      <Failures />
      <DragGhost />
      <div className="hidden" role="status" aria-live="polite">{said}</div>
    </div>
  );
}

/**
 * All panels of the page.
 * @param onPicture called once with the element that the picture is drawn into
 */
export function App({ store, gapAt, onPicture }: { store: StoreApi<PageStore>; gapAt: GapAt; onPicture: (place: HTMLElement) => void }) {
  return (
    <PageStoreProvider store={store}>
      <GapAtContext.Provider value={gapAt}>
        <MomentProvider>
          <PastGuard>
            <Page onPicture={onPicture} />
          </PastGuard>
        </MomentProvider>
      </GapAtContext.Provider>
    </PageStoreProvider>
  );
}
