// Pieces of the page that are loaded when they are first wanted. One that does not arrive, or fails, says so in its own place: the rest of
// the page goes on.
import { Component, lazy, Suspense, useEffect, useRef, useState, type ComponentType, type ReactNode } from 'react';
import { say } from '../../../words/say';

/** Imports a module from an address that is known only when it is needed. */
export type ImportFrom = (address: string) => Promise<unknown>;

/** A screen or sheet in a file of its own. */
export interface Piece<P> {
  /** Fetches it ahead of its use; a failure waits until it is wanted. */
  fetch(importFrom: ImportFrom): void;
  load(importFrom: ImportFrom): Promise<ComponentType<P>>;
  /** what has arrived */
  arrived: ComponentType<P> | null;
}

/** Style sheets that did not arrive. The loader of pieces asks for each only once, and takes it for there from then on. */
const lostStyles = new Set<HTMLLinkElement>();
globalThis.addEventListener?.(
  'error',
  ({ target }) => {
    if (target instanceof HTMLLinkElement && target.rel === 'stylesheet') lostStyles.add(target);
  },
  { capture: true },
);

function styleAgain(lost: HTMLLinkElement): Promise<void> {
  return new Promise((resolve, reject) => {
    const again = document.createElement('link');
    again.rel = 'stylesheet';
    again.href = lost.href;
    again.addEventListener('load', () => resolve());
    again.addEventListener('error', () => reject(new Error(lost.href)));
    lostStyles.delete(lost);
    lost.replaceWith(again);
  });
}

/** The address that a browser names when a module did not arrive. */
const LOST = /https?:\/\/\S+\.js/;
let asked = 0;

/**
 * A browser keeps in mind that an address failed, and does not ask there again: the same file is asked for by an address that it has not
 * tried.
 */
async function importedAgain(failure: unknown, importFrom: ImportFrom): Promise<unknown> {
  const [address] = LOST.exec(String(failure)) ?? [];
  if (address === undefined) throw failure;
  asked += 1;
  return importFrom(`${address}?again=${asked}`);
}

/**
 * A piece of the page in a file of its own.
 * @param imported the module that it is in
 * @param pick what is shown of the module
 */
export function pieceOf<M, P>(imported: () => Promise<M>, pick: (module: M) => ComponentType<P>): Piece<P> {
  const piece: Piece<P> = {
    arrived: null,
    async load(importFrom) {
      const styles = [...lostStyles].map(styleAgain);
      const [module] = await Promise.all([
        imported().catch((failure: unknown) => importedAgain(failure, importFrom) as Promise<M>),
        ...styles,
      ]);
      piece.arrived = pick(module);
      return piece.arrived;
    },
    fetch: (importFrom) => void piece.load(importFrom).catch(() => undefined),
  };
  return piece;
}

interface GuardProps {
  failure: ReactNode;
  children: ReactNode;
}

class Guard extends Component<GuardProps, { failed: boolean }> {
  override state = { failed: false };

  static getDerivedStateFromError(): { failed: boolean } {
    return { failed: true };
  }

  override render(): ReactNode {
    return this.state.failed ? this.props.failure : this.props.children;
  }
}

function NotArrived({ again, back }: { again: () => void; back: () => void }) {
  const first = useRef<HTMLButtonElement>(null);
  useEffect(() => first.current?.focus(), []);
  return (
    <div className="card failure" role="alert">
      <h2>{say('failure.piece')}</h2>
      <p>{say('failure.pieceHelp')}</p>
      <button type="button" className="btn" ref={first} onClick={again}>
        {say('failure.again')}
      </button>{' '}
      <button type="button" className="btn" onClick={back}>
        {say('failure.back')}
      </button>
    </div>
  );
}

interface Shown<P> {
  piece: Piece<P>;
  /** what the piece is given */
  given: P;
  importFrom: ImportFrom;
}

/** One attempt; a lazy piece that failed keeps failing, so the next attempt is another. */
function Attempt<P extends object>({ piece, given, importFrom }: Shown<P>) {
  const [Arrived] = useState(() => piece.arrived ?? lazy(async () => ({ default: await piece.load(importFrom) })));
  return (
    <Suspense fallback={null}>
      <Arrived {...given} />
    </Suspense>
  );
}

/**
 * Shows a piece as soon as it is there.
 * @param back leaves it when it does not arrive
 */
export function Loaded<P extends object>({ back, ...shown }: Shown<P> & { back: () => void }) {
  const [attempt, setAttempt] = useState(0);
  return (
    <Guard key={attempt} failure={<NotArrived again={() => setAttempt(attempt + 1)} back={back} />}>
      <Attempt {...shown} />
    </Guard>
  );
}
