// The moment the picture shows, and the mark that a number earns.
import { describe, expect, it } from 'vitest';
import { TINTS } from '../../../src/page/state/common/tints';
import { markAgainst } from '../../../src/page/state/run/troubles';
import type { ComfortBand } from '../../../src/worker/messages';
import { distressAt, fishDistress, Limits } from '../../../src/page/picture/marks/marks';
import { WATER_BANDS } from '../../../src/page/picture/kit/palette';
import { Moment } from '../../../src/page/picture/kit/moment';
import { takeOver } from '../../../src/page/picture/scene/moments';
import { BandColour } from '../../../src/page/picture/kit/bandColour';
import type { PageState } from '../../../src/page/state/common/page';
import { openedLesson } from '../../../src/page/state/build/build';
import { begun } from '../../../src/page/state/run/lived';
import type { Speed } from '../../../src/page/state/common/state';
import { smallLesson, smallPlan } from '../state/fakeClient';
import { loopOf, seasonOf } from './loops';

const STAGES = [
  { id: 'fish', kind: 'fishTank', cells: 1 },
  { id: 'rafts', kind: 'raftBed', cells: 3 },
  { id: 'sump', kind: 'sump', cells: 1 },
];
/** Nitrate tells cell and hour; coarse and fine solids tell themselves apart. */
const season = seasonOf(STAGES, (variable, cell, sample) =>
  variable === 'NO3_mgN_L' ? 100 * cell + sample : variable === 'solidsCoarse_mg_L' ? 8 : variable === 'solidsFine_mg_L' ? 3 : 0,
);
const plan = { ...smallPlan(), loop: loopOf('fish', 'rafts', 'sump', 'pump') };
const build = openedLesson({ ...smallLesson(), plan }, true);
const page: Pick<PageState, 'game' | 'view' | 'preferences'> = {
  game: { ...begun(build, season, 'paused'), now_h: 4, lived_h: 4 },
  view: { tint: 'nitrate', selected: null, closer: false },
  preferences: { units: 'metric', hints: true, predicting: true, reducedMotion: false },
};
const still: PageState['preferences'] = { ...page.preferences, reducedMotion: true };
const atSpeed = (speed: Speed): PageState['game'] => begun(build, season, speed);

describe('a moment', () => {
  const at = (state: Partial<PageState>): Moment => {
    const moment = new Moment(TINTS.nitrate);
    moment.dt = 0.1;
    takeOver(moment, { ...page, ...state });
    return moment;
  };

  it('covers a share of any way in whole steps, and arrives from both sides', () => {
    const moment = at({});
    for (const way of [-300, -7, -1, 1, 7, 300]) {
      let left = way;
      let frames = 0;
      while (left !== 0 && frames < 100) {
        const part = moment.part(left);
        expect(Math.sign(part)).toBe(Math.sign(way));
        left -= part;
        frames += 1;
      }
      expect(frames).toBeLessThan(20);
    }
    expect(moment.part(0)).toBe(0);
    expect(at({ preferences: still }).part(-41)).toBe(-41);
  });

  it('has no season while building', () => {
    expect(at({}).view).toBe(season);
    expect(at({ game: build }).view).toBeNull();
  });

  it('lets bubbles rise at hours a second and holds them while days fly by', () => {
    expect(at({ game: atSpeed('hours6') }).gasTime).toBeCloseTo(0.1, 9);
    expect(at({ game: atSpeed('days5') }).gasTime).toBe(0);
    expect(at({ game: atSpeed('days5') }).time).toBeCloseTo(0.1, 9);
  });

  it('stands still for people who ask for less motion, and shows each value at once', () => {
    const moment = at({ preferences: still });
    expect([moment.time, moment.gasTime, moment.ease]).toEqual([0, 0, 1]);
  });
});

