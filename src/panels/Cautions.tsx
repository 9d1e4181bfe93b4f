// What a practitioner would warn of: at the stage concerned, and all together from the bar on top.
import { useRef } from 'react';
import { english } from '../words/english';
import { say, sayOr, isWord } from '../words/say';
import { usePage } from './pageStore';

/** The cautions of one kind of stage, folded away but always within reach. */
export function StageCautions({ kind }: { kind: string }) {
  const catalogue = usePage((page) => page.catalogue);
  const keys = catalogue.find((entry) => entry.kind === kind)?.cautions ?? [];
  if (keys.length === 0) return null;
  return (
    <details className="cautions">
      <summary>{say('caution.title')}</summary>
      <ul>{keys.map((key) => <li key={key}>{sayOr(key.startsWith('caution.') ? key : `caution.${key}`, 'caution.unknown')}</li>)}</ul>
    </details>
  );
}

const NOT_HAZARDS: ReadonlySet<string> = new Set(['caution.title', 'caution.all', 'caution.footer', 'caution.unknown']);
const HAZARDS = Object.keys(english).filter(isWord).filter((key) => key.startsWith('caution.') && !NOT_HAZARDS.has(key));

/** The button and dialog with every caution. */
export function AllCautions() {
  const dialog = useRef<HTMLDialogElement>(null);
  return (
    <>
      <button type="button" className="btn" onClick={() => dialog.current?.showModal()}>{say('caution.all')}</button>
      <dialog ref={dialog} className="card ask" aria-labelledby="cautions-title">
        <h2 id="cautions-title">{say('caution.all')}</h2>
        <p>{say('caution.footer')}</p>
        <ul className="plain">{HAZARDS.map((key) => <li key={key}>{say(key)}</li>)}</ul>
        <button type="button" className="btn" onClick={() => dialog.current?.close()}>{say('page.close')}</button>
      </dialog>
    </>
  );
}
