// Stokes' law for spheres in fresh water, with the Vogel form of viscosity and Tanaka's density (both from memory). Values worked out
// by hand from the equation: derived. Speeds seen in fish farms: Merino, World Aquaculture Society abstract; Chen et al. 2003.
import { describe, expect, it } from 'vitest';
import { stokesReynolds, stokesVelocity_m_d } from '../../src/model/solids/stokes';
import { RECORDED, valuesWith } from '../../src/catalogue/values';
import { apart } from './answers';

const { hydraulics: h } = RECORDED;

/** id, °C, µm, kg/m³, m/d, Reynolds number */
const TABLE: [string, number, number, number, number, number][] = [
  ['SET-01', 15, 50, 1050, 5.27, 0.003],
  ['SET-02', 15, 100, 1050, 21.08, 0.021],
  ['SET-05', 20, 100, 1190, 90.11, 0.104],
  ['SET-06', 20, 200, 1050, 97.3, 0.224],
  ['SET-09', 25, 100, 1050, 27.98, 0.036],
  ['SET-10', 25, 150, 1050, 62.95, 0.122],
  ['SET-11', 28, 100, 1050, 30.38, 0.042],
  ['SET-12', 28, 40, 1190, 17.52, 0.01],
];

describe('the sinking of small solids', () => {
  it.each(TABLE)('%s: at %f °C a sphere of %f µm and %f kg/m³ sinks %f m/d, within 1 %%', (_id, T_C, um, density, m_d) => {
    expect(apart(stokesVelocity_m_d(um, density, T_C, h), m_d)).toBeLessThan(0.01);
  });

  it.each(TABLE)(
    '%s: at %f °C, %f µm, %f kg/m³, %f m/d its Reynolds number is %f, to the last digit',
    (_id, T_C, um, density, _m_d, Re) => {
      expect(Math.abs(stokesReynolds(um, density, T_C, h) - Re)).toBeLessThan(0.001);
    },
  );

  it('goes by the square of the diameter and faster in warm water', () => {
    expect(apart(stokesVelocity_m_d(80, 1100, 20, h), 4 * stokesVelocity_m_d(40, 1100, 20, h))).toBeLessThan(1e-12);
    expect(stokesVelocity_m_d(80, 1100, 28, h)).toBeGreaterThan(stokesVelocity_m_d(80, 1100, 15, h));
  });

  it('lifts what is lighter than water', () => {
    expect(stokesVelocity_m_d(100, 920, 20, h)).toBeLessThan(0);
  });

  it('puts the superfine class of settling speeds below 40 µm and the fine class below 200 µm', () => {
    const { settleFine, settleSuperfine } = valuesWith().kinetics;
    expect(settleSuperfine).toBeLessThan(stokesVelocity_m_d(40, 1190, 25, h));
    expect(settleFine).toBeGreaterThan(stokesVelocity_m_d(40, 1190, 25, h));
    expect(settleFine).toBeLessThan(stokesVelocity_m_d(200, 1190, 25, h));
  });
});
