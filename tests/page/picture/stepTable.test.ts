// Numbers worked out beforehand are those that would be worked out now, and those that lie ready are not worked out again.
import { describe, expect, it } from 'vitest';
import { lightsOf, LightOfDay, CLOSED_SKY } from '../../../src/page/picture/weather/lightOfDay';
import { StepTable } from '../../../src/page/picture/kit/stepTable';

describe('numbers that lie ready', () => {
  it('are those of their steps, inside and outside of what was worked out', () => {
    const ready = new StepTable(-3, 5, (step) => step / 7);
    for (let step = -9; step <= 9; step += 1) expect(ready.at(step)).toBe(step / 7);
  });

  it('are worked out once', () => {
    let asked = 0;
    const ready = new StepTable(2, 4, (step) => {
      asked += 1;
      return step;
    });
    expect(asked).toBe(3);
    for (let step = 2; step <= 4; step += 1) ready.at(step);
    expect(asked).toBe(3);
    expect(ready.at(1)).toBe(1);
    expect(asked).toBe(4);
  });

  it('may be nothing, and are still found', () => {
    let asked = 0;
    const ready = new StepTable(0, 0, () => {
      asked += 1;
      return 0;
    });
    expect([ready.at(0), ready.at(0), asked]).toEqual([0, 0, 1]);
  });
});

describe('the lights of a day under every sky', () => {
  it('are worked out once for a length of day, one for each step of a closed sky', () => {
    const lights = lightsOf(13);
    expect(lights).toHaveLength(CLOSED_SKY + 1);
    expect(lightsOf(13)).toBe(lights);
    expect(lightsOf(9)).not.toBe(lights);
    expect(lights[7].wash).toEqual(new LightOfDay(13, 7).wash);
  });
});
