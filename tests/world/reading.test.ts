// What the picture reads out of a season, and the mark it earns.
import { describe, expect, it } from 'vitest';
import { LENSES } from '../../src/store/lenses';
import type { ComfortBand } from '../../src/worker/messages';
import { fishDistress, markOf } from '../../src/world/marks';
import { Moment } from '../../src/world/moment';
import { bandOf, cellValue, lensCell, lensValue } from '../../src/world/reading';
import type { PageState } from '../../src/store/state';
import { loopOf, seasonOf } from './loops';

const STAGES = [{ id: 'fish', kind: 'fishTank', cells: 1 }, { id: 'rafts', kind: 'raftBed', cells: 3 }, { id: 'sump', kind: 'sump', cells: 1 }];
/** Nitrate tells cell and hour; coarse and fine solids tell themselves apart. */
const season = seasonOf(STAGES, (variable, cell, sample) => (variable === 'NO3_mgN_L' ? 100 * cell + sample : variable === 'solidsCoarse_mg_L' ? 8 : variable === 'solidsFine_mg_L' ? 3 : 0));
const page = { season, mode: 'run', plan: { loop: loopOf('fish', 'rafts', 'sump', 'pump') }, comfort: [], lens: 'nitrate', now_h: 4, speed: 'paused', reducedMotion: false } as unknown as PageState;

describe('a moment', () => {
  const at = (state: Partial<PageState>): Moment => {
    const moment = new Moment();
    moment.take({ ...page, ...state }, 0.1);
    return moment;
  };

  it('reads the mean of the cells inside a stage', () => {
    expect(at({}).read('rafts', 'NO3_mgN_L', NaN)).toBeCloseTo(204, 4);
    expect(at({ now_h: 6.25 }).read('fish', 'NO3_mgN_L', NaN)).toBeCloseTo(6.25, 5);
  });

  it('tells no number while building: water is pale, and what is asked is answered by the design', () => {
    const building = at({ mode: 'build' });
    expect(building.read('fish', 'NO3_mgN_L', 7)).toBe(7);
    expect(building.shown('fish')).toBeNaN();
    expect(building.band('fish', 0)).toBe(1);
  });

  it('colours each cell of a bed by its own water', () => {
    expect([0, 1, 2].map((cell) => at({ now_h: 0 }).band('rafts', cell))).toEqual([7, 8, 8]);
  });

  it('lets bubbles rise at hours a second and holds them while days fly by', () => {
    expect(at({ speed: 'hours6' }).gasTime).toBeCloseTo(0.1, 9);
    expect(at({ speed: 'days5' }).gasTime).toBe(0);
    expect(at({ speed: 'days5' }).time).toBeCloseTo(0.1, 9);
  });

  it('stands still for people who ask for less motion, and shows each value at once', () => {
    const still = at({ reducedMotion: true });
    expect([still.time, still.gasTime, still.ease]).toEqual([0, 0, 1]);
  });
});

describe('a bed', () => {
  it('tells the cells of a bed apart, from inlet to outlet', () => {
    const bed = season.stages[1];
    expect([0, 1, 2].map((cell) => cellValue(season, bed, cell, 'NO3_mgN_L', 2))).toEqual([102, 202, 302]);
  });
});

describe('a lens', () => {
  it('shows coarse and fine solids as one', () => {
    expect(lensValue(season, LENSES.solids, 'fish', 3)).toBe(11);
    expect(lensCell(season, LENSES.solids, season.stages[1], 2, 3)).toBe(11);
  });

  it('colours by how much, and stays in the last band past its ends', () => {
    const { ammonia } = LENSES;
    expect([-1, ammonia.low, (ammonia.low + ammonia.high) / 2, ammonia.high, ammonia.high * 9].map((x) => bandOf(ammonia, x))).toEqual([0, 0, 4, 8, 8]);
  });
});

describe('a mark', () => {
  const bands: ComfortBand[] = [
    { applies: 'fish', variable: 'TAN_mgN_L', watchAbove: 2, actAbove: 4 },
    { applies: 'fish', variable: 'NH3_mgN_L', watchAbove: 0.05, actAbove: 0.2 },
    { applies: 'fish', variable: 'O2_mg_L', watchBelow: 5, actBelow: 3 },
    { applies: 'roots', variable: 'O2_mg_L', watchBelow: 4 },
  ];
  const at = (values: Record<string, number>) => (variable: string): number => values[variable] ?? 0;

  it('is the worst of the quantities behind the lens', () => {
    expect(markOf(bands, 'fishTank', LENSES.ammonia.judged, at({ TAN_mgN_L: 1, NH3_mgN_L: 0.01 }))).toBe('fine');
    expect(markOf(bands, 'fishTank', LENSES.ammonia.judged, at({ TAN_mgN_L: 3, NH3_mgN_L: 0.01 }))).toBe('watch');
    expect(markOf(bands, 'fishTank', LENSES.ammonia.judged, at({ TAN_mgN_L: 1, NH3_mgN_L: 0.3 }))).toBe('act');
  });

  it('follows who lives there: oxygen that troubles fish may suit roots', () => {
    expect(markOf(bands, 'fishTank', ['O2_mg_L'], at({ O2_mg_L: 4.5 }))).toBe('watch');
    expect(markOf(bands, 'raftBed', ['O2_mg_L'], at({ O2_mg_L: 4.5 }))).toBe('fine');
  });

  it('is not set where nobody lives, however high the value', () => {
    expect(markOf(bands, 'radialFlowSettler', LENSES.ammonia.judged, at({ TAN_mgN_L: 90 }))).toBeNull();
  });

  it('of distress rises from the watch limit to the act limit', () => {
    expect([8, 5, 4, 3, 1].map((O2) => fishDistress(bands, 'O2_mg_L', O2))).toEqual([0, 0, 0.5, 1, 1]);
    expect([1, 3, 9].map((TAN) => fishDistress(bands, 'TAN_mgN_L', TAN))).toEqual([0, 0.5, 1]);
    expect(fishDistress(bands, 'H2S_ug_L', 50)).toBe(0);
  });
});
