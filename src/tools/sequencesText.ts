// The sequences command's answer as tables for a terminal: best first, each row with what it lost and to what.
import type { Action, Plan } from '../season/plan';
import { kindName } from '../words/stageNames';
import { isWord, say, sayOr } from '../words/say';
import { valueOf, withUnit } from '../words/units';
import { lossOf } from './lossOf';
import type { Loss } from './lossOf';
import type { Outcome } from './playVariant';
import { bestFirst, rowOf } from './sequencesAnswer';
import type { Answer, Played, Quartiles, Row } from './sequencesAnswer';

/** The quantity of each number of a design's problem, by the name it carries. */
const QUANTITIES: Readonly<Record<string, string>> = { cm: 'height_cm', L: 'water_L', L_h: 'waterPerHour_L_h' };
/** Faults of a design that are told in full. */
const MOST_WRONG = 2;
const NOTHING = '–';
const GAP = '  ';

const figure = (value: number | null, decimals = 1): string => (value === null ? NOTHING : value.toFixed(decimals));

/** A stage by its id, as the plan has it, or by its kind where it stands alone. */
const stageWords = (plan: Plan, id: string): string => {
  const kind = plan.loop.find((stage) => stage.id === id)?.kind;
  return kind === undefined ? id : `${kindName(kind)} (${id})`;
};

const variableWords = (variable: string): string => {
  const name = `variable.${variable}`;
  return isWord(name) ? say(name) : variable;
};

/** What the engine recorded: problems of the design, mishaps with their day, and the limit that was passed for longest. */
function causeText(plan: Plan, { design, mishaps, fallen, trouble }: Loss): string {
  const wrong = design.map(({ key, stage, values }) => {
    const numbers = Object.entries(values).map(([name, value]) => [name, name in QUANTITIES ? withUnit(QUANTITIES[name], value) : value]);
    return sayOr(key, 'design.unknown', { ...Object.fromEntries(numbers), stage: stageWords(plan, stage) });
  });
  const happened = mishaps.map(({ kind, stage, day }) =>
    say('sequences.mishap', { day, what: sayOr(`trouble.${kind}`, 'design.unknown', { stage: stageWords(plan, stage) }) }),
  );
  const held = fallen.map(({ stage, variable, mean, reference }) =>
    say('sequences.fallen', {
      what: variableWords(variable),
      stage: stageWords(plan, stage),
      value: withUnit(variable, mean),
      reference: withUnit(variable, reference),
    }),
  );
  const passed = trouble === null ? [] : [troubleText(plan, trouble)];
  const more = wrong.length > MOST_WRONG ? [say('trouble.more', { n: wrong.length - MOST_WRONG })] : [];
  const all = [...wrong.slice(0, MOST_WRONG), ...more, ...happened, ...held, ...passed];
  return all.length === 0 ? say('sequences.noCause') : all.join('; ');
}

function troubleText(plan: Plan, trouble: NonNullable<Loss['trouble']>): string {
  const { applies, side, variable, value, limit, stage, extra_h: hours } = trouble;
  const what = say(`trouble.${applies}${side === 'above' ? 'Above' : 'Below'}`, {
    what: variableWords(variable),
    stage: stageWords(plan, stage),
    value: valueOf(variable, value),
    limit: withUnit(variable, limit),
  });
  return say('sequences.trouble', { what, hours });
}

/** One row of a table: its name, its scores, and what it lost against the reference (null: against full scores). */
interface Line {
  name: string;
  outcome: Outcome;
  against: Outcome | null;
}

function cellsOf(plan: Plan, { name, outcome, against }: Line, withHandOver: boolean): string[] {
  const row = rowOf(outcome);
  const loss = lossOf(outcome, against);
  return [
    name,
    figure(row.fishHealth),
    figure(row.harvest),
    figure(row.marks, 0),
    ...(withHandOver ? [figure(row.handOver)] : []),
    figure(row.work_h),
    loss === null ? NOTHING : say('sequences.lost', { score: say(`played.${loss.score}`), points: loss.points.toFixed(1) }),
    outcome.refused === null
      ? loss === null
        ? ''
        : causeText(plan, loss)
      : say('sequences.refused', { code: outcome.refused.code, words: outcome.refused.words }),
  ];
}

