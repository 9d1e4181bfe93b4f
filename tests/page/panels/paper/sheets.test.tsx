// The sheets themselves, rendered with the first lesson as the model plays it: what stands on them is what the model found.
import { readFileSync } from 'node:fs';
import type { ReactNode } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { beforeAll, describe, expect, it } from 'vitest';
import { marksMet } from '../../../../src/lessons/marks';
import { playLesson } from '../../../../src/lessons/playLesson';
import { settle } from '../../../../src/lessons/predictions';
import { catalogueEntries } from '../../../../src/worker/catalogueEntries';
import { KeySheet } from '../../../../src/page/panels/paper/KeySheet';
import { LearnerSheet } from '../../../../src/page/panels/paper/LearnerSheet';
import { LessonPlanSheet } from '../../../../src/page/panels/paper/LessonPlanSheet';
import { measureValue } from '../../../../src/page/panels/common/measureWords';
import { SeasonSheet } from '../../../../src/page/panels/paper/SeasonSheet';
import { PageStoreProvider } from '../../../../src/page/panels/common/pageStore';
import { sideWords } from '../../../../src/page/panels/paper/SideBranches';
import { readLesson } from '../../../../src/lessons/readLesson';
import { runSeason } from '../../../../src/season/season';
import type { LessonKey } from '../../../../src/page/state/paper/sheets';
import { createPageStore } from '../../../../src/page/state/common/store';
import { whole } from '../../../../src/words/units';
import { processFacts } from '../../../../src/worker/processFacts';
import { firstLesson, referencePlan } from '../../../season/plans';
import { openedLesson } from '../../../../src/page/state/build/build';
import { atResult, begun, running } from '../../../../src/page/state/run/lived';
import { fakeClient } from '../../state/fakeClient';
import { livedIn } from '../../state/seen';

/** The first lesson with two of its mistakes, so that little is played. */
const first = firstLesson();
const lesson = { ...first, mistakes: first.mistakes.slice(0, 2), demonstrations: first.demonstrations.slice(0, 1) };
const plan = referencePlan();
const season = runSeason(plan);
const view = {
  ...season,
  sky: new Float32Array(plan.days).fill(1),
  column: Object.fromEntries(season.variables.map((name, index) => [name, index])),
};
const facts = processFacts();
const store = createPageStore(fakeClient(lesson));
let found: LessonKey;

