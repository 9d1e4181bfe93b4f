// Opens lessons: by address, from the path, by a file given by hand; checks such a file for its author; books results on the device.
import type { StoreApi } from 'zustand/vanilla';
import type { Lesson } from '../../../lessons/lesson';
import type { Problem } from '../../../lessons/problem';
import type { OldFile } from '../../../lessons/oldFormats';
import { say } from '../../../words/say';
import { addressOfFile, addressOfNumber, askedBy, type Asked } from '../common/address';
import { type FileCheck, firstPath, type Opened, type PathActions, type PathState, type Surroundings } from './path';
import type { Result } from '../run/lived';
import { keepSeason, readProgress } from './progress';
import { messageOf } from '../run/seasonRuns';
import type { PageState, PageStore } from '../common/page';
import type { Client, Judged } from '../common/state';

/** What the store lends: reading a lesson's text (null: the worker failed, which is told), and entering a lesson. */
export interface Entrance {
  read(name: string, text: string): Promise<{ lesson: Lesson; old?: OldFile } | { problems: Problem[] } | null>;
  /** @param beside what else changes with it, in the same assignment */
  enter(lesson: Lesson, beside?: Partial<PageState>): Promise<void>;
}

const UNPLAYED = { played: null, playing: false, failed: null } as const;

/** A failure in words that a person may read as they are. */
class OpeningFailure extends Error {}

export const openingState = (surroundings: Surroundings): PathState => firstPath(surroundings.cards, readProgress(surroundings.device));

