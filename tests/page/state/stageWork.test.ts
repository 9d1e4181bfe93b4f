// What a stage changes on the way through, and the tint that a lesson is about, on a season of the model.
import { describe, expect, it } from 'vitest';
import { runSeason } from '../../../src/season/season';
import type { SeasonView } from '../../../src/page/state/common/state';
import { changesAt, tintOfLesson } from '../../../src/page/state/run/stageWork';
import { referencePlan } from '../../season/plans';
import { smallLesson } from './fakeClient';

const plan = referencePlan({ days: 12 });
const season = runSeason(plan);
const view: SeasonView = {
  ...season,
  sky: new Float32Array(12).fill(1),
  column: Object.fromEntries(season.variables.map((name, index) => [name, index])),
};

describe('what changes most at a stage', () => {
  it('is solids where they are caught and carbon dioxide where it is aired out', () => {
    const first = (kind: string): string | undefined =>
      changesAt(view, plan, plan.loop.find((stage) => stage.kind === kind)?.id ?? '', 11, 1)[0]?.tint;
    expect(first('radialFlowSettler')).toBe('solids');
    expect(first('degassingTank')).toBe('carbonDioxide');
    const [caught] = changesAt(view, plan, plan.loop.find((stage) => stage.kind === 'radialFlowSettler')?.id ?? '', 11, 1);
    expect(caught.out).toBeLessThan(caught.in);
  });

  it('is told largest first, no more than asked for, and not at all for what is no stage of the loop', () => {
    const [fish] = plan.loop;
    expect(changesAt(view, plan, fish.id, 11, 2).length).toBeLessThanOrEqual(2);
    expect(changesAt(view, plan, 'nowhere', 11, 2)).toEqual([]);
  });
});

describe('the tint of a lesson', () => {
  it('is what most of its measures read, ammonia where none says', () => {
    const shows = { stage: 'fish', statistic: 'max', fromDay: 0, atLeastTimes: 2 } as const;
    const mistakes = [
      {
        key: 'a',
        title: '',
        order: [],
        actions: [],
        shows: [
          { ...shows, variable: 'H2S_ug_L' as const },
          { ...shows, variable: 'O2_mg_L' as const },
        ],
      },
      { key: 'b', title: '', order: [], actions: [], shows: [{ ...shows, variable: 'H2S_ug_L' as const }] },
    ];
    expect(tintOfLesson({ ...smallLesson(), mistakes })).toBe('hydrogenSulfide');
    expect(tintOfLesson(smallLesson())).toBe('ammonia');
  });
});
