// What the sheets share: the head with name and date, numbers in rings, the loop as a strip of pictures, the box of cautions.
import type { ReactNode } from 'react';
import type { StageKind } from '../../state/common/contract';
import { say, type WordKey } from '../../../words/say';
import { stageName } from '../../../words/stageNames';
import { catalogueOf } from '../../state/common/selectors';
import { usePage } from '../common/pageStore';
import { STAGE_PICTURES } from '../common/pictures';
import { cautionsOf } from '../common/shortCautions';

export function SheetHead({ title, sub, named = false, children }: { title: string; sub: string; named?: boolean; children?: ReactNode }) {
  return (
    <header className="sheet-head">
      <div>
        <h2>{title}</h2>
        <p className="sheet-sub">{sub}</p>
      </div>
      {named && (
        <div className="sheet-name">
          <p>
            {say('paper.name')}
            <i />
          </p>
          <p>
            {say('paper.date')}
            <i />
          </p>
        </div>
      )}
      {children}
    </header>
  );
}

export function Ring({ children }: { children: ReactNode }) {
  return <span className="ring">{children}</span>;
}

/** A box to tick; ticked where it is the answer. */
export function Box({ ticked = false }: { ticked?: boolean }) {
  return (
    <svg className="box" viewBox="0 0 20 20" aria-hidden="true">
      <rect x="1.5" y="1.5" width="17" height="17" rx="3" fill="none" stroke="currentColor" strokeWidth="2" />
      {ticked && (
        <path d="M5 10.5l3.6 4L15.5 5.5" fill="none" stroke="currentColor" strokeWidth="2.6" strokeLinecap="round" strokeLinejoin="round" />
      )}
    </svg>
  );
}

export function Arrow() {
  return (
    <svg className="flow-arrow" viewBox="0 0 24 12" aria-hidden="true">
      <path
        d="M1 6H20M14 1.5L21 6L14 10.5"
        fill="none"
        stroke="currentColor"
        strokeWidth="2.2"
        strokeLinecap="round"
        strokeLinejoin="round"
      />
    </svg>
  );
}

/** The loop as pictures in the order of the water, each with its number. */
export function LoopStrip({ stages }: { stages: readonly { id: string; kind: StageKind }[] }) {
  return (
    <ol className="strip" aria-label={say('build.loop')}>
      {stages.map((stage, index) => (
        <li key={stage.id}>
          {index > 0 && <Arrow />}
          <figure>
            <Ring>{index + 1}</Ring>
            <img src={STAGE_PICTURES[stage.kind]} alt="" />
            <figcaption>{stageName(stages, stage.id)}</figcaption>
          </figure>
        </li>
      ))}
      <li className="strip-back">
        <Arrow />
        {say('paper.learner.back')}
      </li>
    </ol>
  );
}

/** The cautions of these stages, in short, and who decides in the end. */
export function CautionBox({ kinds }: { kinds: readonly string[] }) {
  const catalogue = usePage(catalogueOf);
  return (
    <aside className="caution-box" aria-label={say('shortCaution.title')}>
      <svg className="caution-sign" viewBox="0 0 48 44" aria-hidden="true">
        <path d="M24 4L45 40H3Z" fill="var(--amber)" stroke="currentColor" strokeWidth="4" strokeLinejoin="round" />
        <path d="M24 17v11M24 34v.4" stroke="currentColor" strokeWidth="5" strokeLinecap="round" />
      </svg>
      <div>
        <h3>{say('shortCaution.title')}</h3>
        <ul>
          {cautionsOf(catalogue, kinds).map((key) => (
            <li key={key}>{say(key)}</li>
          ))}
        </ul>
        <p>
          <b>{say('shortCaution.decide')}</b>
        </p>
      </div>
    </aside>
  );
}

/** A heading with a rule under it, kept with what follows. @param note one or more whole sentences */
export function Part({
  heading,
  note,
  children,
  id,
}: {
  heading: WordKey;
  note?: string | readonly string[];
  children: ReactNode;
  id: string;
}) {
  return (
    <section className="sheet-part" aria-labelledby={`sheet-${id}`}>
      <h3 id={`sheet-${id}`}>{say(heading)}</h3>
      {note !== undefined && (
        <p className="sheet-note">
          {[note].flat().map((sentence) => (
            <span key={sentence}>{sentence} </span>
          ))}
        </p>
      )}
      {children}
    </section>
  );
}