describe('a mark', () => {
  const bands: ComfortBand[] = [
    { applies: 'fish', variable: 'TAN_mgN_L', watchAbove: 2, actAbove: 4 },
    { applies: 'fish', variable: 'NH3_mgN_L', watchAbove: 0.05, actAbove: 0.2 },
    { applies: 'fish', variable: 'O2_mg_L', watchBelow: 5, actBelow: 3 },
    { applies: 'roots', variable: 'O2_mg_L', watchBelow: 4 },
  ];
  const NAMES = ['TAN_mgN_L', 'NH3_mgN_L', 'O2_mg_L', 'H2S_ug_L'];
  const places = new Map(NAMES.map((name, i) => [name, i]));
  const at = (values: Record<string, number>): Float64Array => Float64Array.from(NAMES, (name) => values[name] ?? 0);
  const mark = (kind: string, judged: readonly string[], values: Record<string, number>): ReturnType<Limits['mark']> =>
    new Limits(bands, kind, judged, places).mark(at(values));

  it('is the worst of the quantities behind the tint', () => {
    expect(mark('fishTank', TINTS.ammonia.judged, { TAN_mgN_L: 1, NH3_mgN_L: 0.01 })).toBe('fine');
    expect(mark('fishTank', TINTS.ammonia.judged, { TAN_mgN_L: 3, NH3_mgN_L: 0.01 })).toBe('watch');
    expect(mark('fishTank', TINTS.ammonia.judged, { TAN_mgN_L: 1, NH3_mgN_L: 0.3 })).toBe('act');
  });

  it('follows who lives there: oxygen that troubles fish may suit roots', () => {
    expect(mark('fishTank', ['O2_mg_L'], { O2_mg_L: 4.5 })).toBe('watch');
    expect(mark('raftBed', ['O2_mg_L'], { O2_mg_L: 4.5 })).toBe('fine');
  });

  it('is the one that the panels show, at every limit and between', () => {
    for (let value = 0; value < 8; value += 0.05) {
      for (const band of bands) {
        const limits = new Limits([band], band.applies === 'fish' ? 'fishTank' : 'raftBed', [band.variable], places);
        expect(limits.mark(at({ [band.variable]: value }))).toBe(markAgainst(band, value));
      }
    }
    expect(new Limits([], 'fishTank', ['O2_mg_L'], places).mark(at({}))).toBeNull();
  });

  it('is not set where nobody lives, however high the value', () => {
    expect(mark('radialFlowSettler', TINTS.ammonia.judged, { TAN_mgN_L: 90 })).toBeNull();
  });

  it('of distress rises from the watch limit to the act limit', () => {
    const distress = (variable: string, size: number, value: number): number =>
      distressAt(fishDistress(bands, variable, size), Math.round(value / size));
    expect([8, 5, 4, 3, 1, -2].map((O2) => distress('O2_mg_L', 0.1, O2))).toEqual([0, 0, 50, 100, 100, 100]);
    expect([1, 3, 9, 900].map((TAN) => distress('TAN_mgN_L', 0.1, TAN))).toEqual([0, 50, 100, 100]);
    expect(distress('H2S_ug_L', 0.1, 50)).toBe(0);
  });
});

describe('the colour of a water', () => {
  it('slides to the band that it is told, without leaving the way, and stays there', () => {
    const moment = new Moment(TINTS.nitrate);
    moment.dt = 0.05;
    takeOver(moment, page);
    const colour = new BandColour();
    for (const band of [8, 0, 5, 5, 2]) {
      const goal = WATER_BANDS[band];
      const red = (tint: number): number => tint >> 16;
      let before = Math.abs(red(colour.tint) - red(goal));
      for (let frames = 0; frames < 200; frames += 1) {
        colour.towards(band, moment);
        const off = Math.abs(red(colour.tint) - red(goal));
        expect(off).toBeLessThanOrEqual(before);
        before = off;
      }
      expect(colour.tint).toBe(goal);
      expect(colour.towards(band, moment)).toBe(false);
    }
  });
});
