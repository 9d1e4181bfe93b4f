// What the sequences command does: plays a lesson's or plan's parts in every order, without each part and without each routine.
import { buildPlan } from '../lessons/buildPlan';
import { parseJson } from '../lessons/jsonText';
import { LESSON_FORMAT } from '../lessons/lesson';
import type { Lesson } from '../lessons/lesson';
import type { OldFile } from '../lessons/oldFormats';
import { describe } from '../lessons/problems';
import { readLesson } from '../lessons/readLesson';
import { readPlanValue } from '../lessons/readPlan';
import { MODEL_REVISION, PLAN_FORMAT } from '../season/plan';
import type { Plan } from '../season/plan';
import { usualPlantsWeight } from '../season/scoring';
import { movableStages, possibleSequences, variantsOf } from '../season/variants';
import type { Variants } from '../season/variants';
import { say } from '../words/say';
import { readCommandLine } from './commandLine';
import { CommandError, oldFileText, readText, refused } from './planText';
import type { Ground, Outcome } from './playVariant';
import { answerOf } from './sequencesAnswer';
import type { Played } from './sequencesAnswer';
import { sequencesText } from './sequencesText';

/** Where the command writes, and who plays its variants. */
export interface SequencesSurroundings {
  print: (text: string) => void;
  note: (text: string) => void;
  play: (ground: Ground, plans: readonly Plan[]) => Promise<Outcome[]>;
}

interface Read {
  lesson: Lesson | null;
  plan: Plan;
  parts: string[];
  old: OldFile | undefined;
}

/** A format's name without its number. */
const family = (format: string): string => format.replace(/\/\d+$/, '');

/** Reads a lesson or a plan, told apart by their format. @throws CommandError where it is neither or cannot be used */
function readEither(file: string): Read {
  const text = readText(file);
  const parsed = parseJson(text);
  if ('problems' in parsed) throw refused(file, parsed.problems);
  const format: unknown = Object.entries(parsed.value ?? {}).find(([name]) => name === 'format')?.[1];
  const kind = typeof format === 'string' ? family(format) : '';
  if (kind === family(LESSON_FORMAT)) {
    const read = readLesson(text);
    if ('problems' in read) throw refused(file, read.problems);
    const { lesson, old } = read;
    const parts = lesson.reference.order.filter((id) => lesson.shelf.some((part) => part.id === id));
    return { lesson, plan: buildPlan(lesson, lesson.reference), parts, old };
  }
  if (kind === family(PLAN_FORMAT)) {
    const read = readPlanValue(parsed.value);
    if ('problems' in read) throw refused(file, read.problems);
    return { lesson: null, plan: read.plan, parts: movableStages(read.plan.loop), old: read.old };
  }
  throw refused(file, [{ path: 'format', got: describe(format), expected: { code: 'oneOf', names: [LESSON_FORMAT, PLAN_FORMAT] } }]);
}

/** Plays all variants at once and deals the outcomes out again. */
async function playAll(variants: Variants, play: (plans: readonly Plan[]) => Promise<Outcome[]>): Promise<Played> {
  const { sequences, withoutPart, withoutRoutine } = variants;
  const outcomes = (await play([...sequences, ...withoutPart, ...withoutRoutine].map(({ plan }) => plan)))[Symbol.iterator]();
  const deal = <V>(variant: V): V & { outcome: Outcome } => {
    const { value } = outcomes.next() as IteratorYieldResult<Outcome>;
    return { ...variant, outcome: value };
  };
  return { sequences: sequences.map(deal), withoutPart: withoutPart.map(deal), withoutRoutine: withoutRoutine.map(deal) };
}

/** Runs the command and returns its exit code. */
export async function sequencesCommand(words: readonly string[], { print, note, play }: SequencesSurroundings): Promise<number> {
  const { flags, rest } = readCommandLine(words, { json: 'flag' });
  if (flags.help) {
    print(say('command.sequencesHelp'));
    return 0;
  }
  const [file, ...more] = rest.map(({ word }) => word);
  if (file === undefined || more.length > 0)
    throw new CommandError(`${say('command.oneFile', { got: words.join(' ') })}\n\n${say('command.sequencesHelp')}`, 2);
  const { lesson, plan, parts, old } = readEither(file);
  if (old !== undefined) note(oldFileText(old));
  if (plan.model !== MODEL_REVISION) note(`${say('command.otherModel', { written: plan.model, now: MODEL_REVISION })}\n`);
  const ground = { lesson, plantsWeight: lesson?.scoring.plantsWeight ?? usualPlantsWeight(plan) };
  const played = await playAll(variantsOf(plan, parts), (plans) => play(ground, plans));
  const answer = answerOf(lesson?.id ?? null, played, possibleSequences(parts.length));
  print(flags.json !== undefined ? `${JSON.stringify(answer)}\n` : sequencesText(lesson?.title ?? plan.title, plan, played, answer));
  return 0;
}
