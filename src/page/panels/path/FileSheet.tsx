// The check of an author's own file: what is wrong where, and how its reference, its mistakes and an idle player fare.
import './sheet.css';
import { Fragment, useEffect, useRef } from 'react';
import type { Lesson, Played } from '../../state/common/contract';
import { factsOf } from '../../state/common/selectors';
import type { FileCheck } from '../../state/path/path';
import { say } from '../../../words/say';
import { expectedWords, foundWords, whereWords } from '../../../words/problemWords';
import { whole } from '../../../words/units';
import { SignShape } from '../common/icons';
import { MarkShape } from '../common/marks';
import { usePage, usePageStore } from '../common/pageStore';
import { askedWords, mustOf, shownWords, titleOf } from './checkWords';

/** A path may be broken where one key ends and the next begins. */
const breakable = (path: string): string => path.replace(/([.[])/g, '\u200b$1');

function Problems({ problems }: { problems: FileCheck['problems'] }) {
  return (
    <div role="alert">
      <p className="file-verdict">
        <MarkShape mark="act" named={false} />
        {say('file.bad')}
      </p>
      <p>{say('file.badHelp')}</p>
      <table className="file-problems">
        <thead>
          <tr>
            <th scope="col">{say('file.where')}</th>
            <th scope="col">{say('file.got')}</th>
            <th scope="col">{say('file.expected')}</th>
          </tr>
        </thead>
        <tbody>
          {problems.map((problem, index) => (
            <tr key={index}>
              <th scope="row">
                {problem.path !== '' && problem.line !== undefined && (
                  <span className="line">{say('file.line', { line: problem.line })}</span>
                )}
                <span className={problem.path === '' || problem.line === undefined ? undefined : 'note'}>
                  {breakable(whereWords(problem))}
                </span>
              </th>
              <td>{foundWords(problem.got)}</td>
              <td>{expectedWords(problem.expected)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function Details({ one, lesson }: { one: Played; lesson: Lesson }) {
  const facts = usePage(factsOf);
  const lines = [
    ...one.shown.map((shown) => ({ passes: shown.holds, words: shownWords(shown, lesson, facts) })),
    ...one.asked.map((asked) => ({ passes: asked.passes, words: askedWords(asked, lesson, facts) })),
  ];
  if (lines.length === 0) return null;
  return (
    <tr className="detail">
      <td colSpan={5}>
        <ul className="file-details">
          {lines.map(({ passes, words }, index) => (
            <li key={index}>
              <MarkShape mark={passes ? 'fine' : 'act'} />
              <span>{words}</span>
            </li>
          ))}
        </ul>
      </td>
    </tr>
  );
}

function Seasons({ played, lesson }: { played: Played[]; lesson: Lesson }) {
  const failing = played.filter((one) => !one.passes).length;
  return (
    <>
      <p className="file-verdict">
        <MarkShape mark={failing === 0 ? 'fine' : 'act'} named={false} />
        {failing === 0 ? say('file.passes') : say('file.fails', { n: failing, of: played.length })}
      </p>
      <table>
        <thead>
          <tr>
            <th scope="col">{say('file.build')}</th>
            <th scope="col" className="num">
              {say('file.fish')}
            </th>
            <th scope="col" className="num">
              {say('file.harvest')}
            </th>
            <th scope="col" className="num">
              {say('file.marks')}
            </th>
            <th scope="col">{say('file.result')}</th>
          </tr>
        </thead>
        <tbody>
          {played.map((one) => (
            <Fragment key={one.key}>
              <tr>
                <th scope="row">
                  {titleOf(one)}
                  {one.role === 'mistake' && <span className="note">{one.key}</span>}
                </th>
                <td className="num">{whole(one.fishHealth)}</td>
                <td className="num">{whole(one.harvest)}</td>
                <td className="num">{one.marks}</td>
                <td>
                  <MarkShape mark={one.passes ? 'fine' : 'act'} named={false} /> {say(one.passes ? 'file.pass' : 'file.fail')}
                  {!one.passes && <span className="note">{mustOf(one)}</span>}
                </td>
              </tr>
              <Details one={one} lesson={lesson} />
            </Fragment>
          ))}
        </tbody>
      </table>
    </>
  );
}

function Sound({ file, lesson }: { file: FileCheck; lesson: Lesson }) {
  const store = usePageStore();
  return (
    <>
      <p>{say('file.good')}</p>
      <div className="row">
        <button
          type="button"
          className="btn plan"
          aria-disabled={file.playing}
          onClick={() => {
            if (!file.playing) void store.getState().playFile();
          }}
        >
          {say(file.played === null ? 'file.play' : 'file.playAgain')}
        </button>
        <span role="status">{file.playing && say('file.playing', { n: lesson.mistakes.length + 2 })}</span>
      </div>
      {file.failed !== null && (
        <p role="alert" className="file-verdict">
          <MarkShape mark="act" />
          {file.failed}
        </p>
      )}
      {file.played !== null && <Seasons played={file.played} lesson={lesson} />}
    </>
  );
}

export function FileSheet({ file }: { file: FileCheck }) {
  const store = usePageStore();
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    const before = document.activeElement;
    heading.current?.focus();
    return () => {
      if (before instanceof HTMLElement && before.isConnected) before.focus();
    };
  }, []);
  const close = (): void => store.getState().showFile(false);
  return (
    <section
      className="card file-sheet"
      aria-labelledby="file-title"
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        event.preventDefault();
        close();
      }}
    >
      <div className="file-head">
        <h2 ref={heading} id="file-title" tabIndex={-1}>
          {say('file.title', { name: file.name })}
        </h2>
        <button type="button" className="btn square" aria-label={say('page.close')} title={say('page.close')} onClick={close}>
          <SignShape sign="out" />
        </button>
      </div>
      <div className="file-body scroll" tabIndex={0} role="group" aria-labelledby="file-title">
        {file.lesson === null ? <Problems problems={file.problems} /> : <Sound file={file} lesson={file.lesson} />}
      </div>
    </section>
  );
}
