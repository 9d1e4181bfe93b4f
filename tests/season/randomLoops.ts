// Loops drawn at random: every kind of the catalogue, several of a kind, of any size and in any order, on both sides of the pump.
import fc from 'fast-check';
import { CROPS } from '../../src/catalogue/kinds';
import type { CropName } from '../../src/catalogue/kinds';
import { SPECIES } from '../../src/catalogue/kinds';
import type { SpeciesName } from '../../src/catalogue/kinds';
import { BASES } from '../../src/model/processes/dosing';
import { STAGES } from '../../src/catalogue/kinds';
import { stageType } from '../../src/catalogue/stageTypes';
import { MODEL_REVISION, PLAN_FORMAT } from '../../src/season/plan';
import type { Climate, Plan, SideSpec, StageKind, StageSpec, Stocking } from '../../src/season/plan';
import { randomDeed, upkeep } from './randomDeeds';

export const SPECIES_NAMES = Object.keys(SPECIES) as SpeciesName[];
export const CROP_NAMES = Object.keys(CROPS) as CropName[];

/** Kinds that may stand anywhere in a loop. */
const FREE = STAGES.map(({ kind }) => kind as StageKind).filter(
  (kind) => !['fishTank', 'returnPump', 'mineralisationTank', 'sump'].includes(kind),
);

/** To three decimals: sizes and settings as a person writes them, and no amounts near 1e-300. */
const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: Math.round(min * 1000), max: Math.round(max * 1000) }).map((thousandths) => thousandths / 1000);
/** Given so many times in a hundred. */
const perhaps = <T>(value: fc.Arbitrary<T>, percent: number): fc.Arbitrary<T | undefined> =>
  fc.oneof({ weight: percent, arbitrary: value }, { weight: 100 - percent, arbitrary: fc.constant(undefined) });
/** Three decimals are enough for a size. */
const rounded = (value: number): number => Math.round(value * 1000) / 1000;

type Unnamed = Omit<StageSpec, 'id'>;

const crop = fc.record({
  kind: fc.constantFrom(...CROP_NAMES),
  plants_m2: between(4, 60),
  plantedDay: fc.integer({ min: 0, max: 5 }),
  replant: fc.boolean(),
});

/**
 * A stage of any kind: each size half to twice the usual, some in parallel, some with thin pipes, few on a stand that makes the link run
 * uphill.
 */
const stage: fc.Arbitrary<Unnamed> = fc.constantFrom(...FREE).chain((kind) => {
  const type = stageType(kind);
  const times = between(0.5, 2);
  return fc
    .record({
      volume: times,
      area: times,
      depth: times,
      media: times,
      height: times,
      lamp: between(0, 2),
      mesh: times,
      air: fc.integer({ min: 0, max: 60 }),
      crop: perhaps(crop, 85),
      count: fc.constantFrom(1, 1, 1, 2, 3),
      pipe_mm: perhaps(fc.integer({ min: 20, max: 110 }), 15),
      stand_m: perhaps(between(0, 1.5), 6),
    })
    .map((d): Unnamed => {
      const usual = type.defaults;
      const spec: Unnamed = { kind, count: d.count };
      if (usual.volume_m3 !== undefined) spec.volume_m3 = usual.volume_m3 * d.volume;
      if (usual.area_m2 !== undefined) spec.area_m2 = usual.area_m2 * d.area;
      if (usual.depth_m !== undefined) spec.depth_m = usual.depth_m * d.depth;
      if (usual.height_m !== undefined) spec.height_m = usual.height_m * d.height;
      if (usual.lamp_W !== undefined) spec.lamp_W = usual.lamp_W * d.lamp;
      if (usual.mesh_um !== undefined) spec.mesh_um = usual.mesh_um * d.mesh;
      if (usual.air_L_min !== undefined) spec.air_L_min = d.air;
      if (kind === 'degassingTank') spec.media_m3 = 0.5 * (spec.volume_m3 ?? 0) * (d.media - 0.5);
      else if (usual.media_m3 !== undefined) spec.media_m3 = Math.min(usual.media_m3 * d.media, 0.7 * (spec.volume_m3 ?? Infinity));
      if (type.grows) spec.crop = d.crop ? { ...d.crop, plants_m2: rounded(d.crop.plants_m2) } : undefined;
      if (d.pipe_mm !== undefined) spec.pipe_mm = d.pipe_mm;
      if (d.stand_m !== undefined) spec.stand_m = d.stand_m;
      return Object.fromEntries(
        Object.entries(spec)
          .filter(([, value]) => value !== undefined)
          .map(([key, value]) => [key, typeof value === 'number' ? rounded(value) : value]),
      ) as Unnamed;
    });
});

