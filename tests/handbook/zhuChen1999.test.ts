// Zhu S., Chen S. 1999, An experimental study on nitrification biofilm performances using a series reactor system,
// Aquacult. Eng. 20:245–259 (fit as in its abstract): R = 1859 (S − 0.07)/(S + 1.93) mg TAN/m²/d at 27.2 °C and ample oxygen.
// Our answer is what a mature film in a media tank takes at rest, not the rate law; tolerance 15 %.
import { describe, expect, it } from 'vitest';
import { Season } from '../../src/season/season';
import { course } from '../season/courses';
import { keptPlan } from '../season/plans';
import { VARIABLES } from '../../src/season/trajectory';
import type { DayChunk } from '../../src/season/trajectory';

const TOLERANCE = 0.15;
const fit = (S: number): number => (1859 * (S - 0.07)) / (S + 1.93) / 1000;

/** Ammonia taken at rest, g N/m²/d, and the concentration in the tank, g N/m³, for one concentration of the inflow. */
function atRest(inflow: number): { S: number; rate: number } {
  const kept = keptPlan('nitrification-rig');
  // much water over little film: the tank stands near what flows in
  const plan = { ...kept, days: 80, loop: [{ ...kept.loop[0], volume_m3: 0.1, media_m3: 0.02, air_L_min: 0 }], rig: kept.rig && { ...kept.rig, flow_m3_d: 24, inflow: { ...kept.rig.inflow, TAN_mgN_L: inflow } } };
  const season = new Season(plan);
  const days: DayChunk[] = [];
  while (season.day < plan.days) days.push(season.liveDay());
  const S = course({ stages: season.stages(), cells: 1, variables: [...VARIABLES], processNames: [], initial: new Float32Array(0), days, summary: season.summary() }, 'media', 'TAN_mgN_L').at(-1) ?? NaN;
  return { S, rate: (24 * (inflow - S)) / season.runtime.assembly.cells[0].film };
}

describe('a mature nitrifying film at 27.2 °C', () => {
  it.each([0.5, 1, 2, 5, 10])('takes what was measured near %f mg/L of ammonia nitrogen', (target) => {
    // inflow that leaves about the target in the tank, by the published rate
    const film = 12.5;
    const { S, rate } = atRest(target + (fit(target) * film) / 24);
    expect(Math.abs(rate / fit(S) - 1), `${rate.toFixed(3)} against ${fit(S).toFixed(3)} g/m²/d at ${S.toFixed(2)} mg/L`).toBeLessThan(TOLERANCE);
  });
});
