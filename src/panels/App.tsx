// The page around the picture: which panel stands where in each mode, and the live region.
import './phone.css';
import { useEffect, useRef, useState } from 'react';
import type { StoreApi } from 'zustand/vanilla';
import type { PageStore } from '../store/state';
import { say } from '../words/say';
import { BriefBar } from './BriefBar';
import { BuildBar } from './BuildBar';
import { BuildTabs } from './BuildSide';
import { useDeviceChoices } from './device';
import { DragGhost } from './DragGhost';
import { Failures } from './Failures';
import { GapAtContext, type GapAt } from './gapAt';
import { HintCard } from './Hint';
import { Inspector } from './Inspector';
import { useSpaceBar, useUndoKeys } from './keys';
import { LensPicker } from './LensPicker';
import { LoopList } from './LoopList';
import { useMedia } from './media';
import { MomentProvider } from './moment';
import { PageStoreProvider, usePage } from './pageStore';
import { PastGuard } from './past';
import { ResultCard } from './ResultCard';
import { SeasonBar } from './SeasonBar';
import { Shelf } from './Shelf';

function Page({ onPicture }: { onPicture: (place: HTMLElement) => void }) {
  const mode = usePage((page) => page.mode);
  const hasLesson = usePage((page) => page.lesson !== null);
  const failed = usePage((page) => page.problems.length > 0 || page.failure !== null);
  const said = usePage((page) => page.announcement);
  const wide = useMedia('(min-width: 1600px)');
  const [looking, setLooking] = useState(false);
  const picture = useRef<HTMLDivElement>(null);
  useSpaceBar();
  useUndoKeys();
  useDeviceChoices();
  // every number is shown anew in other units
  usePage((page) => page.units);
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
        {hasLesson && !(mode === 'result' && !looking) && <HintCard />}
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
