// The screen of sheets: what to print and on which paper, a preview, and the browser's own print.
import './paper.css';
import './sheets.css';
import { useEffect, useRef, useState, type RefObject } from 'react';
import { lessonOf, livedOf } from '../../state/common/selectors';
import { PAPER_SIZES, VERSIONS, type SheetKind } from '../../state/paper/sheets';
import { CLASS_MINUTES } from '../../state/paper/lessonSteps';
import { say } from '../../../words/say';
import { usePage, usePageStore } from '../common/pageStore';
import { versionLetter } from './cards';
import { KeySheet } from './KeySheet';
import { LearnerSheet } from './LearnerSheet';
import { LessonPlanSheet } from './LessonPlanSheet';
import { OnePage } from './OnePage';
import { SeasonSheet } from './SeasonSheet';

const SHEETS: readonly SheetKind[] = ['learner', 'key', 'lesson', 'season'];
/** Width of each paper in CSS pixels: 210 mm and 8.5 in. */
const PAPER_WIDTH = { A4: 793.7, Letter: 816 } as const;

/** How small a sheet may be set to save a page; a key has many pages anyway. */
const LEAST: Readonly<Record<SheetKind, number>> = { learner: 0.82, key: 1, lesson: 0.76, season: 0.8 };

/** The sheet that is chosen, or why there is none. */
function Chosen() {
  const store = usePageStore();
  const { sheet, version, key } = usePage((page) => page.paper);
  const lesson = usePage(lessonOf);
  const lives = usePage((page) => livedOf(page) !== null);
  useEffect(() => {
    if (sheet === 'key') void store.getState().workOutKey();
  }, [store, sheet, lesson]);
  if (lesson === null) return <p className="sheet-none">{say('paper.noLesson')}</p>;
  switch (sheet) {
    case 'learner':
      return <LearnerSheet lesson={lesson} version={version} />;
    case 'key':
      return key === null || key.lesson !== lesson ? (
        <p className="sheet-none" role="status">
          {say('paper.working', { n: lesson.mistakes.length })}
        </p>
      ) : (
        <KeySheet lesson={lesson} found={key} version={version} />
      );
    case 'lesson':
      return <LessonPlanSheet lesson={lesson} />;
    case 'season':
      return lives ? <SeasonSheet /> : <p className="sheet-none">{say('paper.noSeason')}</p>;
  }
}

/** How much smaller the paper has to be shown to fit beside the choices. */
function useFit(place: RefObject<HTMLElement | null>, width: number): number {
  const [room, setRoom] = useState(width);
  useEffect(() => {
    if (place.current === null) return;
    const watch = new ResizeObserver(([entry]) => setRoom(entry.contentRect.width));
    watch.observe(place.current);
    return () => watch.disconnect();
  }, [place]);
  return Math.min(1, Math.max(0.3, room / width));
}

function Choices() {
  const { sheet, size, version } = usePage((page) => page.paper);
  const choose = usePage((page) => page.choosePaper);
  return (
    <div className="paper-choices">
      <fieldset>
        <legend>{say('paper.sheet')}</legend>
        {SHEETS.map((one) => (
          <label key={one} className="paper-sheet" data-chosen={one === sheet || undefined}>
            <input type="radio" name="sheet" checked={one === sheet} onChange={() => choose({ sheet: one })} />
            <span>
              <b>{say(`paper.sheet.${one}`)}</b>
              <span className="note">{say(`paper.sheet.${one}For`, { minutes: CLASS_MINUTES })}</span>
            </span>
          </label>
        ))}
      </fieldset>
      <fieldset className="paper-row">
        <legend>{say('paper.size')}</legend>
        {PAPER_SIZES.map((one) => (
          <label key={one} className="choices">
            <input type="radio" name="size" checked={one === size} onChange={() => choose({ size: one })} />
            {say(`paper.size.${one}`)}
          </label>
        ))}
      </fieldset>
      {(sheet === 'learner' || sheet === 'key') && (
        <fieldset className="paper-row">
          <legend>{say('paper.version')}</legend>
          {Array.from({ length: VERSIONS }, (_, one) => (
            <label key={one} className="choices">
              <input type="radio" name="version" checked={one === version} onChange={() => choose({ version: one })} />
              {versionLetter(one)}
            </label>
          ))}
          <p className="note">{say('paper.versionHelp')}</p>
        </fieldset>
      )}
    </div>
  );
}

/** Size and foot of the printed pages; the foot holds the page's number and who decides. */
function pageRules(size: keyof typeof PAPER_WIDTH, foot: string): string {
  const text = JSON.stringify(foot);
  return `@page { size: ${size === 'A4' ? 'A4' : 'letter'}; margin: 13mm 14mm 15mm; @bottom-left { content: ${text}; font: 8pt var(--font, sans-serif); color: #4A5760; } @bottom-right { content: counter(page) " / " counter(pages); font: 8pt var(--font, sans-serif); color: #4A5760; } }`;
}

export function PaperScreen() {
  const store = usePageStore();
  const { sheet, size, key } = usePage((page) => page.paper);
  const lesson = usePage(lessonOf);
  const lives = usePage((page) => livedOf(page) !== null);
  const ready = lesson !== null && (sheet !== 'key' || key?.lesson === lesson) && (sheet !== 'season' || lives);
  const heading = useRef<HTMLHeadingElement>(null);
  const room = useRef<HTMLDivElement>(null);
  const fit = useFit(room, PAPER_WIDTH[size]);
  useEffect(() => heading.current?.focus(), []);
  useEffect(() => {
    const pressed = (event: KeyboardEvent): void => {
      if (event.key === 'Escape' && !event.defaultPrevented) store.getState().setScreen('loop');
    };
    window.addEventListener('keydown', pressed);
    return () => window.removeEventListener('keydown', pressed);
  }, [store]);
  return (
    <div className="paper">
      <style>
        {pageRules(
          size,
          say('paper.foot', {
            title: lesson?.title ?? say('page.title'),
            sheet: say(`paper.sheet.${sheet}`),
            caution: say('caution.footer'),
          }),
        )}
      </style>
      <header className="paper-top">
        <h1 ref={heading} tabIndex={-1}>
          {say('paper.title')}
        </h1>
        <button type="button" className="btn plan" disabled={!ready} onClick={() => window.print()}>
          {say('paper.print')}
        </button>
        <button type="button" className="btn" onClick={() => store.getState().setScreen('loop')}>
          {say('paper.close')}
        </button>
      </header>
      <section className="paper-side scroll" aria-label={say('paper.region')} tabIndex={0}>
        <Choices />
      </section>
      <main className="paper-preview scroll" aria-label={say('paper.preview')} tabIndex={0}>
        <div ref={room} className="paper-room">
          <article className="sheet" data-sheet={sheet} data-size={size} style={{ zoom: fit }}>
            <OnePage size={size} least={LEAST[sheet]}>
              <Chosen />
            </OnePage>
          </article>
        </div>
      </main>
    </div>
  );
}
