// The path of lessons: every lesson open, what each teaches, how long it takes, the marks earned on this device, and the bench at its end.
import './lessons.css';
import { useEffect, useRef, type MouseEvent } from 'react';
import type { LessonCard } from '../../state/common/contract';
import { addressOf, farOnPath, isOpen, marksOf, nextOnPath, pathParts, type PathState } from '../../state/path/path';
import { dateText } from '../../../words/language';
import { say } from '../../../words/say';
import { Stamp } from '../common/marks';
import { useMedia } from '../common/media';
import { lessonOf } from '../../state/common/selectors';
import { usePage, usePageStore } from '../common/pageStore';
import { LESSONS_BUTTON } from './lessonsButton';
import { useLeave } from './leaving';
import { MiniLoop } from './MiniLoop';
import { OpenFile } from './OpenFile';

/** A lesson has this many marks. */
const ALL = 3;

/** The whole address, since one of # alone is taken for a link within what is on the page. */
const hrefOf = (card: LessonCard): string => `${location.href.replace(/#.*$/, '')}${addressOf(card)}`;
const timeLeft = (minutes: number): string =>
  minutes < 90 ? say('path.left', { minutes }) : say('path.hoursLeft', { hours: Math.round(minutes / 60) });

function Foot({ card, path }: { card: LessonCard; path: PathState }) {
  const marks = marksOf(path.progress, card.id);
  const played = Object.hasOwn(path.progress, card.id) ? path.progress[card.id].played : null;
  return (
    <span className="lesson-foot">
      {!card.free && played !== null && (
        <>
          <span className="lesson-stamps" aria-hidden="true">
            {Array.from({ length: ALL }, (_, index) => (
              <Stamp key={index} earned={index < marks} />
            ))}
          </span>
          <span className="hidden">{say('path.marks', { n: marks, all: ALL })},</span>
        </>
      )}
      <span className="note">
        {isOpen(path, card)
          ? say('path.open')
          : card.free
            ? say('path.bench')
            : played === null
              ? say('path.fresh')
              : say('path.played', { day: dateText(played) })}
      </span>
      {card.minutes > 0 && <b>{say('path.minutes', { minutes: card.minutes })}</b>}
    </span>
  );
}

/** Follows a link to a lesson only once nothing would be lost by it; one that is opened beside this page loses nothing. */
function askFirst(event: MouseEvent<HTMLAnchorElement>, leave: (go: () => void) => void): void {
  if (event.ctrlKey || event.metaKey || event.shiftKey) return;
  const { href } = event.currentTarget;
  event.preventDefault();
  leave(() => location.assign(href));
}

function Card({ card, path, next }: { card: LessonCard; path: PathState; next: boolean }) {
  const store = usePageStore();
  const leave = useLeave();
  const done = marksOf(path.progress, card.id) > 0;
  const open = isOpen(path, card);
  return (
    <a
      className="lesson-card"
      href={hrefOf(card)}
      data-done={done || undefined}
      data-next={next || undefined}
      data-open={open || undefined}
      aria-current={open ? 'true' : undefined}
      onClick={(event) => {
        // the address stays as it is, so nothing else would bring the loop back
        if (open) store.getState().setScreen('loop');
        else askFirst(event, leave);
      }}
    >
      <span className="lesson-head">
        <span className="lesson-number" aria-hidden="true">
          {Number(card.number)}
        </span>
        <span className="hidden">{say('path.card', { number: Number(card.number) })}</span>
        <b className="lesson-title">{card.title}</b>
      </span>
      <MiniLoop loop={card.loop} />
      {card.teaches !== '' && <span className="lesson-teaches">{card.teaches}</span>}
      <Foot card={card} path={path} />
    </a>
  );
}

