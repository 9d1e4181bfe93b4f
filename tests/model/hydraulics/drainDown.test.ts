// A stop of the pump: what runs down, and whether the pump's tank holds it.
import { describe, expect, it } from 'vitest';
import { drainDown_m3, stopOfPump, sumpLacks_m3 } from '../../../src/model/hydraulics/drainDown';
import type { LevelStage } from '../../../src/model/hydraulics/levels';
import { runningLevels } from '../../../src/model/hydraulics/levels';
import { headLoss_m, headOverLip_m, usualLink } from '../../../src/model/hydraulics/pipe';
import { RECORDED } from '../../../src/catalogue/values';

const { hydraulics: h } = RECORDED;

const FLOW = 24;
const LIP = Math.PI * 0.075;
const stage = (overflow_m: number, area_m2: number, freeboard = 0.1): LevelStage => ({
  overflow_m,
  rim_m: overflow_m + freeboard,
  area_m2,
  lip_m: LIP,
  linkLoss_m: (flow) => headLoss_m(flow, usualLink(h), 24, h),
});
const loop = (sumpFreeboard: number): LevelStage[] => [stage(0.9, 1.1), stage(0.85, 0.3), stage(0.8, 3), stage(0.2, 0.65, sumpFreeboard)];
const stop = (stages: LevelStage[], pipes = 0.005): ReturnType<typeof stopOfPump> =>
  stopOfPump(stages, runningLevels(stages, FLOW, h).level_m, pipes);

describe('when the pump stops', () => {
  it('what stood over the lips falls to the sump, and what the pipes held', () => {
    const { falls_m3, rest_m, level_m } = stop(loop(0.3));
    expect(falls_m3).toBeCloseTo((1.1 + 0.3 + 3) * headOverLip_m(FLOW, LIP, h) + 0.005, 10);
    expect(rest_m.slice(0, 3)).toEqual([0.9, 0.85, 0.8]);
    expect(level_m).toBeCloseTo(0.2 + falls_m3 / 0.65, 10);
  });

  it('a sump with room holds it all', () => {
    const { holds, spills_m3 } = stop(loop(0.3));
    expect(holds).toBe(true);
    expect(spills_m3).toBe(0);
  });

  it('a sump filled to 2 cm below its rim spills what it has no room for', () => {
    const { holds, spills_m3, falls_m3, free_m3, level_m } = stop(loop(0.02));
    expect(holds).toBe(false);
    expect(free_m3).toBeCloseTo(0.013, 12);
    expect(spills_m3).toBeCloseTo(falls_m3 - 0.013, 12);
    expect(level_m).toBeCloseTo(0.22, 12);
  });

  it('a wider bed sends more down than a narrow one', () => {
    const wide = loop(0.5);
    wide[2] = { ...wide[2], area_m2: 12 };
    expect(stop(wide).falls_m3).toBeGreaterThan(2 * stop(loop(0.5)).falls_m3);
  });

  it('water behind a tank that stands higher stays where it is', () => {
    const stages = [stage(0.9, 1), stage(0.95, 1), stage(0.8, 1), stage(0.2, 1, 0.4)];
    const { rest_m, falls_m3 } = stop(stages, 0);
    expect(rest_m[0]).toBeCloseTo(0.95, 12);
    expect(falls_m3).toBeLessThan(0.05);
  });

  it('a loop that stood still sends down nothing', () => {
    expect(stopOfPump(loop(0.3), [0.9, 0.85, 0.8, 0.2], 0).falls_m3).toBe(0);
  });
});

describe('room for a sump', () => {
  it('a tank whose water stands below its lip gives nothing', () => {
    expect(drainDown_m3([{ area_m2: 1, above_m: -0.1, voids: 1 }], 0)).toBe(0);
  });

  it('is what falls and what the pump needs together', () => {
    expect(sumpLacks_m3(0.4, 0.3, 0.15)).toBeCloseTo(0.05, 12);
    expect(sumpLacks_m3(0.5, 0.3, 0.15)).toBe(0);
  });
});
