// Zhu S., Chen S. 1999, An experimental study on nitrification biofilm performances using a series reactor system,
// Aquacult. Eng. 20:245–259 (fit as in its abstract): R = 1859 (S − 0.07)/(S + 1.93) mg TAN/m²/d at 27.2 °C and ample oxygen.
// Our answer is what a mature film in a media tank takes at rest, not the rate law; tolerance 15 %.
import { describe, expect, it } from 'vitest';
import { atRest, fit } from './filmCases';

const TOLERANCE = 0.15;

describe('a mature nitrifying film at 27.2 °C', () => {
  it.each([0.5, 1, 2, 5, 10])('takes what was measured near %f mg/L of ammonia nitrogen', (target) => {
    // inflow that leaves about the target in the tank, by the published rate
    const film = 12.5;
    const { S, rate } = atRest(target + (fit(target) * film) / 24);
    expect(Math.abs(rate / fit(S) - 1), `${rate.toFixed(3)} against ${fit(S).toFixed(3)} g/m²/d at ${S.toFixed(2)} mg/L`).toBeLessThan(
      TOLERANCE,
    );
  });
});