/** The cards in rows that turn back at each end, so that every lesson stands beside or below the one before it. */
function Path({ path, columns, next }: { path: PathState; columns: number; next: LessonCard | null }) {
  const { lessons, benches } = pathParts(path.cards);
  const all = [...lessons, ...benches];
  return (
    <ol className="lesson-path" aria-label={say('path.list')} style={{ gridTemplateColumns: `repeat(${columns}, minmax(0, 1fr))` }}>
      {all.map((card, index) => {
        const row = Math.floor(index / columns);
        const step = index % columns;
        const from = index === 0 ? 'source' : step === 0 ? 'above' : row % 2 === 0 ? 'left' : 'right';
        const flows = index > 0 && marksOf(path.progress, all[index - 1].id) > 0;
        return (
          <li
            key={card.file}
            data-from={from}
            data-flows={flows || undefined}
            style={{ gridRow: row + 1, gridColumn: row % 2 === 0 ? step + 1 : columns - step }}
          >
            <Card card={card} path={path} next={card === next} />
          </li>
        );
      })}
    </ol>
  );
}

function Next({ path, next }: { path: PathState; next: LessonCard }) {
  const store = usePageStore();
  const leave = useLeave();
  const number = Number(next.number);
  const open = isOpen(path, next);
  const words = next.free
    ? say('path.benchGo')
    : open
      ? say('path.nextOn', { number })
      : Object.hasOwn(path.progress, next.id)
        ? say('path.nextAgain', { number })
        : say('path.nextGo', { number });
  return (
    <section className="card lesson-next" aria-labelledby="lesson-next">
      <div>
        <h2 id="lesson-next">{say('path.next', { title: next.title })}</h2>
        {next.aim !== '' && <p>{next.aim}</p>}
        <p className="note">{say('path.advice')}</p>
      </div>
      <a
        className="btn plan"
        href={hrefOf(next)}
        onClick={(event) => {
          if (open) store.getState().setScreen('loop');
          else askFirst(event, leave);
        }}
      >
        {words}
      </a>
    </section>
  );
}

function Own() {
  const store = usePageStore();
  const file = usePage((page) => page.path.file);
  return (
    <section className="lesson-own" aria-labelledby="lesson-own">
      <div>
        <h2 id="lesson-own">{say('path.own')}</h2>
        <p>{say('path.ownHow')}</p>
      </div>
      <div className="row">
        <OpenFile />
        {file !== null && !file.shown && (
          <button type="button" className="btn" onClick={() => store.getState().showFile(true)}>
            {say('file.button')}
          </button>
        )}
      </div>
    </section>
  );
}

export function LessonsScreen() {
  const store = usePageStore();
  const path = usePage((page) => page.path);
  const [wide, middle, narrow] = [useMedia('(min-width: 1600px)'), useMedia('(min-width: 1200px)'), useMedia('(min-width: 760px)')];
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    heading.current?.focus();
    return () => document.getElementById(LESSONS_BUTTON)?.focus();
  }, []);
  useEffect(() => {
    const pressed = (event: KeyboardEvent): void => {
      if (
        event.key === 'Escape'
        && !event.defaultPrevented
        && document.querySelector('dialog[open]') === null
        && lessonOf(store.getState()) !== null
      )
        store.getState().setScreen('loop');
    };
    window.addEventListener('keydown', pressed);
    return () => window.removeEventListener('keydown', pressed);
  }, [store]);
  const { done, of, minutesLeft } = farOnPath(path);
  const next = nextOnPath(path, ALL);
  return (
    <div className="lessons">
      <header className="lessons-top">
        <h1 ref={heading} tabIndex={-1}>
          {say('path.title')}
        </h1>
        {of > 0 && (
          <div className="lessons-far">
            <span>{say('path.done', { done, of })}</span>
            <span className="bar" aria-hidden="true">
              <i style={{ width: `${(100 * done) / of}%` }} />
            </span>
            {minutesLeft > 0 && <span className="note">{timeLeft(minutesLeft)}</span>}
          </div>
        )}
        <button type="button" className="btn" onClick={() => store.getState().setScreen('loop')}>
          {say('path.back')}
        </button>
      </header>
      <main className="lessons-body scroll" tabIndex={0} aria-label={say('path.title')}>
        {next !== null && <Next path={path} next={next} />}
        {path.cards.length === 0 ? (
          <p>{say('path.noLessons')}</p>
        ) : (
          <Path path={path} columns={wide ? 5 : middle ? 4 : narrow ? 3 : 2} next={next} />
        )}
        <Own />
        <p className="note">
          {say('path.kept')} {say('caution.footer')}
        </p>
      </main>
    </div>
  );
}
