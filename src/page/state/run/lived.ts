// The page while a season is lived, and at its result: the clock, what was done, the courses it took, and what was predicted of it.
import type { Lesson } from '../../../lessons/lesson';
import type { MarkMet } from '../../../lessons/marks';
import type { Plan } from '../../../season/plan';
import type { ComfortBand, DesignCheck } from '../../../worker/messages';
import type { Build, Built } from '../build/build';
import type { Act, Answer, Branch, Judged, Question, SeasonView, Speed } from '../common/state';

/** What a season that runs and one that is over have in common. */
interface Season {
  lesson: Lesson;
  /** the design as it stood when the season began */
  built: Built;
  /** the same with everything done since among its actions */
  plan: Plan;
  design: DesignCheck | null;
  comfort: readonly ComfortBand[];
  moved: number | null;
  season: SeasonView;
  /** a season is being computed; the one at hand plays on meanwhile */
  busy: boolean;
  /** hours since the start that the page shows, fractional */
  now_h: number;
  /** hours lived so far; the future beyond is not shown */
  lived_h: number;
  /** the speed that playing goes on at: the last one chosen */
  pace: Exclude<Speed, 'paused'>;
  /** what the person did since the season began, oldest first */
  acts: Act[];
  /** every course of this season; the present one's entry is brought up to date when it is left */
  branches: Branch[];
  present: number;
  /** the branch shown as a ghost beside the present one */
  compared: number | null;
  /** predictions of this season, in the order they were answered; quiet: no more are asked for */
  answers: readonly Answer[];
  question: Question | null;
  quiet: boolean;
  /** null until the worker has answered */
  judged: Judged | null;
  /** the marks by what was lived by the start of a day; asked for where a lesson has goals of its own */
  soFar: { day: number; marks: MarkMet[] } | null;
}

export interface Run extends Season {
  mode: 'run';
  speed: Speed;
  card: null;
}
/** The season is over. card: whether the card of the result lies over the picture */
export interface Result extends Season {
  mode: 'result';
  speed: 'paused';
  card: 'shown' | 'away';
}
export type Lived = Run | Result;

/** A season that begins to be lived. */
export function begun(build: Build, season: SeasonView, speed: Speed): Run {
  const { lesson, plan, history, design, comfort, moved, answers, quiet } = build;
  return {
    mode: 'run',
    lesson,
    built: { plan, history },
    plan,
    design,
    comfort,
    moved,
    season,
    busy: false,
    now_h: 0,
    lived_h: 0,
    speed,
    pace: 'day1',
    card: null,
    acts: [],
    branches: [{ id: 0, from: null, split_h: 0, acts: [], lived_h: 0, scores: null, season: null }],
    present: 0,
    compared: null,
    answers,
    question: null,
    quiet,
    judged: null,
    soFar: null,
  };
}

/** The season lived on, or looked at from an earlier hour. */
export function running(lived: Lived, speed: Speed): Run {
  return { ...lived, mode: 'run', speed, card: null };
}

/** The season at its end; a card that was put away already stays away. */
export function atResult(lived: Lived): Result {
  return { ...lived, mode: 'result', speed: 'paused', card: lived.card ?? 'shown' };
}

/** The same season with another output: nothing is judged of that yet. */
export function withOutput<L extends Lived>(lived: L, season: SeasonView, busy: boolean): L {
  return { ...lived, season, busy, judged: null, soFar: null };
}