/** Rendered without a page, hooks read the store's first state: here its present one stands for it. */
const text = (sheet: ReactNode): string =>
  renderToStaticMarkup(<PageStoreProvider store={{ ...store, getInitialState: store.getState }}>{sheet}</PageStoreProvider>)
    .replace(/<[^>]*>/g, ' ')
    .replace(/&#x27;/g, "'")
    .replace(/\s+/g, ' ')
    .replaceAll('\u00a0', ' ');
const plain = (words: string): string => words.replaceAll('\u00a0', ' ');

beforeAll(async () => {
  found = { lesson, plan, season: view, played: playLesson(lesson, (one) => runSeason(one)) };
  const catalogue = catalogueEntries();
  const end = plan.days * 24;
  store.setState({
    known: { facts, catalogue },
    game: atResult({ ...begun({ ...openedLesson(lesson, true), plan }, view, 'paused'), lived_h: end, now_h: end }),
  });
  // the store has asked the stand-in for a verdict by now; the model's own replaces it
  await new Promise((done) => setTimeout(done, 0));
  const judged = {
    marks: marksMet(
      season.summary.scores,
      season,
      plan.loop.map((stage) => stage.id),
      lesson,
    ),
    predictions: lesson.predictions.map((one) => settle(season, one)),
  };
  store.setState({ game: { ...livedIn(store), judged } });
}, 120_000);

/** Nothing unfilled, no number that is none. */
function sound(words: string): void {
  expect(words).not.toMatch(/NaN|undefined|Infinity|\{\w+\}/);
  expect(words).toMatch(/local codes and licensed practice decide/i);
}

describe("the learner's sheet", () => {
  it('holds every card and every choice, and gives nothing away', () => {
    const words = text(<LearnerSheet lesson={lesson} version={0} />);
    sound(words);
    for (const prediction of lesson.predictions) for (const choice of prediction.choices) expect(words).toContain(choice.text);
    for (const prediction of lesson.predictions)
      for (const explanation of prediction.explanations) expect(words).not.toContain(explanation.text);
    const shown = ['Degassing tank', 'Sump', 'Fine-solids filter', 'Radial-flow settler', 'Return pump', 'Raft bed'];
    expect([...shown].sort((a, b) => words.indexOf(a) - words.indexOf(b))).not.toEqual([
      'Radial-flow settler',
      'Fine-solids filter',
      'Degassing tank',
      'Raft bed',
      'Sump',
      'Return pump',
    ]);
    for (const name of shown) expect(words).toContain(name);
  });

  it('asks where the side branches belong without saying it; the key says it', () => {
    const read = readLesson(readFileSync('levels/12-mineralisation.json', 'utf8'));
    if ('problems' in read) throw new Error('the lesson cannot be read');
    const words = text(<LearnerSheet lesson={read.lesson} version={0} />);
    sound(words);
    expect(words).toMatch(/These stand beside the loop.*Base dosing drips into.*Mineralisation tank takes from gives back to/);
    const stages = [...read.lesson.plan.loop, ...read.lesson.shelf];
    expect(read.lesson.plan.side.map((side) => sideWords(side, stages))).toEqual([
      'Drips into: Sump.',
      'Takes from: Radial-flow settler and Fine-solids filter. Gives back to: Sump.',
    ]);
    for (const side of read.lesson.plan.side) expect(words).not.toContain(sideWords(side, stages));
    const without = text(
      <LearnerSheet lesson={{ ...read.lesson, reference: { ...read.lesson.reference, without: ['mineral'] } }} version={0} />,
    );
    expect(without).toContain('This stands beside the loop');
    expect(without).not.toContain('gives back to');
    expect(sideWords(read.lesson.plan.side[1], read.lesson.plan.loop)).toBe('Takes from no stage of this loop. Gives back to: Sump.');
    expect(text(<KeySheet lesson={lesson} found={found} version={0} />)).toContain('Drips into: Sump.');
  });
});

describe("the teacher's key", () => {
  it("gives the scores, each mistake's number beside the reference's, and how predictions come out", () => {
    const words = text(<KeySheet lesson={lesson} found={found} version={0} />);
    sound(words);
    for (const one of found.played) {
      expect(words).toContain(whole(one.fishHealth));
      for (const shown of one.shown)
        expect(words).toContain(
          plain(
            `${measureValue(shown.consequence, shown.mistake, facts)} (reference ${measureValue(shown.consequence, shown.reference, facts)})`,
          ),
        );
    }
    for (const prediction of lesson.predictions) {
      const settled = settle(season, prediction);
      expect(words).toContain(plain(measureValue(prediction.measure, settled.value, facts)));
      for (const one of settled.explanations)
        expect(words).toContain(
          `${prediction.explanations.find((other) => other.key === one.key)?.text ?? ''} ${one.holds ? 'holds' : 'does not hold'}`,
        );
    }
  });

  it('tells why from what processes did in the reference', () => {
    const words = text(<KeySheet lesson={lesson} found={found} version={0} />);
    expect(words).toMatch(/Fish digested [\d.]+ k?g of feed/);
    expect(words).toMatch(/[\d.]+ m?g of solids settled to the bottom here/);
    expect(words).toMatch(/Solids \(TSS\) [\d.]+ → [\d.]+ mg\/L/);
  });
});

describe('the lesson plan', () => {
  it("names the lesson's own questions, hints and caveats", () => {
    const words = text(<LessonPlanSheet lesson={lesson} />);
    sound(words);
    for (const prediction of lesson.predictions) expect(words).toContain(prediction.question);
    for (const caveat of lesson.caveats) expect(words).toContain(caveat);
    expect(words).toContain(lesson.aim);
    expect(words).toMatch(/–45/);
  });
});

describe('the summary of a season', () => {
  it('gives scores, marks, what was done and what the figures bear out', () => {
    const words = text(<SeasonSheet />);
    sound(words);
    expect(words).toContain(`Fish health ${whole(season.summary.scores.fishHealth)} Harvest ${whole(season.summary.scores.harvest)}`);
    expect(words).toContain('Every day from day 1 drain Radial-flow settler');
    expect(words.match(/(?<!not) reached/g)).toHaveLength(
      lesson.scoring.marks.reduce((sum, { goals }) => sum + 1 + (goals ?? []).length, 0),
    );
    for (const prediction of lesson.predictions)
      expect(words).toContain(plain(measureValue(prediction.measure, settle(season, prediction).value, facts)));
  });

  it('tells nothing of the days that were not lived', () => {
    const result = livedIn(store);
    store.setState({ game: { ...running(result, 'paused'), lived_h: 72 } });
    const words = text(<SeasonSheet />);
    store.setState({ game: result });
    expect(words).toContain('The season is not over');
    expect(words).not.toMatch(/reached/);
    expect(words).not.toContain('Day 20,');
    for (const prediction of lesson.predictions)
      expect(words).not.toContain(plain(measureValue(prediction.measure, settle(season, prediction).value, facts)));
  });
});
