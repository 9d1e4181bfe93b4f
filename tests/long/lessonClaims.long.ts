// What every lesson claims of its mistakes, in twenty drawn worlds: is it the water that says so, or one set of constants?
import { readdirSync, readFileSync } from 'node:fs';
import { afterAll, describe, expect, it } from 'vitest';
import { buildPlan } from '../../src/lessons/buildPlan';
import { compare } from '../../src/lessons/consequences';
import type { Shown } from '../../src/lessons/consequences';
import type { Lesson } from '../../src/lessons/lesson';
import { readLesson } from '../../src/lessons/readLesson';
import { runSeason } from '../../src/season/season';
import { drawnWorlds } from './draws';

const DRAWS = 20;
/** Fresh, so that no lesson was fitted to it. */
const SEED = 'late-thaw';
const SHARE = 0.9;
/** A stated limit is for the recorded world; elsewhere the mistake must stand on the same side of the reference, by this much. */
const APART = 1.1;

const LEVELS = new URL('../../levels/', import.meta.url);
const lessons = readdirSync(LEVELS)
  .filter((name) => /^\d\d-.*\.json$/.test(name))
  .map((name): [string, Lesson] => {
    const read = readLesson(readFileSync(new URL(name, LEVELS), 'utf8'));
    if ('problems' in read) throw new Error(`${name} cannot be read`);
    return [name, read.lesson];
  })
  .filter(([, lesson]) => lesson.mistakes.length > 0);

/** A ratio as far as the square root of the stated one; a stated limit by standing on its side of the reference. */
function keepsDirection({ consequence, reference, mistake, times }: Shown): boolean {
  const { atLeast, atMost, atLeastTimes, atMostTimes } = consequence;
  const more = (limit: number | undefined): boolean =>
    limit === undefined || (reference < 0 ? mistake > reference : mistake >= reference * APART && mistake > 0);
  const less = (limit: number | undefined): boolean =>
    limit === undefined || (reference < 0 ? mistake < reference : mistake <= reference / APART);
  return (
    more(atLeast)
    && less(atMost)
    && (atLeastTimes === undefined || times >= Math.sqrt(atLeastTimes))
    && (atMostTimes === undefined || times <= Math.sqrt(atMostTimes))
  );
}

const consequenceName = ({ consequence: c }: Shown): string =>
  c.score ?? `${c.statistic} ${c.stage ?? ''}.${c.variable ?? c.process ?? ''}`;
const table: { lesson: string; mistake: string; shows: string; share: number; leastTimes: string; mostTimes: string }[] = [];

describe.each(lessons)('%s', (name, lesson) => {
  const worlds = drawnWorlds(DRAWS, SEED);
  it(`shows each mistake's consequences in ${100 * SHARE} % of ${DRAWS} drawn worlds`, () => {
    const shown = worlds.map(({ parameters }) => {
      const reference = runSeason(buildPlan(lesson, lesson.reference), { parameters });
      return lesson.mistakes.map((mistake) => {
        const season = runSeason(buildPlan(lesson, mistake), { parameters });
        return mistake.shows.map((consequence) => compare(reference, season, consequence));
      });
    });
    const weak = lesson.mistakes.flatMap((mistake, m) =>
      mistake.shows.flatMap((_, s) => {
        const over = shown.map((world) => world[m][s]);
        const share = over.filter(keepsDirection).length / DRAWS;
        const times = over.map((one) => one.times).sort((a, b) => a - b);
        table.push({
          lesson: name,
          mistake: mistake.key,
          shows: consequenceName(over[0]),
          share,
          leastTimes: times[0].toPrecision(3),
          mostTimes: times[DRAWS - 1].toPrecision(3),
        });
        return share >= SHARE ? [] : [`${mistake.key}: ${consequenceName(over[0])} in ${share}`];
      }),
    );
    expect(weak).toEqual([]);
  });
});

afterAll(() => {
  console.table(table);
});