const pump = fc
  .record({
    flow_m3_h: between(0.2, 4),
    curve: perhaps(fc.record({ maxHead_m: between(1, 6), maxFlow_m3_h: between(0.5, 6) }), 25),
    floatValve: fc.constantFrom(true, true, true, false),
    pipe_mm: perhaps(fc.integer({ min: 15, max: 60 }), 15),
  })
  .map(({ flow_m3_h, curve, floatValve, pipe_mm }): StageSpec => ({
    id: 'pump',
    kind: 'returnPump',
    flow_m3_h: rounded(flow_m3_h),
    floatValve,
    ...(curve ? { curve } : {}),
    ...(pipe_mm ? { pipe_mm } : {}),
  }));

const loop = fc
  .record({
    before: fc.array(stage, { maxLength: 5 }),
    after: fc.array(stage, { maxLength: 3 }),
    pump,
    tank: fc.record({
      volume_m3: between(0.3, 4),
      outlet: fc.constantFrom('bottomLift' as const, 'surface' as const),
      air_L_min: fc.integer({ min: 0, max: 90 }),
      count: fc.constantFrom(1, 1, 1, 2, 4),
    }),
    // first, last, or none: then the pump stands in whatever stage comes before it
    sump: fc.constantFrom('first' as const, 'last' as const, 'last' as const, 'none' as const),
    sump_m3: between(0.1, 0.8),
  })
  .map(({ before, after, pump: lift, tank, sump, sump_m3 }): StageSpec[] => {
    const named = (list: Unnamed[], side: string): StageSpec[] => list.map((spec, i) => ({ ...spec, id: `${side}${i}` }));
    const pit: StageSpec[] = sump === 'none' ? [] : [{ id: 'sump', kind: 'sump', volume_m3: rounded(sump_m3) }];
    const first = named(before, 'before');
    return [
      { id: 'fish', kind: 'fishTank', ...tank, volume_m3: rounded(tank.volume_m3) },
      ...(sump === 'first' ? [...pit, ...first] : [...first, ...pit]),
      lift,
      ...named(after, 'after'),
    ];
  });

const sides = (stages: readonly StageSpec[]): fc.Arbitrary<SideSpec[]> => {
  const wet = stages.filter(({ kind }) => stageType(kind).cells > 0).map(({ id }) => id);
  const givers = stages.filter(({ kind }) => stageType(kind).drains || stageType(kind).cleanedBy).map(({ id }) => id);
  return fc
    .record({
      mineral: perhaps(
        fc.record({
          volume_m3: between(0.05, 0.4),
          air_L_min: fc.constantFrom(0, 5, 20, 60),
          returnsTo: fc.constantFrom(...wet),
          takes: fc.subarray(givers),
        }),
        40,
      ),
      dosing: perhaps(
        fc.record({
          base: fc.constantFrom(...BASES),
          into: fc.constantFrom(...wet),
          g_d: fc.integer({ min: 0, max: 60 }),
          targetPH: between(6, 8.5),
        }),
        60,
      ),
    })
    .map(({ mineral, dosing }): SideSpec[] => [
      ...(mineral ? [{ id: 'mineral', kind: 'mineralisationTank' as const, ...mineral }] : []),
      ...(dosing ? [{ id: 'base', kind: 'baseDosing' as const, ...dosing }] : []),
    ]);
};

