// The page around the picture: which panel stands where in each mode, and the live region.
import './phone.css';
import './zoom.css';
import { lazy, Suspense, useEffect, useRef, useState } from 'react';
import type { StoreApi } from 'zustand/vanilla';
import type { Presenter } from '../store/presenterState';
import type { PageStore } from '../store/state';
import { say } from '../words/say';
import { BriefBar } from './BriefBar';
import { BuildBar } from './BuildBar';
import { BuildTabs } from './BuildSide';
import { FirstCautions } from './Cautions';
import { useDeviceChoices } from './device';
import { DragGhost } from './DragGhost';
import { Failures } from './Failures';
import { GapAtContext, type GapAt } from './gapAt';
import { HintCard } from './Hint';
import { Inspector } from './Inspector';
import { useLookKeys, useSpaceBar, useUndoKeys } from './keys';
import { Later } from './Later';
import { LensPicker } from './LensPicker';
import { WholeLoop } from './Look';
import { LoopList } from './LoopList';
import { useMedia } from './media';
import { MomentProvider } from './moment';
import { PageStoreProvider, usePage } from './pageStore';
import { PastGuard } from './past';
import { QuestionCard } from './QuestionCard';
import { ResultCard } from './ResultCard';
import { LeaveGuard } from './path/leaving';
import { FileDrop } from './path/OpenFile';
import type { DrawPair } from './presenter/PairStage';
import { usePresenterToggle } from './presenter/presenterToggle';
import { SeasonBar } from './SeasonBar';
import { Shelf } from './Shelf';

const FileSheet = lazy(async () => ({ default: (await import('./path/FileSheet')).FileSheet }));
const LessonsScreen = lazy(async () => ({ default: (await import('./path/LessonsScreen')).LessonsScreen }));
const PaperScreen = lazy(async () => ({ default: (await import('./paper/PaperScreen')).PaperScreen }));
const PresenterScreen = lazy(async () => ({ default: (await import('./presenter/PresenterScreen')).PresenterScreen }));

type OnPicture = (place: HTMLElement) => Promise<boolean>;

/** What presenter mode needs from outside: its store, and who draws its two loops. */
export interface Presenting { presenter: Presenter; drawPair: DrawPair }

function Page({ onPicture, presenting }: { onPicture: OnPicture; presenting: Presenting }) {
  const mode = usePage((page) => page.mode);
  const screen = usePage((page) => page.screen);
  const file = usePage((page) => page.path.file);
  const hasLesson = usePage((page) => page.lesson !== null);
  const failed = usePage((page) => page.problems.length > 0 || page.failure !== null);
  const said = usePage((page) => page.announcement);
  const wide = useMedia('(min-width: 1600px)');
  const asked = usePage((page) => page.question !== null);
  const [looking, setLooking] = useState(false);
  const [drawn, setDrawn] = useState(true);
  const picture = useRef<HTMLDivElement>(null);
  useSpaceBar();
  useUndoKeys();
  useLookKeys();
  usePresenterToggle();
  useDeviceChoices();
  // every number is shown anew in other units
  usePage((page) => page.units);
  useEffect(() => {
    if (picture.current !== null) void onPicture(picture.current).then(setDrawn);
  }, [onPicture]);
  useEffect(() => {
    if (mode !== 'result') setLooking(false);
  }, [mode]);
  return (
    <>
      <div className="page" data-mode={mode} inert={screen !== 'loop'} hidden={screen === 'presenter'}>
        <BriefBar resultHidden={looking} onShowResult={() => setLooking(false)} />
        {mode === 'build' && (wide ? <aside className="left scroll" aria-label={say('build.shelf')} tabIndex={0}><Shelf /></aside> : <BuildTabs />)}
        {mode !== 'build' && <LensPicker />}
        <main className="picture">
          <div id="world" role="img" aria-label={say('page.world')} ref={picture} />
          {drawn ? <WholeLoop /> : <p className="card no-picture">{say('look.noPicture')}</p>}
          {!hasLesson && <p className="card opening">{say(failed ? 'failure.noLesson' : 'page.loading')}</p>}
          {hasLesson && !asked && !(mode === 'result' && !looking) && <HintCard />}
          <QuestionCard />
          {mode === 'result' && !looking && !asked && <ResultCard onClose={() => setLooking(true)} />}
        </main>
        {mode === 'build' && wide && <aside className="right scroll" aria-label={say('build.loop')} tabIndex={0}><LoopList /></aside>}
        {mode !== 'build' && <aside className="right scroll" aria-label={say('inspect.region')} tabIndex={0}><Later frames={1}><Inspector /></Later></aside>}
        {mode === 'build' ? <BuildBar /> : <SeasonBar />}
        <footer className="foot">{say('caution.footer')}</footer>
        <DragGhost />
      </div>
      {screen === 'lessons' && <Suspense fallback={null}><LessonsScreen /></Suspense>}
      <FirstCautions />
      {screen === 'paper' && <Suspense fallback={null}><PaperScreen /></Suspense>}
      {screen === 'presenter' && <Suspense fallback={null}><PresenterScreen presenter={presenting.presenter} draw={presenting.drawPair} /></Suspense>}
      {file !== null && file.shown && <Suspense fallback={null}><FileSheet file={file} /></Suspense>}
      <FileDrop />
      <Failures />
      <div className="hidden" role="status" aria-live="polite">{said}</div>
    </>
  );
}

/**
 * All panels of the page.
 * @param onPicture called once with the element that the picture is drawn into; it tells whether anything can be drawn
 */
export function App({ store, gapAt, onPicture, presenting }: { store: StoreApi<PageStore>; gapAt: GapAt; onPicture: OnPicture; presenting: Presenting }) {
  return (
    <PageStoreProvider store={store}>
      <GapAtContext.Provider value={gapAt}>
        <MomentProvider>
          <PastGuard>
            <LeaveGuard>
              <Page onPicture={onPicture} presenting={presenting} />
            </LeaveGuard>
          </PastGuard>
        </MomentProvider>
      </GapAtContext.Provider>
    </PageStoreProvider>
  );
}
