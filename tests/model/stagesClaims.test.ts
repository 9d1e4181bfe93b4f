// What the kinds of stage are for, as claims about water: strained, tumbled, trickled, lit.
import { describe, expect, it } from 'vitest';
import { makeCell } from '../../src/model/cell';
import type { Cell } from '../../src/model/cell';
import { RECORDED, valuesWith } from '../../src/catalogue/values';
import { stageType } from '../../src/catalogue/stageTypes';
import type { SolidsConditions, StageSizes } from '../../src/model/stages/stageScience';
import { doseOf, killedShare } from '../../src/model/polish/uvDose';
import type { Season } from '../../src/season/season';
import { runSeason } from '../../src/season/season';
import type { Composition, Plan, StageKind, StageSpec } from '../../src/season/plan';
import { course } from '../season/courses';
import { benchPlan, feedWater, liveThrough } from '../handbook/bench';

const values = valuesWith();
const FLOW = 24;
const dirty: Composition = { solidsCoarse_mg_L: 6, solidsFine_mg_L: 4, solidsSuperfine_mg_L: 2 };

/** A cell of a stage, its solids set for conditions; a clean, still, dark stage unless they say otherwise. */
function forced(kind: StageKind, conditions: Partial<SolidsConditions> = {}, sizes: StageSizes = {}, flow = FLOW): Cell {
  const type = stageType(kind);
  const cell = makeCell(0, 'one', kind, type.cell({ ...type.defaults, ...sizes }, RECORDED));
  cell.flow = flow;
  type.solids(cell, {
    values,
    fill: 0,
    clog: 0,
    leaf: 0,
    gas: 0,
    airPerVolume: 0,
    outlet: 'bottomLift',
    fines: 0,
    mat: 0,
    lamp_W: 0,
    mesh_um: 0,
    ...conditions,
  });
  return cell;
}

/** Share of what passes that `cleared` m³/d keep, in a mixed cell. */
const share = (cleared: number, flow = FLOW): number => cleared / (cleared + flow);

function bench(kind: StageKind, inflow: Composition, change: Partial<StageSpec> = {}, days = 3): Plan {
  const stage: StageSpec = { id: 'one', kind, ...stageType(kind).defaults, ...change };
  return benchPlan({
    stage,
    days,
    rig: { inflow: feedWater(inflow), flow_m3_d: FLOW, hold: { T_C: 24 } },
    change: { start: { water: 'source', biofilm: 'bare' } },
  });
}

const clog = (kind: StageKind, days = 2): number => course(runSeason(bench(kind, dirty, {}, days)), 'one', 'clog').at(-1) ?? NaN;

describe('filters', () => {
  it('a finer mesh keeps more fine solids, and none keeps the finest', () => {
    const fine = forced('drumFilter', { mesh_um: 60 });
    const wide = forced('drumFilter', { mesh_um: 200 });
    expect(share(fine.catch1)).toBeGreaterThan(1.5 * share(wide.catch1));
    expect(share(fine.catch1)).toBeGreaterThanOrEqual(0.3);
    expect(share(fine.catch1)).toBeLessThanOrEqual(0.7);
    expect(share(forced('drumFilter', { mesh_um: 10 }).catch2)).toBeLessThan(0.1);
  });

  it('from screen over beads and sand to pleats, ever finer solids are kept', () => {
    const kinds: StageKind[] = ['drumFilter', 'beadFilter', 'sandFilter', 'cartridgeFilter'];
    for (const size of ['catch1', 'catch2'] as const) {
      const kept = kinds.map((kind) => share(forced(kind)[size]));
      expect(kept).toEqual([...kept].sort((a, b) => a - b));
    }
    for (const kind of kinds) expect(share(forced(kind).catch0), kind).toBeGreaterThan(0.95);
  });

  it('blocked, they let water past and solids go', () => {
    for (const kind of ['drumFilter', 'fineFilter', 'beadFilter', 'sandFilter', 'cartridgeFilter', 'mediaBed'] as const) {
      expect(share(forced(kind, { clog: 1.5 }).catch0), kind).toBeLessThan(0.3);
      expect(forced(kind, { clog: 1.5 }).release, kind).toBeGreaterThan(forced(kind).release);
    }
  });

  it('take the more head the more water they pass and the more they hold; sand more than beads, beads more than mats', () => {
    const loss = (kind: StageKind, flow: number, blocked: number): number =>
      stageType(kind).loss?.(stageType(kind).defaults, flow, blocked, RECORDED) ?? 0;
    for (const kind of ['drumFilter', 'fineFilter', 'beadFilter', 'sandFilter', 'cartridgeFilter'] as const) {
      expect(loss(kind, 0, 0), kind).toBe(0);
      expect(loss(kind, 2 * FLOW, 0), kind).toBeGreaterThan(loss(kind, FLOW, 0));
      expect(loss(kind, FLOW, 1), kind).toBeGreaterThan(2 * loss(kind, FLOW, 0));
    }
    expect(loss('sandFilter', FLOW, 0)).toBeGreaterThan(loss('beadFilter', FLOW, 0));
    expect(loss('beadFilter', FLOW, 0)).toBeGreaterThan(loss('fineFilter', FLOW, 0));
    expect(loss('tricklingFilter', FLOW, 0)).toBe(1.2);
  });

  it('sand and pleats block long before beads, beads long before gravel', () => {
    const [sand, pleats, beads, gravel] = (['sandFilter', 'cartridgeFilter', 'beadFilter', 'mediaBed'] as const).map((kind) => clog(kind));
    expect(Math.min(sand, pleats)).toBeGreaterThan(1);
    expect(Math.min(sand, pleats)).toBeGreaterThan(2 * beads);
    expect(beads).toBeGreaterThan(5 * gravel);
  });
});

