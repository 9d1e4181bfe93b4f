// What the path of lessons shows of a lesson before it is opened. Read without the engine or the gate, so that the page starts light.
import type { StageKind } from '../season/plan';
import type { LessonText } from './texts';
// with its ending, since the build reads this file too
import { withoutNotes } from './notes.ts';

/** A card as it is taken out of its file: its texts may be in several languages (cardIn, in texts.ts, chooses one). */
export interface CardRead extends Omit<LessonCard, 'title' | 'teaches' | 'aim'> {
  title: LessonText;
  teaches: LessonText;
  aim: LessonText;
}

export interface LessonCard {
  /** the two digits its file begins with */
  number: string;
  /** the name of its file */
  file: string;
  id: string;
  title: string;
  teaches: string;
  aim: string;
  /** time to play it; 0 where the file does not say */
  minutes: number;
  /** nothing to reach: a bench to build at */
  free: boolean;
  /** stages of the reference loop in the order of the water; placed: the learner puts it there */
  loop: { kind: StageKind; placed: boolean }[];
}

type Fields = Record<string, unknown>;
const fieldsOf = (value: unknown): Fields => (typeof value === 'object' && value !== null ? (value as Fields) : {});
const listOf = (value: unknown): unknown[] => (Array.isArray(value) ? value : []);
const textOf = (value: unknown, otherwise: string): string => (typeof value === 'string' && value !== '' ? value : otherwise);
/** A text in one or several languages; of an object only what is text. */
function wordsOf(value: unknown, otherwise: string): LessonText {
  const texts = Object.entries(fieldsOf(value)).filter((entry): entry is [string, string] => typeof entry[1] === 'string');
  return texts.length > 0 && !Array.isArray(value) ? Object.fromEntries(texts) : textOf(value, otherwise);
}

function parsed(text: string): Fields {
  try {
    return fieldsOf(JSON.parse(withoutNotes(text.replace(/^\uFEFF/, ''))));
  } catch {
    return {};
  }
}

/** Never throws: a file that cannot be read keeps its place on the path under its own name, and says what is wrong when it is opened. */
export function cardOf(file: string, text: string): CardRead {
  const lesson = parsed(text);
  const plan = fieldsOf(lesson.plan);
  const fixed = listOf(plan.loop).map(fieldsOf);
  const shelf = listOf(lesson.shelf).map(fieldsOf);
  const given = lesson.given === undefined ? fixed.map((stage) => stage.id) : listOf(lesson.given);
  const loop = listOf(fieldsOf(lesson.reference).order).flatMap((id) => {
    const stage = [...fixed, ...shelf].find((one) => one.id === id);
    return typeof stage?.kind === 'string' ? [{ kind: stage.kind as StageKind, placed: !given.includes(id) }] : [];
  });
  return {
    number: file.slice(0, 2),
    file,
    id: textOf(lesson.id, file),
    title: wordsOf(lesson.title, file),
    teaches: wordsOf(lesson.teaches, ''),
    aim: wordsOf(lesson.aim, ''),
    minutes: typeof lesson.minutes === 'number' && lesson.minutes > 0 ? lesson.minutes : 0,
    free: lesson.free === true,
    loop,
  };
}
