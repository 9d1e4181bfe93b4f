// The page around the picture: which panel stands where in each mode, and the live region.
import './common/phone.css';
import './common/zoom.css';
import { useEffect, useRef, useState } from 'react';
import type { StoreApi } from 'zustand/vanilla';
import type { Presenter } from '../state/presenter/presenterState';
import type { PageStore } from '../state/common/page';
import { openedOf } from '../state/common/selectors';
import { say } from '../../words/say';
import { BriefBar } from './run/BriefBar';
import { BuildBar } from './build/BuildBar';
import { BuildTabs } from './build/BuildSide';
import { FirstCautions } from './common/Cautions';
import { useDeviceChoices } from './common/device';
import { DragGhost } from './build/DragGhost';
import { Failures } from './common/Failures';
import { GapAtContext, type GapAt } from './build/gapAt';
import { HintCard } from './run/Hint';
import { Inspector } from './run/Inspector';
import { useLookKeys, useSpaceBar, useUndoKeys } from './common/keys';
import { Later } from './common/Later';
import { TintPicker } from './run/TintPicker';
import { WholeLoop } from './run/Look';
import { LoopList } from './build/LoopList';
import { useMedia } from './common/media';
import { MomentProvider } from './common/moment';
import { PageStoreProvider, usePage, usePageStore } from './common/pageStore';
import { Loaded, pieceOf, type ImportFrom } from './common/pieces';
import { PastGuard } from './run/past';
import { QuestionCard } from './run/QuestionCard';
import { ResultCard } from './result/ResultCard';
import { LeaveGuard } from './path/leaving';
import { OldFileNote } from './path/OldFileNote';
import { FileDrop } from './path/OpenFile';
import type { DrawPair } from './presenter/PairStage';
import { usePresenterToggle } from './presenter/presenterToggle';
import { SeasonBar } from './run/SeasonBar';
import { Shelf } from './build/Shelf';

const FILE_SHEET = pieceOf(
  () => import('./path/FileSheet'),
  (module) => module.FileSheet,
);
const LESSONS_SCREEN = pieceOf(
  () => import('./path/LessonsScreen'),
  (module) => module.LessonsScreen,
);
const PAPER_SCREEN = pieceOf(
  () => import('./paper/PaperScreen'),
  (module) => module.PaperScreen,
);
const PRESENTER_SCREEN = pieceOf(
  () => import('./presenter/PresenterScreen'),
  (module) => module.PresenterScreen,
);
/** Once the picture stands, pieces that are not wanted yet are fetched after this time, ms: who goes offline then has them. */
const FETCH_AFTER_ms = 3000;
const NOTHING = {};

/** What presenter mode needs from outside: its store, and who draws its two loops. */
export interface Presenting {
  presenter: Presenter;
  drawPair: DrawPair;
}

/** What the panels need from outside. */
interface Outside {
  store: StoreApi<PageStore>;
  gapAt: GapAt;
  /** called once with the element that the picture is drawn into; it tells whether anything can be drawn */
  onPicture: (place: HTMLElement) => Promise<boolean>;
  presenting: Presenting;
  importFrom: ImportFrom;
}

function Page({ onPicture, presenting, importFrom }: Pick<Outside, 'onPicture' | 'presenting' | 'importFrom'>) {
  const store = usePageStore();
  const toLoop = (): void => store.getState().setScreen('loop');
  const mode = usePage((page) => page.game.mode);
  const lives = mode === 'run' || mode === 'result';
  const screen = usePage((page) => page.screen);
  const file = usePage((page) => page.path.file);
  const hasLesson = usePage((page) => openedOf(page) !== null);
  const failed = usePage((page) => page.problems.length > 0 || page.failure !== null);
  const said = usePage((page) => page.announcement);
  const wide = useMedia('(min-width: 1600px)');
  const asked = usePage((page) => (openedOf(page)?.question ?? null) !== null);
  const cardShown = usePage(({ game }) => game.mode === 'result' && game.card === 'shown');
  const [drawn, setDrawn] = useState(true);
  const picture = useRef<HTMLDivElement>(null);
  useSpaceBar();
  useUndoKeys();
  useLookKeys();
  usePresenterToggle();
  useDeviceChoices();
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    const fetchPieces = (): void => {
      timer = setTimeout(() => {
        for (const piece of [LESSONS_SCREEN, PAPER_SCREEN, PRESENTER_SCREEN, FILE_SHEET]) piece.fetch(importFrom);
      }, FETCH_AFTER_ms);
    };
    if (picture.current !== null) void onPicture(picture.current).then(setDrawn).finally(fetchPieces);
    return () => clearTimeout(timer);
  }, [onPicture, importFrom]);
  return (
    <>
      <div className="page" data-mode={lives ? mode : 'build'} inert={screen !== 'loop'} hidden={screen === 'presenter'}>
        <BriefBar />
        {mode === 'build'
          && (wide ? (
            <aside className="left scroll" aria-label={say('build.shelf')} tabIndex={0}>
              <Shelf />
            </aside>
          ) : (
            <BuildTabs />
          ))}
        {lives && <TintPicker />}
        <main className="picture">
          <div id="world" role="img" aria-label={say('page.world')} ref={picture} />
          {drawn ? <WholeLoop /> : <p className="card no-picture">{say('look.noPicture')}</p>}
          {!hasLesson && <p className="card opening">{say(failed ? 'failure.noLesson' : 'page.loading')}</p>}
          {hasLesson && !asked && !cardShown && <HintCard />}
          {hasLesson && <QuestionCard />}
          {cardShown && !asked && <ResultCard />}
        </main>
        {mode === 'build' && wide && (
          <aside className="right scroll" aria-label={say('build.loop')} tabIndex={0}>
            <LoopList />
          </aside>
        )}
        {lives && (
          <aside className="right scroll" aria-label={say('inspect.region')} tabIndex={0}>
            <Later frames={1}>
              <Inspector />
            </Later>
          </aside>
        )}
        {mode === 'build' && <BuildBar />}
        {lives && <SeasonBar />}
        <footer className="foot">{say('caution.footer')}</footer>
        <DragGhost />
      </div>
      {screen === 'lessons' && <Loaded piece={LESSONS_SCREEN} importFrom={importFrom} given={NOTHING} back={toLoop} />}
      <FirstCautions />
      {screen === 'paper' && <Loaded piece={PAPER_SCREEN} importFrom={importFrom} given={NOTHING} back={toLoop} />}
      {screen === 'presenter' && (
        <Loaded
          piece={PRESENTER_SCREEN}
          importFrom={importFrom}
          given={{ presenter: presenting.presenter, draw: presenting.drawPair }}
          back={toLoop}
        />
      )}
      {file !== null && file.shown && (
        <Loaded piece={FILE_SHEET} importFrom={importFrom} given={{ file }} back={() => store.getState().showFile(false)} />
      )}
      <FileDrop />
      <OldFileNote />
      <Failures />
      <div className="hidden" role="status" aria-live="polite">
        {said}
      </div>
    </>
  );
}

/** All panels of the page. */
export function App({ store, gapAt, onPicture, presenting, importFrom }: Outside) {
  return (
    <PageStoreProvider store={store}>
      <GapAtContext.Provider value={gapAt}>
        <MomentProvider>
          <PastGuard>
            <LeaveGuard>
              <Page onPicture={onPicture} presenting={presenting} importFrom={importFrom} />
            </LeaveGuard>
          </PastGuard>
        </MomentProvider>
      </GapAtContext.Provider>
    </PageStoreProvider>
  );
}