/** Names to the left, numbers to the right; a last column as long as it is. */
function tableText(rows: readonly string[][]): string[] {
  const widths = rows[0].map((_, column) => Math.max(...rows.map((row) => row[column].length)));
  const last = widths.length - 1;
  return rows.map((row) =>
    row
      .map((cell, column) =>
        column === last ? cell : column === 0 || column === last - 1 ? cell.padEnd(widths[column]) : cell.padStart(widths[column]),
      )
      .join(GAP)
      .trimEnd(),
  );
}

export const routineText = (routine: Action): string => {
  const { do: deed, every_d: days, from = 0 } = routine;
  const where = 'stage' in routine ? (routine.stage ?? '') : 'tank' in routine ? routine.tank : '';
  return say('sequences.routine', { what: where === '' ? deed : `${deed} ${where}`, days: days ?? 0, from });
};

const quartileText = (quartiles: Quartiles): string => (quartiles === null ? NOTHING : quartiles.map((value) => figure(value)).join(' / '));
const sequenceText = (order: readonly string[]): string => order.join(' ');

function summaryText({ summary, reference }: Answer): string[] {
  const { best, worst, quartiles, shareWithThreeMarks: share, rankOfReference: rank, played, possible, refused } = summary;
  const scored = (row: (Row & { order: string[] }) | null): string =>
    row === null
      ? NOTHING
      : say('sequences.scored', { order: sequenceText(row.order), fishHealth: figure(row.fishHealth), harvest: figure(row.harvest) });
  return [
    say('sequences.played', { played: String(played), possible: String(possible), refused: String(refused) }),
    say('sequences.best', { what: scored(best) }),
    say('sequences.worst', { what: scored(worst) }),
    say('sequences.quartiles', { fishHealth: quartileText(quartiles.fishHealth), harvest: quartileText(quartiles.harvest) }),
    ...(share === null ? [] : [say('sequences.threeMarks', { percent: figure(100 * share) })]),
    say('sequences.rank', { rank: rank === null ? NOTHING : String(rank), of: String(played - refused), what: scored(reference) }),
  ];
}

/** @param plan the reference's, which names the stages */
export function sequencesText(title: string, plan: Plan, played: Played, answer: Answer): string {
  const reference = played.sequences[0].outcome;
  const rows = [...answer.sequences, ...answer.withoutPart, ...answer.withoutRoutine];
  const withHandOver = rows.some(({ handOver }) => handOver !== null);
  const heads = [
    say('played.fishHealth'),
    say('played.harvest'),
    say('played.marks'),
    ...(withHandOver ? [say('sequences.handOver')] : []),
    say('sequences.work'),
    say('sequences.loss'),
    say('sequences.cause'),
  ];
  const ranked = (lines: readonly Line[]): Line[] => [...lines].sort((a, b) => bestFirst(rowOf(a.outcome), rowOf(b.outcome)));
  const against = (outcome: Outcome): Outcome | null => (outcome === reference ? null : reference);
  const section = (heading: string, lines: readonly Line[]): string[] =>
    lines.length === 0 ? [] : ['', ...tableText([[heading, ...heads], ...ranked(lines).map((line) => cellsOf(plan, line, withHandOver))])];
  const lines = [
    title,
    ...section(
      say('sequences.sequence'),
      played.sequences.map(({ order, outcome }) => ({
        name: say(outcome === reference ? 'sequences.isReference' : 'sequences.isOther', { order: sequenceText(order) }),
        outcome,
        against: against(outcome),
      })),
    ),
    ...section(
      say('sequences.withoutPart'),
      played.withoutPart.map(({ part, outcome }) => ({ name: part, outcome, against: reference })),
    ),
    ...section(
      say('sequences.withoutRoutine'),
      played.withoutRoutine.map(({ routine, outcome }) => ({ name: routineText(routine), outcome, against: reference })),
    ),
    '',
    ...summaryText(answer),
  ];
  return `${lines.join('\n')}\n`;
}