export function createOpening(
  client: Client,
  store: StoreApi<PageStore>,
  surroundings: Surroundings,
  { read, enter }: Entrance,
): PathActions {
  /** texts of files opened by hand, for as long as the page lives */
  const files = new Map<string, string>();
  let openings = 0;
  let plays = 0;
  let side: Client | null = null;

  const setFile = (file: FileCheck, beside: Partial<PageState> = {}): void =>
    store.setState(({ path }) => ({ ...beside, path: { ...path, file } }));
  const changeFile = (part: Partial<FileCheck>, beside?: Partial<PageState>): void => {
    const { file } = store.getState().path;
    if (file !== null) setFile({ ...file, ...part }, beside);
  };
  const fail = (failure: string): void => store.setState({ failure });

  /** The text that an address stands for. */
  const textOf = async (asked: Exclude<Asked, { kind: 'other' }>): Promise<{ opened: Opened; text: string }> => {
    const { cards } = store.getState().path;
    switch (asked.kind) {
      case 'start':
      case 'number': {
        const card = asked.kind === 'start' ? cards[0] : cards.find((one) => one.number === asked.number);
        if (card === undefined)
          throw new OpeningFailure(
            asked.kind === 'start'
              ? say('failure.noPath')
              : say('failure.noNumber', { number: asked.number, first: cards[0]?.number ?? '', last: cards.at(-1)?.number ?? '' }),
          );
        return {
          opened: { from: 'path', name: card.file, address: asked.kind === 'start' ? '' : addressOfNumber(card.number) },
          text: await surroundings.readCard(card.file),
        };
      }
      case 'web':
        try {
          return {
            opened: { from: 'web', name: asked.url, address: `#lesson=${asked.url}` },
            text: await surroundings.fetchText(asked.url),
          };
        } catch (error) {
          throw new OpeningFailure(say('failure.fetch', { url: asked.url, message: messageOf(error) }));
        }
      case 'file': {
        const text = files.get(asked.name);
        if (text === undefined) throw new OpeningFailure(say('failure.fileGone', { name: asked.name }));
        return { opened: { from: 'file', name: asked.name, address: addressOfFile(asked.name) }, text };
      }
      case 'refused':
        throw new OpeningFailure(say('failure.address', { what: asked.what }));
    }
  };

  /** Enters what was read, unless something else was opened meanwhile. */
  const take = async (
    mine: number,
    { lesson, old }: { lesson: Lesson; old?: OldFile },
    opened: Opened,
    file: FileCheck | null,
  ): Promise<void> => {
    if (mine !== openings) return;
    const { path, screen } = store.getState();
    // who asks for paper while the first lesson is still on its way keeps it
    const first = path.opened === null && screen === 'paper';
    await enter(lesson, { failure: null, screen: first ? screen : 'loop', path: { ...path, opened, file, old: old ?? null } });
  };

  const open = async (asked: Exclude<Asked, { kind: 'other' }>): Promise<boolean> => {
    openings += 1;
    const mine = openings;
    try {
      const { opened, text } = await textOf(asked);
      const answer = await read(opened.name, text);
      if (answer === null || mine !== openings) return mine !== openings;
      if ('problems' in answer) {
        store.setState({ problems: answer.problems });
        return false;
      }
      plays += 1;
      await take(
        mine,
        answer,
        opened,
        opened.from === 'file' ? { ...UNPLAYED, name: opened.name, shown: false, problems: [], lesson: answer.lesson } : null,
      );
      return true;
    } catch (error) {
      if (mine === openings) fail(error instanceof OpeningFailure ? error.message : say('failure.read', { message: messageOf(error) }));
      return mine !== openings;
    }
  };

  /** Whether an address stands for the lesson that is open already. */
  const atHand = (asked: Asked): boolean => {
    const { opened, cards } = store.getState().path;
    if (opened === null) return false;
    if (asked.kind === 'number' || asked.kind === 'start') {
      const card = asked.kind === 'start' ? cards[0] : cards.find((one) => one.number === asked.number);
      return opened.from === 'path' && opened.name === card?.file;
    }
    return asked.kind === 'web'
      ? opened.from === 'web' && opened.name === asked.url
      : asked.kind === 'file' && opened.from === 'file' && opened.name === asked.name;
  };

  watchResults(store, surroundings);

  return {
    async openAddress(hash) {
      const asked = askedBy(hash, surroundings.page);
      if (asked.kind === 'other' && store.getState().path.opened !== null) return;
      if (atHand(asked)) {
        openings += 1;
        store.setState({ screen: 'loop' });
        return;
      }
      if (await open(asked.kind === 'other' ? { kind: 'start' } : asked)) return;
      const { opened } = store.getState().path;
      if (opened !== null) surroundings.setAddress(opened.address, 'same');
      else if (asked.kind !== 'start' && asked.kind !== 'other') {
        // a page that just began still needs a lesson, and keeps the message
        const { failure, problems } = store.getState();
        surroundings.setAddress('', 'same');
        if (await open({ kind: 'start' })) store.setState({ failure, problems });
      }
    },
    async openFile(name, text) {
      openings += 1;
      const mine = openings;
      const answer = await read(name, text);
      if (answer === null || mine !== openings) return;
      plays += 1;
      const { file } = store.getState().path;
      const again = file !== null && file.name === name ? file : null;
      if ('problems' in answer) {
        setFile(
          { ...UNPLAYED, name, shown: true, problems: answer.problems, lesson: null },
          { announcement: say('said.fileBad', { name, n: answer.problems.length }) },
        );
        return;
      }
      files.set(name, text);
      surroundings.setAddress(addressOfFile(name), 'new');
      await take(
        mine,
        answer,
        { from: 'file', name, address: addressOfFile(name) },
        { ...UNPLAYED, name, shown: again?.shown ?? false, problems: [], lesson: answer.lesson },
      );
      // whoever played it before wants to see the same of the mended file
      if (again !== null && (again.played !== null || again.playing)) await store.getState().playFile();
    },
    async playFile() {
      const { file } = store.getState().path;
      if (file === null || file.lesson === null) return;
      plays += 1;
      const mine = plays;
      changeFile({ playing: true, played: null, failed: null });
      try {
        side ??= surroundings.side === null ? client : surroundings.side();
        const played = await side.ask({ ask: 'play', lesson: file.lesson });
        if (mine !== plays) return;
        changeFile(
          { playing: false, played },
          { announcement: say(played.every((one) => one.passes) ? 'said.filePasses' : 'said.fileFails') },
        );
      } catch (error) {
        if (mine === plays) changeFile({ playing: false, failed: say('failure.worker', { message: messageOf(error) }) });
      }
    },
    showFile: (shown) => changeFile({ shown }),
    dismissOld: () => store.setState(({ path }) => ({ path: { ...path, old: null } })),
  };
}

/** The season at its judged result, or null. */
const judgedResult = ({ game }: PageState): (Result & { judged: Judged }) | null =>
  game.mode === 'result' && game.judged !== null ? { ...game, judged: game.judged } : null;

/** Books each season that comes to its result. A file of a teacher's own does not count for a lesson of the path whose id it kept. */
function watchResults(store: StoreApi<PageStore>, { device, today }: Surroundings): void {
  store.subscribe((now, before) => {
    const result = judgedResult(now);
    if (result === null || judgedResult(before) !== null || result.lesson.free) return;
    const { lesson, judged } = result;
    if (now.path.opened?.from !== 'path' && now.path.cards.some((card) => card.id === lesson.id)) return;
    const marks = judged.marks.filter((mark) => mark.earned).length;
    const progress = keepSeason(device, lesson.id, marks, today());
    store.setState(({ path }) => ({ path: { ...path, progress } }));
  });
}
