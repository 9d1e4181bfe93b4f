// What coats, warmth and still water leave of the oxygen at roots. The ordering is common practice (no source): solids on roots smother
// them, air and cool water mend it. The formula by hand: what comes through still layer and coat is what is breathed at the surface.
import { describe, expect, it } from 'vitest';
import { LEAF, MS, STATES } from '../../src/model/components';
import { breathHealth, breathOf, type RootBreath } from '../../src/model/processes/roots';
import { kineticsAt } from '../../src/model/processes/kineticsAt';
import { valuesWith } from '../../src/catalogue/values';

interface Bed {
  T_C: number;
  O2: number;
  /** m/d through the still layer */
  transfer: number;
  /** g dry/m² of bed */
  coat: number;
  leaf?: number;
}

function breath({ T_C, O2, transfer, coat, leaf = 220 }: Bed): RootBreath & { health: number } {
  const kinetics = kineticsAt(valuesWith(), T_C);
  const y = new Float64Array(STATES);
  y[LEAF] = leaf;
  y[MS] = coat / kinetics.organicDry;
  const into = { surface: 0, share: 0, rise: 0, area: 0, coat: 0 };
  breathOf(y, 0, kinetics, { floor: 1, mediaArea: 0, rootTransfer: transfer }, O2, into);
  return { ...into, health: breathHealth(into.share, kinetics) };
}
const healths = (bed: Omit<Bed, 'coat'>): number[] => [0, 5, 10, 20].map((coat) => breath({ ...bed, coat }).health);

describe('oxygen at roots', () => {
  it('is what comes through the still layer against what is breathed, by hand', () => {
    // 28 °C, bare roots: 0.09 g/g/d × 1.07⁸ over 0.12 m²/g, through 0.3 m/d from 4 mg/L
    const breathed = (0.09 * 1.07 ** 8) / 0.12;
    const { surface, share, area } = breath({ T_C: 28, O2: 4, transfer: 0.3, coat: 0 });
    expect(area).toBeCloseTo(220 * 0.15 * 0.12, 9);
    expect(0.3 * (4 - surface)).toBeCloseTo(breathed * share, 9);
    expect(share).toBeCloseTo(surface / (0.3 + surface), 12);
  });

  it('rises with the oxygen of the water as it is said to', () => {
    for (const coat of [0, 5, 20])
      for (const O2 of [0.5, 2, 5]) {
        const at = (oxygen: number): number => breath({ T_C: 26, O2: oxygen, transfer: 0.3, coat }).share;
        expect(breath({ T_C: 26, O2, transfer: 0.3, coat }).rise).toBeCloseTo((at(O2 + 1e-4) - at(O2 - 1e-4)) / 2e-4, 5);
      }
  });

  it('suffices whatever the coat where water is cool and moves, or warm, aired and near saturation', () => {
    for (const health of healths({ T_C: 18, O2: 8, transfer: 0.8 })) expect(health).toBeGreaterThan(0.97);
    for (const health of healths({ T_C: 28, O2: 6, transfer: 0.8 })) expect(health).toBeGreaterThan(0.9);
  });

  it('falls short under a coat in warm, slow water, and without one where the water is still and poor', () => {
    const slow = healths({ T_C: 28, O2: 4, transfer: 0.3 });
    const still = healths({ T_C: 28, O2: 3, transfer: 0.2 });
    for (const row of [slow, still]) expect([...row].sort((a, b) => b - a)).toEqual(row);
    expect(slow[0]).toBeGreaterThan(0.9);
    expect(slow[3]).toBeLessThan(0.6);
    expect(still[0]).toBeLessThan(0.7);
    slow.forEach((health, i) => expect(health).toBeGreaterThan(still[i]));
  });

  it('is shorter for a young plant under the same coat', () => {
    const under = (leaf: number): number => breath({ T_C: 27, O2: 5, transfer: 0.3, coat: 5, leaf }).share;
    expect(under(10)).toBeLessThan(under(300));
  });

  it('turns into health without a jump or a kink', () => {
    const kinetics = kineticsAt(valuesWith(), 25);
    const shares = Array.from({ length: 401 }, (_, i) => i / 400);
    const health = shares.map((share) => breathHealth(share, kinetics));
    health.slice(1).forEach((value, i) => expect(value - health[i]).toBeGreaterThanOrEqual(0));
    const slopes = health.slice(1).map((value, i) => (value - health[i]) * 400);
    slopes.slice(1).forEach((slope, i) => expect(Math.abs(slope - slopes[i])).toBeLessThan(0.08));
    expect(health[400]).toBe(1);
  });
});
