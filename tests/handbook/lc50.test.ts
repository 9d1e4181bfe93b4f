// A steady exposure to a concentration that is said to kill half in a stated time kills half in that time. Nile tilapia: Abdalla & McNabb
// 1998, 2.25–2.65 mg/L NH3-N in 96 h; Wang et al. 2006, nitrite 28.18 mg/L at 35 and 44.67 at 70 mg/L of chloride in 96 h, read as N:
// published. Hydrogen sulfide, carbon dioxide and oxygen: the values of the species' record, with the flags given there.
import { describe, expect, it } from 'vitest';
import { SPECIES } from '../../src/catalogue/kinds';
import { valuesWith } from '../../src/catalogue/values';
import type { Reading } from '../../src/season/reading';
import type { Composition, SpeciesKind } from '../../src/season/plan';
import { standingAt } from './bench';
import { alive, comfortable } from './fishCases';

const KINDS = Object.keys(SPECIES) as SpeciesKind[];
const TOLERANCE = 0.02;

interface Exposure {
  what: string;
  days: number;
  inflow: Composition;
  read: (water: Reading) => number;
  dose: number;
}

/** The exposures of one species: what stands in the water all the while. */
function exposures(species: SpeciesKind): Exposure[] {
  const f = valuesWith().fish[species];
  const T_C = comfortable(species);
  const ammonia = { pH: 8, O2_mg_L: 7 };
  const sulfide = { pH: 7, O2_mg_L: 7 };
  return [
    {
      what: 'un-ionised ammonia',
      days: 4,
      dose: f.nh3LC50,
      read: (w) => w.NH3,
      inflow: { ...ammonia, TAN_mgN_L: standingAt({ ...ammonia, TAN_mgN_L: 30 }, { T_C, O2_mg_L: 7 }, (w) => w.NH3, f.nh3LC50) },
    },
    {
      what: 'nitrite at 20 mg/L of chloride',
      days: 4,
      dose: f.no2LC50Base + 20 * f.no2LC50Chloride,
      read: (w) => w.NO2,
      inflow: { pH: 7.5, O2_mg_L: 7, Cl_mg_L: 20, NO2_mgN_L: f.no2LC50Base + 20 * f.no2LC50Chloride },
    },
    {
      what: 'hydrogen sulfide',
      days: 4,
      dose: f.h2sLC50,
      read: (w) => w.H2S,
      inflow: { ...sulfide, sulfide_mgS_L: standingAt({ ...sulfide, sulfide_mgS_L: 0.1 }, { T_C, O2_mg_L: 7 }, (w) => w.H2S, f.h2sLC50) },
    },
    {
      what: 'carbon dioxide',
      days: 4,
      dose: f.co2LC50,
      read: (w) => w.CO2,
      inflow: {
        O2_mg_L: 7,
        alkalinity_meq_L: 4,
        DIC_mmol_L: standingAt({ O2_mg_L: 7, alkalinity_meq_L: 4, DIC_mmol_L: 7 }, { T_C, O2_mg_L: 7 }, (w) => w.CO2, f.co2LC50),
      },
    },
  ];
}

describe.each(KINDS)('%s', (species) => {
  it('lives on in clean water', () => {
    expect(alive(species, { pH: 7.5, O2_mg_L: 7 }, 4)).toBeGreaterThan(0.99);
  });

  it.each(exposures(species))('is halved by $what at $dose mg/L in $days days', ({ inflow, days, read, dose }) => {
    const share = alive(species, inflow, days, (water) => {
      expect(Math.abs(read(water) / dose - 1)).toBeLessThan(TOLERANCE);
    });
    expect(Math.abs(share - 0.5)).toBeLessThan(0.03);
  });

  it('is halved by want of oxygen in the time of its record', () => {
    const f = valuesWith().fish[species];
    const share = alive(species, { pH: 7.5, O2_mg_L: f.o2Lethal }, 1);
    expect(Math.abs(Math.log(share) / Math.log(0.5) / (1 / f.o2LethalTime) - 1)).toBeLessThan(0.05);
  });

  it('suffers less from half of it than half as much', () => {
    const f = valuesWith().fish[species];
    const pH = 8;
    const inflow = (dose: number): Composition => ({
      pH,
      O2_mg_L: 7,
      TAN_mgN_L: standingAt({ pH, O2_mg_L: 7, TAN_mgN_L: 30 }, { T_C: comfortable(species), O2_mg_L: 7 }, (w) => w.NH3, dose),
    });
    const [whole, half] = [f.nh3LC50, f.nh3LC50 / 2].map((dose) => -Math.log(alive(species, inflow(dose), 4)));
    expect(half).toBeLessThan(0.25 * whole);
  });
});

describe('Nile tilapia in nitrite', () => {
  it.each([
    [28.18, 35],
    [44.67, 70],
  ])('of %f mg/L at %f mg/L of chloride is halved in 4 days', (NO2_mgN_L, Cl_mg_L) => {
    expect(Math.abs(alive('tilapia', { pH: 7.5, O2_mg_L: 7, NO2_mgN_L, Cl_mg_L }, 4) - 0.5)).toBeLessThan(0.05);
  });

  it('are protected by chloride', () => {
    const at = (Cl_mg_L: number): number => alive('tilapia', { pH: 7.5, O2_mg_L: 7, NO2_mgN_L: 28.18, Cl_mg_L }, 4);
    expect(at(70)).toBeGreaterThan(at(35) + 0.2);
  });
});

describe('Nile tilapia in un-ionised ammonia', () => {
  it('have their 96 h median within the published 2.25–2.65 mg/L', () => {
    const pH = 8;
    const share = (dose: number): number =>
      alive(
        'tilapia',
        {
          pH,
          O2_mg_L: 7,
          TAN_mgN_L: standingAt({ pH, O2_mg_L: 7, TAN_mgN_L: 30 }, { T_C: comfortable('tilapia'), O2_mg_L: 7 }, (w) => w.NH3, dose),
        },
        4,
      );
    expect(share(2.25)).toBeGreaterThan(0.5);
    expect(share(2.65)).toBeLessThan(0.5);
  });
});
