// Where a loop stands in the picture.
import { describe, expect, it } from 'vitest';
import type { Plan } from '../../../src/season/plan';
import { aeratedStages } from '../../../src/page/picture/scene/aerated';
import { WALL } from '../../../src/page/picture/kit/boxes';
import { layOut, screenOrder, type WorldLayout } from '../../../src/page/picture/scene/layout';
import { designOf, loopOf } from './loops';

function laid(aspect: number, ...ids: string[]): WorldLayout {
  const loop = loopOf(...ids);
  const layout = layOut({
    design: designOf(loop),
    loop,
    side: [{ id: 'base', kind: 'baseDosing', into: 'sump', base: 'Ca(OH)2', g_d: 20, targetPH: 7 }],
    aspect,
  });
  if (layout === null) throw new Error('no layout');
  return layout;
}

const FULL = ['fish', 'settler', 'mats', 'degas', 'rafts', 'sump', 'pump'];

describe('the order on screen', () => {
  it('follows the water from the fish tank to the sump', () => {
    expect(laid(2, ...FULL).stages.map((box) => box.id)).toEqual(['fish', 'settler', 'mats', 'degas', 'rafts', 'sump']);
  });

  it('puts what the pump feeds to the far left, ahead of the fish tank', () => {
    const loop = loopOf('fish', 'rafts', 'sump', 'pump', 'settler', 'degas');
    expect(screenOrder(loop).map((i) => loop[i].id)).toEqual(['settler', 'degas', 'fish', 'rafts', 'sump']);
  });

  it('stands what the pump feeds above the level of the fish tank', () => {
    const { stages } = laid(2, 'fish', 'rafts', 'sump', 'pump', 'settler');
    const [settler, fish] = stages;
    expect(settler.id).toBe('settler');
    expect(settler.level).toBeLessThan(fish.level);
  });
});

describe('heights', () => {
  it('are true to the levels of the design', () => {
    const loop = loopOf(...FULL);
    const design = designOf(loop);
    const { stages, unitsPerM } = laid(2, ...FULL);
    for (const box of stages) {
      const stage = design.stages.find((one) => one.id === box.id);
      expect(box.level).toBeCloseTo(-(stage?.level_m ?? NaN) * unitsPerM, 9);
      expect(box.floor - box.level).toBeCloseTo((stage?.depth_m ?? NaN) * unitsPerM, 9);
    }
  });

  it('show a fall of 5 cm as a visible step downwards', () => {
    const { stages, unitsPerM } = laid(2, ...FULL);
    for (let i = 0; i + 2 < stages.length; i += 1) expect(stages[i + 1].level - stages[i].level).toBeCloseTo(0.05 * unitsPerM, 9);
  });

  it('stand taller in a taller view, all alike, and still fit it', () => {
    const low = laid(2.4, ...FULL);
    const high = laid(1.2, ...FULL);
    expect(high.unitsPerM).toBeGreaterThan(low.unitsPerM * 1.2);
    expect(high.bottom - high.top).toBeLessThanOrEqual(high.width / 1.2 + 1e-6);
    expect((high.stages[4].level - high.stages[0].level) / (low.stages[4].level - low.stages[0].level)).toBeCloseTo(
      high.unitsPerM / low.unitsPerM,
      9,
    );
  });

  it("leave room for a settler's valve over the ground", () => {
    const loop = loopOf('fish', 'settler', 'sump', 'pump');
    const design = designOf(loop);
    const stages = design.stages.map((stage) =>
      stage.id === 'settler' ? { ...stage, floor_m: 0.02, depth_m: stage.level_m - 0.02 } : stage,
    );
    const settler = layOut({ design: { ...design, stages }, loop, side: [], aspect: 2 })?.stages[1];
    expect(settler?.floor).toBeLessThan(-27);
  });

  it('keep every rim above its water and the sump in a pit', () => {
    for (const box of laid(2, ...FULL).stages) {
      expect(box.rim).toBeLessThan(box.level);
      expect(box.stand === 'pit').toBe(box.kind === 'sump');
    }
  });
});

describe('widths', () => {
  for (const aspect of [1.2, 1.6, 2.1, 3]) {
    it(`fit the whole loop into a view of ${aspect} to 1`, () => {
      for (const ids of [FULL, ['fish', 'sump', 'pump'], ['fish', 'sump', 'pump', 'settler', 'mats', 'degas', 'rafts']]) {
        const { stages, width, top, bottom } = laid(aspect, ...ids);
        expect(width / aspect).toBeGreaterThanOrEqual(bottom - top - 1e-6);
        let right = 34;
        for (const box of stages) {
          expect(box.x - WALL).toBeGreaterThan(right + 20);
          right = box.x + box.w + WALL;
        }
        expect(right).toBeLessThan(width);
      }
    });
  }
});

describe('pipes', () => {
  it('join each stage to the next, and the pump to the first', () => {
    const pairs = laid(2, ...FULL).pipes.map((run) => `${run.from} ${run.to}`);
    expect(pairs).toEqual(['fish settler', 'settler mats', 'mats degas', 'degas rafts', 'rafts sump', 'sump fish']);
  });

  it('let what the pump feeds pour back into the fish tank', () => {
    const pairs = laid(2, 'fish', 'sump', 'pump', 'settler').pipes.map((run) => `${run.from} ${run.to}`);
    expect(pairs).toContain('settler fish');
    expect(pairs).toContain('sump settler');
    expect(pairs).not.toContain('sump fish');
  });

  it('run level or upright only, and the return lies under the ground', () => {
    const { pipes, stages } = laid(2, ...FULL);
    for (const { points } of pipes)
      for (let i = 2; i < points.length; i += 2) expect(points[i] === points[i - 2] || points[i + 1] === points[i - 1]).toBe(true);
    const back = pipes[pipes.length - 1].points.filter((_, i) => i % 2 === 1);
    expect(Math.max(...back)).toBeGreaterThan(Math.max(...stages.map((box) => box.floor)));
  });
});

describe('air', () => {
  it('is led to every stage that gets some, from the start or later', () => {
    const plan = {
      loop: loopOf('fish', 'mats', 'sump', 'pump'),
      actions: [
        { day: 3, do: 'air', stage: 'sump', L_min: 5 },
        { day: 4, do: 'air', stage: 'mats', L_min: 0 },
      ],
    } as unknown as Plan;
    expect([...aeratedStages(plan)]).toEqual(['fish', 'sump']);
  });
});

describe('the design and the loop', () => {
  it('no picture is made while the design does not know a stage yet', () => {
    const loop = loopOf(...FULL);
    expect(layOut({ design: designOf(loopOf('fish', 'sump', 'pump')), loop, side: [], aspect: 2 })).toBeNull();
  });

  it('the pump stands in the tank ahead of it, and the dosing tank over the tank it drips into', () => {
    const { pump, sides, stages } = laid(2, ...FULL);
    const sump = stages[stages.length - 1];
    expect(pump?.host).toBe('sump');
    expect(sides[0].floor).toBeLessThan(sump.rim);
    expect(sides[0].x).toBeGreaterThan(sump.x);
    expect(sides[0].x + sides[0].w).toBeLessThan(sump.x + sump.w);
  });
});
