// Levels of a running loop: over the lips, backed up, spilling at the rim.
import { describe, expect, it } from 'vitest';
import type { LevelStage } from '../../../src/model/hydraulics/levels';
import { runningLevels } from '../../../src/model/hydraulics/levels';
import { headLoss_m, headOverLip_m, usualLink } from '../../../src/model/hydraulics/pipe';
import { RECORDED } from '../../../src/catalogue/values';

const { hydraulics: h } = RECORDED;

const FLOW = 24;
const LIP = Math.PI * 0.075;
const linkLoss_m = (flow: number): number => headLoss_m(flow, usualLink(h), 24, h);
const head = headOverLip_m(FLOW, LIP, h);
const need = linkLoss_m(FLOW);
const tank = (overflow_m: number, freeboard = 0.1): LevelStage => ({
  overflow_m,
  rim_m: overflow_m + freeboard,
  area_m2: 1,
  lip_m: LIP,
  linkLoss_m,
});
const sump = (level_m = 0.2): LevelStage => ({ ...tank(level_m, 0.4), linkLoss_m: () => 0 });
const narrow = (stage: LevelStage, diameter_m: number): LevelStage => ({
  ...stage,
  linkLoss_m: (flow) => headLoss_m(flow, usualLink(h, diameter_m), 24, h),
});
/** Stages falling 5 cm each, the second one set off from its place. */
const loop = (off = 0, freeboard = 0.1): LevelStage[] => [tank(0.9, freeboard), tank(0.85 + off), tank(0.8), sump()];

describe('a loop with enough fall', () => {
  it('stands everywhere at its lip and the head over it, and passes all', () => {
    const { level_m, passes, spill_m3_d, short_m } = runningLevels(loop(), FLOW, h);
    [0.9, 0.85, 0.8].forEach((lip, i) => {
      expect(level_m[i]).toBeCloseTo(lip + head, 12);
    });
    expect(level_m[3]).toBe(0.2);
    expect(passes).toEqual([1, 1, 1, 1]);
    expect(spill_m3_d).toEqual([0, 0, 0, 0]);
    expect(short_m).toEqual([0, 0, 0, 0]);
  });

  it('stands higher when more flows', () => {
    const [little, much] = [runningLevels(loop(), 6, h), runningLevels(loop(), 48, h)];
    [0, 1, 2].forEach((i) => {
      expect(much.level_m[i]).toBeGreaterThan(little.level_m[i] + 0.004);
    });
  });

  it('stands at its lips when nothing flows', () => {
    expect(runningLevels(loop(), 0, h).level_m).toEqual([0.9, 0.85, 0.8, 0.2]);
  });
});

