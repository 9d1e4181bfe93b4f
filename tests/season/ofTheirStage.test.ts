// A heater, a lamp or an air stone belongs to the stage that has it, wherever that stands.
import { describe, expect, it } from 'vitest';
import { readPlan } from '../../src/lessons/readPlan';
import type { Action, Plan } from '../../src/season/plan';
import { runSeason } from '../../src/season/season';
import type { Trajectory } from '../../src/season/trajectory';

function planWith(actions: Action[]): Plan {
  const bed = (id: string): object => ({ id, kind: 'raftBed', area_m2: 1, crop: { kind: 'lettuce' } });
  const read = readPlan(
    JSON.stringify({
      format: 'loopwright.plan/2',
      days: 8,
      climate: { air_C: { mean: 14, daySwing: 0 }, light_mol_m2_d: 10, weather: 0 },
      source: {
        pH: 6.8,
        alkalinity_meq_L: 1,
        NO3_mgN_L: 60,
        PO4_mgP_L: 10,
        K_mg_L: 80,
        Ca_mg_L: 80,
        Mg_mg_L: 20,
        SO4_mgS_L: 20,
        Fe_mg_L: 1.5,
      },
      fish: [{ tank: 'fish', species: 'rainbowTrout', number: 60, mass_g: 100, day: 0 }],
      loop: [
        { id: 'fish', kind: 'fishTank', air_L_min: 30 },
        bed('left'),
        bed('right'),
        { id: 'sump', kind: 'sump' },
        { id: 'pump', kind: 'returnPump' },
      ],
      actions,
    }),
  );
  if ('problems' in read) throw new Error(JSON.stringify(read.problems));
  return read.plan;
}

function last(season: Trajectory, stage: string, variable: string): number {
  const found = season.stages.find(({ id }) => id === stage);
  return season.days[season.days.length - 1].hourly[
    (23 * season.cells + (found?.first ?? 0)) * season.variables.length + season.variables.indexOf(variable)
  ];
}

const heater = (stage: string | undefined, power_W: number): Action => ({ day: 0, hour: 0, do: 'heater', stage, power_W, target_C: 24 });

describe('a heater', () => {
  it('warms the loop the same from whichever stage it hangs in', () => {
    const [sump, fish] = [heater(undefined, 600), heater('fish', 600)].map((action) => last(runSeason(planWith([action])), 'fish', 'T_C'));
    expect(fish).toBe(sump);
  });

  it('adds to one that hangs elsewhere, and is turned off by itself', () => {
    const one = last(runSeason(planWith([heater('fish', 300)])), 'fish', 'T_C');
    const two = last(runSeason(planWith([heater('fish', 300), heater('sump', 300)])), 'fish', 'T_C');
    const off = last(runSeason(planWith([heater('fish', 300), heater('sump', 300), heater('sump', 0)])), 'fish', 'T_C');
    expect(two).toBeGreaterThan(one + 1);
    expect(off).toBe(one);
  });

  it('is told where it hangs', () => {
    const { events } = runSeason(planWith([heater('fish', 300)])).days[0];
    expect(events.filter(({ kind }) => kind === 'heaterSet')).toMatchObject([{ stage: 'fish', amount: 300 }]);
  });
});

describe('a lamp over one bed', () => {
  it('makes that bed grow faster than its neighbour, which keeps the light of all', () => {
    const season = runSeason(planWith([{ day: 0, hour: 0, do: 'light', stage: 'right', mol_m2_d: 25 }]));
    const plain = runSeason(planWith([]));
    expect(last(season, 'right', 'leafDry_g_m2')).toBeGreaterThan(1.2 * last(season, 'left', 'leafDry_g_m2'));
    // within a fiftieth: they drink from the same water
    expect(Math.abs(last(season, 'left', 'leafDry_g_m2') / last(plain, 'left', 'leafDry_g_m2') - 1)).toBeLessThan(0.02);
  });
});

describe('an air stone', () => {
  it('gives its oxygen to the tank that it lies in', () => {
    const breathed = (L_min: number): number =>
      last(runSeason(planWith([{ day: 0, hour: 0, do: 'air', stage: 'fish', L_min }])), 'fish', 'O2_mg_L');
    expect(breathed(40)).toBeGreaterThan(breathed(0) + 0.2);
  });
});
