// How long oxygen lasts when the air fails. Tilapia of 100 g at 28 °C take 227 mg/kg/h (Ali 1999 as quoted by Khater et al., secondary), so
// that water at 20 kg/m³ goes from 6 to 2 mg/L in 53 minutes, at 10 in 106; fed fish 1.3–2 times faster: derived.
import { describe, expect, it } from 'vitest';
import { afterAirFailure } from './fishCases';

const THIN = 5; // kg/m³: few enough that oxygen does not run short within the hour
/** mg O2/kg/h in the first hour after the failure, two hours after a meal, at a share of body mass fed each day. */
const respiration = (share: number): number => {
  const [before, after] = afterAirFailure(THIN, share * 1000 * THIN);
  return (1000 * (before - after)) / THIN;
};
/** Minutes from 6 to 2 mg/L at that rate. */
const minutes = (mg_kg_h: number, kg_m3: number): number => (60 * 4) / ((mg_kg_h / 1000) * kg_m3);

describe('tilapia whose air has failed', () => {
  it('have 53 minutes at 20 kg/m³ and 106 at 10, by the published rate', () => {
    expect(Math.abs(minutes(227, 20) - 53)).toBeLessThan(0.5);
    expect(Math.abs(minutes(227, 10) - 106)).toBeLessThan(0.5);
  });

  it('have longer than that when fasting and less when fed a hundredth of their mass', () => {
    // The model at 20 kg/m³: 146 minutes fasting, 53 fed 0.5 %/d, 32 fed 1 %/d, 17 fed 2 %/d.
    expect(minutes(respiration(0), 20)).toBeGreaterThan(53);
    expect(minutes(respiration(0.01), 20)).toBeLessThan(53);
  });

  it('breathe 1.3 to 2 times the published rate when fed a hundredth, and more when fed two', () => {
    // FAO 589: 1–2 %/d. The model: 374 mg/kg/h at 1 %, 688 at 2 %, above what is published for fed fish (295–454); 82 fasting, far below
    // 227.
    expect(respiration(0.01) / 227).toBeGreaterThan(1.3);
    expect(respiration(0.01) / 227).toBeLessThan(2);
    expect(respiration(0.02)).toBeGreaterThan(respiration(0.01));
  });

  it('at 20 kg/m³ and fed a hundredth are past 2 mg/L within the hour; those that fasted are not', () => {
    expect(afterAirFailure(20, 200)[1]).toBeLessThan(2);
    expect(afterAirFailure(20, 0)[1]).toBeGreaterThan(4);
  });

  it('have the less time the more of them there are', () => {
    const after = [5, 10, 20, 30].map((kg_m3) => afterAirFailure(kg_m3, 0)[2]);
    expect([...after].sort((a, b) => b - a)).toEqual(after);
  });
});