describe('a link with too little fall', () => {
  it('backs the water up and still passes it, where the rim is high enough', () => {
    const { level_m, passes, short_m } = runningLevels(loop(0.05 - need + 0.03), FLOW, h);
    expect(level_m[0]).toBeCloseTo(0.9 + head + 0.03, 9);
    expect(passes).toEqual([1, 1, 1, 1]);
    expect(short_m[0]).toBeCloseTo(0.03, 9);
    expect(short_m.slice(1)).toEqual([0, 0, 0]);
  });

  it('stands above one whose lip lies over its own rim as above a full tank, which spills what comes', () => {
    const stages = loop(0, 0.05 + need / 2);
    stages[1] = { ...stages[1], overflow_m: stages[1].rim_m + 0.2 };
    const { level_m, arriving_m3_d, spill_m3_d } = runningLevels(stages, FLOW, h);
    expect(level_m[1]).toBe(stages[1].rim_m);
    expect(arriving_m3_d[2]).toBe(0);
    expect(spill_m3_d[1]).toBe(arriving_m3_d[1]);
    expect(spill_m3_d[0] + spill_m3_d[1]).toBeCloseTo(FLOW, 9);
    // What the fall between the two rims carries goes over.
    expect(arriving_m3_d[1]).toBeGreaterThan(1);
    expect(arriving_m3_d[1]).toBeLessThan(FLOW);
    expect(stages[1].rim_m + linkLoss_m(arriving_m3_d[1])).toBeCloseTo(stages[0].rim_m, 9);
  });

  it('3 cm short under a rim of 3 cm, backs up and spills at its own rim and nowhere else', () => {
    const stages = loop(0.05 - need + 0.03, 0.03);
    const { level_m, spill_m3_d, passes, short_m } = runningLevels(stages, FLOW, h);
    expect(level_m[0]).toBe(stages[0].rim_m);
    expect(spill_m3_d[0]).toBeGreaterThan(1);
    expect(spill_m3_d.slice(1)).toEqual([0, 0, 0]);
    expect(passes[0]).toBeLessThan(1);
    expect(passes[0]).toBeGreaterThan(0);
    expect(short_m[0]).toBeCloseTo(0.03, 9);
    // What goes on is just what the fall from the rim carries.
    const passing = FLOW * passes[0];
    expect(level_m[1] + linkLoss_m(passing)).toBeCloseTo(stages[0].rim_m, 9);
  });

  it('uphill of its rim passes nothing, and what comes after gets none', () => {
    const { passes, spill_m3_d, arriving_m3_d, level_m } = runningLevels(loop(0.3), FLOW, h);
    expect(passes[0]).toBe(0);
    expect(spill_m3_d[0]).toBe(FLOW);
    expect(arriving_m3_d).toEqual([FLOW, 0, 0, 0]);
    expect(level_m[2]).toBe(0.8);
  });

  it('too narrow a pipe backs up like too little fall', () => {
    const [first, ...rest] = loop();
    const { level_m, short_m } = runningLevels([narrow(first, 0.025), ...rest], FLOW, h);
    expect(level_m[0]).toBeGreaterThan(0.9 + head + 0.01);
    expect(short_m[0]).toBeGreaterThan(0.01);
  });

  it('backs up the stage before it too, but only the link at fault is called short', () => {
    const [first, second, ...rest] = loop();
    const { level_m, short_m } = runningLevels([first, { ...narrow(second, 0.022), rim_m: 1.2 }, ...rest], FLOW, h);
    expect(level_m[1]).toBeGreaterThan(0.9);
    expect(level_m[0]).toBeCloseTo(level_m[1] + need, 9);
    expect(short_m[0]).toBe(0);
    expect(short_m[1]).toBeGreaterThan(0.03);
  });
});

describe('several faults at once', () => {
  const stages = [tank(0.9, 0.15), narrow(tank(0.88, 0.07), 0.04), narrow(tank(0.86, 0.04), 0.03), sump(0.8)];

  it('lose no water: what the pump gives is what reaches its tank and what spills', () => {
    expect(runningLevels(stages, 96, h).spill_m3_d.filter((spill) => spill > 1).length).toBeGreaterThan(1);
    for (const flow of [1, 6, 24, 48, 96]) {
      const { spill_m3_d, arriving_m3_d } = runningLevels(stages, flow, h);
      expect(arriving_m3_d[3] + spill_m3_d.reduce((a, b) => a + b)).toBeCloseTo(flow, 9);
    }
  });

  it('never stand above a rim nor below a lip', () => {
    for (let flow = 0; flow < 200; flow += 7) {
      runningLevels(stages, flow, h).level_m.forEach((level, i) => {
        expect(level).toBeLessThanOrEqual(stages[i].rim_m);
        expect(level).toBeGreaterThanOrEqual(stages[i].overflow_m);
      });
    }
  });

  it('a higher sump never lets more through', () => {
    let before = Infinity;
    for (let level = 0.5; level <= 1.1; level += 0.05) {
      const reaching = runningLevels([...stages.slice(0, 3), { ...sump(level), rim_m: 2 }], 60, h).arriving_m3_d[3];
      expect(reaching).toBeLessThanOrEqual(before + 1e-9);
      before = reaching;
    }
    expect(before).toBe(0);
  });
});
