// What moving parts read off the season agrees with what the panels read, for any stage, variable, cell and hour; the tint is coloured by
// it.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { VARIABLES } from '../../../src/season/trajectory';
import { TINTS, type Tint } from '../../../src/page/state/common/tints';
import { addsUp, readingAt } from '../../../src/page/state/run/readings';
import type { SeasonView } from '../../../src/page/state/common/state';
import { Dials, LAST, NO_FIGURE, TRACE } from '../../../src/page/picture/kit/dials';
import { seasonOf } from './loops';

const STAGES = [
  { id: 'fish', kind: 'fishTank', cells: 1 },
  { id: 'rafts', kind: 'raftBed', cells: 3 },
  { id: 'sump', kind: 'sump', cells: 1 },
  { id: 'pump', kind: 'returnPump', cells: 0 },
];
/** Nitrate tells cell and hour; coarse and fine solids tell themselves apart; the rest is a mixture. */
const rule = (variable: string, cell: number, sample: number): number =>
  variable === 'NO3_mgN_L'
    ? 100 * cell + sample
    : variable === 'solidsCoarse_mg_L'
      ? 8
      : variable === 'solidsFine_mg_L'
        ? 3
        : variable.length + 2 * cell + Math.sin(sample);
const season = seasonOf(STAGES, rule);
const at = (now_h: number, tint: Tint = TINTS.nitrate, view: SeasonView | null = season) => ({ view, tint, now_h });

describe('dials', () => {
  it('tell what the panels tell', () => {
    const dials = new Dials(addsUp);
    const wishes = STAGES.flatMap(({ id }) =>
      [...VARIABLES, 'solids'].map((variable) => ({ id, variable, place: dials.want(id, variable, NaN) })),
    );
    fc.assert(
      fc.property(fc.double({ min: -3, max: 30, noNaN: true }), (now_h) => {
        dials.take(at(now_h));
        for (const { id, variable, place } of wishes) {
          const told = readingAt(season, id, variable, now_h, 'inside');
          if (Number.isNaN(told)) expect(dials.at[place]).toBeNaN();
          else expect(dials.at[place]).toBeCloseTo(told, 4);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('tell the cells of a bed apart, from inlet to outlet', () => {
    const dials = new Dials(addsUp);
    const places = [0, 1, 2].map((cell) => dials.want('rafts', 'NO3_mgN_L', 0, cell));
    dials.take(at(2));
    expect(places.map((place) => dials.at[place])).toEqual([102, 202, 302]);
  });

  it('answer otherwise where no season tells, and again after one has gone', () => {
    const dials = new Dials(addsUp);
    const [known, unknown] = [dials.want('fish', 'NO3_mgN_L', 7), dials.want('nowhere', 'NO3_mgN_L', 9)];
    expect(dials.at[known]).toBe(7);
    dials.take(at(5));
    expect([dials.at[known], dials.at[unknown]]).toEqual([5, 9]);
    dials.take(at(5, TINTS.nitrate, null));
    expect(dials.at[known]).toBe(7);
  });

  it('give the same place to the same wish, and room to any number of wishes', () => {
    const dials = new Dials(addsUp);
    const first = dials.want('fish', 'O2_mg_L', 0);
    for (let i = 0; i < 300; i += 1) dials.want(`stage ${i}`, 'O2_mg_L', i);
    expect(dials.want('fish', 'O2_mg_L', 0)).toBe(first);
    dials.take(at(1));
    expect(dials.at[dials.want('stage 299', 'O2_mg_L', 299)]).toBe(299);
  });
});

describe('steps', () => {
  it('are whole, follow the reading, and tell what stands otherwise where no season tells', () => {
    const dials = new Dials(addsUp);
    const place = dials.want('rafts', 'NO3_mgN_L', 30, 0);
    const [tens, quarters] = [dials.step(place, 10), dials.step(place, 0.25)];
    expect([dials.steps[tens], dials.steps[quarters]]).toEqual([3, 120]);
    dials.take(at(7));
    expect([dials.steps[tens], dials.steps[quarters]]).toEqual([11, 428]);
    dials.take(at(7, TINTS.nitrate, null));
    expect([dials.steps[tens], dials.steps[quarters]]).toEqual([3, 120]);
  });

  it('are given once for the same reading and size, and to any number of readings', () => {
    const dials = new Dials(addsUp);
    const first = dials.inSteps('fish', 'NO3_mgN_L', 0, 2);
    for (let i = 0; i < 200; i += 1) dials.inSteps(`stage ${i}`, 'O2_mg_L', i, 1);
    expect(dials.inSteps('fish', 'NO3_mgN_L', 0, 2)).toBe(first);
    dials.take(at(8));
    expect(dials.steps[first]).toBe(4);
    expect(dials.steps[dials.inSteps('stage 199', 'O2_mg_L', 199, 1)]).toBe(199);
  });
});

describe('figures', () => {
  const shown = (value: number, decimals: number): number => {
    const dials = new Dials(addsUp);
    const place = dials.water('fish');
    dials.take(
      at(
        1,
        { ...TINTS.nitrate, decimals },
        seasonOf(STAGES, () => value),
      ),
    );
    return dials.figures[place];
  };

  it('are what the tint shows in units of its last decimal', () => {
    expect([shown(12.34, 1), shown(12.36, 0), shown(0, 1)]).toEqual([123, 12, 0]);
  });

  it('tell a trace from nothing, and nothing measured from both', () => {
    expect([shown(0.01, 1), shown(0.06, 1)]).toEqual([TRACE, 1]);
    expect(shown(NaN, 1)).toBe(NO_FIGURE);
    const dials = new Dials(addsUp);
    expect(dials.figures[dials.water('fish')]).toBe(NO_FIGURE);
  });
});

describe('water', () => {
  it('is coloured in each cell by what the tint shows there, and stays in the last band past its ends', () => {
    const dials = new Dials(addsUp);
    const cells = [0, 1, 2, LAST].map((cell) => dials.water('rafts', cell));
    dials.take(at(0));
    expect(cells.map((place) => dials.shown[place])).toEqual([100, 200, 300, 300]);
    expect(cells.map((place) => dials.bands[place])).toEqual([7, 8, 8, 8]);
    dials.take(at(0, { ...TINTS.nitrate, low: 100, high: 300 }));
    expect(cells.map((place) => dials.bands[place])).toEqual([0, 4, 8, 8]);
  });

  it('shows coarse and fine solids as one', () => {
    const dials = new Dials(addsUp);
    const whole = dials.water('rafts');
    dials.take(at(3, TINTS.solids));
    expect(dials.shown[whole]).toBe(11);
  });

  it('is pale and without a number while nothing is measured', () => {
    const dials = new Dials(addsUp);
    const fish = dials.water('fish', 0);
    for (const view of [season, null]) {
      dials.take(at(9, TINTS.nitrate, view));
      expect(Number.isNaN(dials.shown[fish])).toBe(view === null);
    }
    expect(dials.bands[fish]).toBe(1);
  });
});