const climateFor = (days: number): fc.Arbitrary<Climate> =>
  fc
    .record({
      mean: between(8, 32),
      daySwing: between(0, 12),
      yearSwing: between(0, 20),
      light_mol_m2_d: between(2, 45),
      dayLength_h: between(8, 20),
      weather: between(0, 1),
      water_C: perhaps(between(12, 30), 40),
      spells: fc.array(
        fc.record({
          day: fc.integer({ min: 0, max: days - 1 }),
          days: fc.integer({ min: 1, max: 10 }),
          air_C: fc.integer({ min: -15, max: 12 }),
          light: between(0, 2),
        }),
        { maxLength: 2 },
      ),
    })
    .map(({ mean, daySwing, yearSwing, water_C, ...rest }): Climate => ({
      ...rest,
      air_C: { mean, daySwing, yearSwing, dayOfYear: 120 },
      ...(water_C === undefined ? {} : { water_C }),
    }));

const source = fc.record({
  pH: between(6.2, 8.5),
  alkalinity_meq_L: between(0.2, 5),
  NO3_mgN_L: between(0, 10),
  K_mg_L: between(0, 10),
  Ca_mg_L: between(5, 120),
  Mg_mg_L: between(0, 30),
  Cl_mg_L: between(1, 80),
  SO4_mgS_L: between(0, 30),
  Fe_mg_L: between(0, 0.3),
});

const stockings = (tank: StageSpec, days: number): fc.Arbitrary<Stocking[]> =>
  fc.array(
    fc
      .record({
        species: fc.constantFrom(...SPECIES_NAMES),
        mass_g: fc.constantFrom(5, 30, 50, 150, 400),
        kg_m3: between(0.2, 40),
        day: fc.constantFrom(0, 0, Math.min(4, days - 1)),
      })
      .map(({ species, mass_g, kg_m3, day }): Stocking => ({
        tank: tank.id,
        species,
        mass_g,
        day,
        number: Math.max(1, Math.round((kg_m3 * 1000 * (tank.volume_m3 ?? 1)) / mass_g)),
      })),
    { minLength: 0, maxLength: 2 },
  );

/** A whole random season of so many days. */
export const randomPlan = (days: number): fc.Arbitrary<Plan> =>
  loop.chain((stages) =>
    fc
      .record({
        side: sides(stages),
        climate: climateFor(days),
        source,
        fish: stockings(stages[0], days),
        seed: fc.nat(99999),
        feedShare: between(0, 0.06),
        tended: fc.constantFrom(true, true, false),
        biofilm: fc.constantFrom('bare' as const, 'seeded' as const, 'mature' as const),
        backupAir_h: perhaps(fc.integer({ min: 0, max: 12 }), 25),
      })
      .chain((d) =>
        fc
          .array(randomDeed(stages, d.side, days, CROP_NAMES, SPECIES_NAMES), { maxLength: 12 })
          .map((deeds): Plan => ({
            format: PLAN_FORMAT,
            model: MODEL_REVISION,
            title: 'A random loop',
            seed: `random-${d.seed}`,
            days,
            climate: d.climate,
            source: d.source,
            start: { water: 'source', biofilm: d.biofilm },
            loop: stages,
            side: d.side,
            fish: d.fish,
            actions: [
              {
                day: 0,
                do: 'feed',
                tank: 'fish',
                g_d: Math.round(d.feedShare * d.fish.reduce((sum, group) => sum + group.number * group.mass_g, 100)),
              },
              ...(d.tended ? upkeep(stages) : []),
              ...deeds,
            ],
            ...(d.backupAir_h === undefined ? {} : { backupAir_h: d.backupAir_h }),
            rig: null,
          })),
      ),
  );