describe('film reactors', () => {
  const gassy = { pH: 6.6, alkalinity_meq_L: 2, O2_mg_L: 4 };
  const carbonDioxide = (plan: Plan): number => course(runSeason(plan), 'one', 'CO2_mg_L').at(-1) ?? NaN;

  it('a trickling filter strips more carbon dioxide than a moving bed of the same media, and a higher one more than a lower', () => {
    const trickled = carbonDioxide(bench('tricklingFilter', gassy, { media_m3: 0.12 }));
    expect(trickled).toBeLessThan(0.75 * carbonDioxide(bench('movingBedBiofilter', gassy, { media_m3: 0.12 })));
    expect(carbonDioxide(bench('tricklingFilter', gassy, { media_m3: 0.12, height_m: 2.4 }))).toBeLessThan(trickled);
  });

  it('a moving bed without air is a poor stripper, and a packed filter', () => {
    expect(carbonDioxide(bench('movingBedBiofilter', gassy, { air_L_min: 0 }))).toBeGreaterThan(
      carbonDioxide(bench('movingBedBiofilter', gassy)),
    );
    expect(forced('movingBedBiofilter').catch1).toBeGreaterThan(5 * forced('movingBedBiofilter', { airPerVolume: 60 }).catch1);
  });

  it('a moving bed grinds coarse solids to fine ones', () => {
    const t = runSeason(bench('movingBedBiofilter', dirty));
    expect(course(t, 'one', 'solidsCoarse_mg_L').at(-1)).toBeLessThan(6 * 0.95);
    expect(course(t, 'one', 'solidsFine_mg_L').at(-1)).toBeGreaterThan(4 + 2);
  });
});

describe('beds', () => {
  const crop = { kind: 'lettuce' as const, plants_m2: 24, plantedDay: 0, replant: true };
  const mat = (kind: StageKind): number =>
    course(runSeason(bench(kind, { ...dirty, NO3_mgN_L: 20, Fe_mg_L: 1, Mg_mg_L: 8 }, { area_m2: 3, crop })), 'one', 'rootMat_g_m2').at(-1)
    ?? NaN;

  it('the roots of film channels foul sooner than those of a raft bed in the same water', () => {
    expect(mat('nftChannel')).toBeGreaterThan(1.3 * mat('raftBed'));
  });

  it('gravel that floods and drains takes in more oxygen than rafts at rest', () => {
    const stale = { O2_mg_L: 2 };
    const oxygen = (kind: StageKind): number =>
      course(runSeason(bench(kind, stale, { area_m2: 2, air_L_min: 0 })), 'one', 'O2_mg_L').at(-1) ?? NaN;
    expect(oxygen('mediaBed')).toBeGreaterThan(oxygen('raftBed') + 1);
  });
});

describe('an ultraviolet unit', () => {
  const killed = (lamp_W: number, flow: number, fines: number): number => killedShare(values.devices, lamp_W, flow, fines);

  it('gives a dose that falls with the flow and with what the water holds', () => {
    const dose = (flow: number, fines: number): number => doseOf(values.devices, 40, flow, fines);
    expect(dose(FLOW, 0)).toBeCloseTo(2 * dose(2 * FLOW, 0), 9);
    expect(dose(FLOW, 30)).toBeLessThan(0.8 * dose(FLOW, 0));
    // 40 W at a cubic metre an hour: some 30–150 mJ/cm²
    expect(dose(FLOW, 3)).toBeGreaterThan(30);
    expect(dose(FLOW, 3)).toBeLessThan(150);
  });

  it('kills less in turbid water, however strong the lamp', () => {
    expect(killed(40, FLOW, 0)).toBeGreaterThan(0.95);
    expect(killed(40, FLOW, 40)).toBeLessThan(0.5);
    expect(killed(4000, FLOW, 40)).toBeLessThan(0.5);
    expect(killed(5, 10 * FLOW, 3)).toBeLessThan(killed(40, 10 * FLOW, 3));
  });

  it('kills nothing when it is dark or the water stands', () => {
    expect(killed(0, FLOW, 3)).toBe(0);
    expect(forced('uvUnit', { lamp_W: 0 }).kill).toBe(0);
    expect(forced('uvUnit', { lamp_W: 40 }, {}, 0).kill).toBe(0);
  });

  it('clears water of free bacteria at its own share of the flow, less when solids come with it', () => {
    const kill = (season: Season): number => season.runtime.assembly.cells[0].kill;
    const clear = kill(liveThrough(bench('uvUnit', {}, {}, 1)));
    const turbid = kill(liveThrough(bench('uvUnit', { solidsFine_mg_L: 20, solidsSuperfine_mg_L: 20 }, {}, 1)));
    expect(clear).toBeGreaterThan(10 * FLOW);
    expect(share(turbid)).toBeLessThan(0.6);
  });
});
