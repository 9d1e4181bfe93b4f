// What a practitioner would warn of: at the stage concerned, all together from the bar on top and from help, and once at the first start.
import { useEffect, useId, useRef, type RefObject } from 'react';
import { english } from '../../../words/english';
import { say, sayOr, isWord } from '../../../words/say';
import { catalogueOf } from '../../state/common/selectors';
import { cautionsSeen, keepCautionsSeen } from './device';
import { MarkShape } from './marks';
import { usePage } from './pageStore';
import { FIRST_CAUTIONS } from './shortCautions';

/** The cautions of one kind of stage, folded away but always within reach. */
export function StageCautions({ kind }: { kind: string }) {
  const catalogue = usePage(catalogueOf);
  const keys = catalogue.find((entry) => entry.kind === kind)?.cautions ?? [];
  if (keys.length === 0) return null;
  return (
    <details className="cautions">
      <summary>{say('caution.title')}</summary>
      <ul>
        {keys.map((key) => (
          <li key={key}>{sayOr(key.startsWith('caution.') ? key : `caution.${key}`, 'caution.unknown')}</li>
        ))}
      </ul>
    </details>
  );
}

const NOT_HAZARDS: ReadonlySet<string> = new Set(['caution.title', 'caution.all', 'caution.footer', 'caution.unknown']);
const HAZARDS = Object.keys(english)
  .filter(isWord)
  .filter((key) => key.startsWith('caution.') && !NOT_HAZARDS.has(key));

function InFull() {
  return (
    <>
      <p>{say('caution.footer')}</p>
      <ul className="plain">
        {HAZARDS.map((key) => (
          <li key={key}>{say(key)}</li>
        ))}
      </ul>
    </>
  );
}

/** The dialog with every caution; whoever holds it opens it. */
export function CautionsDialog({ dialog }: { dialog: RefObject<HTMLDialogElement | null> }) {
  const title = useId();
  return (
    <dialog ref={dialog} className="card ask" aria-labelledby={title}>
      <h2 id={title}>{say('caution.all')}</h2>
      <InFull />
      <button type="button" className="btn" onClick={() => dialog.current?.close()}>
        {say('page.close')}
      </button>
    </dialog>
  );
}

/** The button and dialog with every caution. */
export function AllCautions() {
  const dialog = useRef<HTMLDialogElement>(null);
  return (
    <>
      <button type="button" className="btn" onClick={() => dialog.current?.showModal()}>
        {say('caution.all')}
      </button>
      <CautionsDialog dialog={dialog} />
    </>
  );
}

/** Shown once on a device, before anything else; however it is closed, it was seen. */
export function FirstCautions() {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    if (!cautionsSeen()) dialog.current?.showModal();
  }, []);
  return (
    <dialog ref={dialog} className="card ask first-cautions" aria-labelledby="first-cautions" onClose={keepCautionsSeen}>
      <h2 id="first-cautions">
        <MarkShape mark="watch" named={false} /> {say('shortCaution.title')}
      </h2>
      <p>
        <b>{say('shortCaution.decide')}</b>
      </p>
      <ul>
        {FIRST_CAUTIONS.map((key) => (
          <li key={key}>{say(key)}</li>
        ))}
      </ul>
      <div className="row first-foot">
        <button type="button" className="btn plan" autoFocus onClick={() => dialog.current?.close()}>
          {say('shortCaution.understood')}
        </button>
        <p className="note">{say('shortCaution.again')}</p>
      </div>
    </dialog>
  );
}
