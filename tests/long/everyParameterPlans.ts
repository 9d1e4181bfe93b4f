// Small plans that together ask for every number of the model: each is the least that lets its numbers count.
import { CROPS, SPECIES } from '../../src/catalogue/kinds';
import type { CropName, SpeciesName } from '../../src/catalogue/kinds';
import type { Action, Composition, Plan, Rig, StageSpec } from '../../src/season/plan';
import { benchPlan, fishTankPlan } from '../handbook/bench';
import { referencePlan } from '../season/plans';

const dirty: Composition = {
  pH: 7.6,
  alkalinity_meq_L: 2,
  O2_mg_L: 6,
  TAN_mgN_L: 2,
  NO2_mgN_L: 1,
  NO3_mgN_L: 20,
  PO4_mgP_L: 3,
  K_mg_L: 20,
  Ca_mg_L: 40,
  Mg_mg_L: 8,
  Fe_mg_L: 1,
  Cl_mg_L: 30,
  SO4_mgS_L: 10,
  organics_mgCOD_L: 20,
  solidsCoarse_mg_L: 15,
  solidsFine_mg_L: 25,
  solidsSuperfine_mg_L: 10,
  sulfide_mgS_L: 0.05,
  CH4_mgCOD_L: 0.1,
};

/** A loop of these stages behind a fish tank, in dirty water. */
function loopPlan(stages: StageSpec[], change: Partial<Plan> = {}, tank: Partial<StageSpec> = {}): Plan {
  const plan = referencePlan();
  const given: Action[] = [{ day: 0, hour: 0, do: 'feed', tank: 'fish', g_d: 150, meals_h: [8, 16] }];
  return {
    ...plan,
    days: 2,
    source: { ...plan.source, ...change.source },
    start: { water: dirty, biofilm: 'mature' },
    side: [],
    loop: [{ id: 'fish', kind: 'fishTank', volume_m3: 1, air_L_min: 60, ...tank }, ...stages],
    fish: [{ tank: 'fish', species: 'tilapia', number: 60, mass_g: 120, day: 0 }],
    backupAir_h: 6,
    ...change,
    actions: [...given, ...(change.actions ?? [])],
  };
}

const end: StageSpec[] = [
  { id: 'sump', kind: 'sump', volume_m3: 0.4 },
  { id: 'pump', kind: 'returnPump', flow_m3_h: 1 },
];
const crop = (kind: CropName): StageSpec['crop'] => ({ kind, plants_m2: CROPS[kind].plants_m2.value, plantedDay: 0, replant: true });
const once = (hour: number, ...deeds: Action[]): Action[] => deeds.map((deed) => ({ ...deed, day: 1, hour }));

const loops: Record<string, Plan> = {
  'settlers, mats and rafts': loopPlan(
    [
      { id: 'cone', kind: 'conicalClarifier' },
      { id: 'swirl', kind: 'swirlSeparator' },
      { id: 'radial', kind: 'radialFlowSettler' },
      { id: 'mats', kind: 'fineFilter' },
      { id: 'media', kind: 'degassingTank', media_m3: 0.05, air_L_min: 60 },
      { id: 'rafts', kind: 'raftBed', crop: crop('lettuce') },
      ...end,
    ],
    {
      side: [
        { id: 'mineral', kind: 'mineralisationTank', volume_m3: 0.2, air_L_min: 20, takes: ['cone', 'mats'], returnsTo: 'sump' },
        { id: 'base', kind: 'baseDosing', into: 'sump', base: 'KHCO3', g_d: 20, targetPH: 7.4 },
      ],
      actions: once(9, { do: 'drain', stage: 'cone' }, { do: 'rinse', stage: 'mats' }, { do: 'harvest', stage: 'rafts' }),
    },
  ),
  'pressed filters and light': loopPlan(
    [
      { id: 'screen', kind: 'drumFilter', mesh_um: 90 },
      { id: 'sump', kind: 'sump', volume_m3: 0.4 },
      { id: 'pump', kind: 'returnPump', flow_m3_h: 1 },
      { id: 'beads', kind: 'beadFilter' },
      { id: 'sand', kind: 'sandFilter' },
      { id: 'cartridge', kind: 'cartridgeFilter' },
      { id: 'lamp', kind: 'uvUnit', lamp_W: 40 },
    ],
    { actions: once(9, { do: 'backwash', stage: 'beads' }, { do: 'backwash', stage: 'sand' }, { do: 'rinse', stage: 'cartridge' }) },
    { outlet: 'surface' },
  ),
  'film reactors and other beds': loopPlan(
    [
      { id: 'moving', kind: 'movingBedBiofilter' },
      { id: 'trickling', kind: 'tricklingFilter' },
      { id: 'channel', kind: 'nftChannel', crop: crop('basil') },
      { id: 'gravel', kind: 'mediaBed', crop: crop('tomato') },
      { id: 'tower', kind: 'tower', crop: crop('chard') },
      ...end,
    ],
    { actions: once(9, { do: 'rinse', stage: 'gravel' }) },
  ),
  'sand that water lifts': loopPlan([
    { id: 'sump', kind: 'sump', volume_m3: 0.4 },
    { id: 'pump', kind: 'returnPump', flow_m3_h: 1.5 },
    { id: 'lifted', kind: 'fluidisedSandBiofilter', media_m3: 0.02 },
  ]),
  'sand that hardly lifts': loopPlan([
    { id: 'sump', kind: 'sump', volume_m3: 0.4 },
    { id: 'pump', kind: 'returnPump', flow_m3_h: 1.5 },
    { id: 'lifted', kind: 'fluidisedSandBiofilter', media_m3: 0.06 },
  ]),
  // it sinks and catches while the pump is throttled; what it caught leaves with the grains when water tears them away
  'sand that sank, torn away': loopPlan(
    [
      { id: 'sump', kind: 'sump', volume_m3: 0.4 },
      { id: 'pump', kind: 'returnPump', flow_m3_h: 0.15 },
      { id: 'torn', kind: 'fluidisedSandBiofilter', media_m3: 0.012 },
    ],
    { actions: once(9, { do: 'flow', flow_m3_h: 1.5 }) },
  ),
  'the finest mesh and still media': loopPlan([
    { id: 'screen', kind: 'drumFilter', mesh_um: 20 },
    { id: 'media', kind: 'degassingTank', media_m3: 0.05, air_L_min: 0 },
    { id: 'moving', kind: 'movingBedBiofilter', air_L_min: 0 },
    ...end,
  ]),
  'a full cone, blocked mats, a thick filter': loopPlan(
    [
      { id: 'cone', kind: 'conicalClarifier', volume_m3: 0.02 },
      { id: 'mats', kind: 'fineFilter', volume_m3: 0.01 },
      { id: 'media', kind: 'degassingTank', media_m3: 0.05, air_L_min: 0 },
      ...end,
    ],
    {
      days: 4,
      start: { water: { ...dirty, solidsCoarse_mg_L: 300, solidsFine_mg_L: 100 }, biofilm: 'seeded' },
      actions: once(9, { do: 'air', stage: 'media', L_min: 60 }),
    },
  ),
  'base wanted, food in plenty, a bare start': loopPlan(end, {
    start: { water: { ...dirty, pH: 6.6, alkalinity_meq_L: 0.5 }, biofilm: 'bare' },
    side: [{ id: 'base', kind: 'baseDosing', into: 'sump', base: 'KHCO3', g_d: 20, targetPH: 6.8 }],
    actions: [{ day: 0, hour: 1, do: 'feed', tank: 'fish', g_d: 900, meals_h: [7, 10, 13, 16, 19] }],
  }),
  'a cold house': loopPlan(end, {
    climate: { air_C: { mean: 14, daySwing: 6, yearSwing: 0, dayOfYear: 40 }, light_mol_m2_d: 20, dayLength_h: 12, weather: 0 },
    actions: [{ day: 0, hour: 0, do: 'heater', power_W: 800, target_C: 16 }],
  }),
  'a pump of its own curve': loopPlan([
    { id: 'sump', kind: 'sump', volume_m3: 0.4 },
    { id: 'pump', kind: 'returnPump', curve: { maxHead_m: 2, maxFlow_m3_h: 0.35 } },
  ]),
  'a strong pump of its own curve': loopPlan([
    { id: 'rafts', kind: 'raftBed', area_m2: 2 },
    { id: 'still', kind: 'raftBed', area_m2: 1 },
    { id: 'sump', kind: 'sump', volume_m3: 0.4 },
    { id: 'pump', kind: 'returnPump', curve: { maxHead_m: 4, maxFlow_m3_h: 8 } },
  ]),
  'a link uphill and a small sump': loopPlan([
    { id: 'mats', kind: 'fineFilter', volume_m3: 0.15, stand_m: 0.9 },
    { id: 'sump', kind: 'sump', volume_m3: 0.05 },
    { id: 'pump', kind: 'returnPump', flow_m3_h: 3 },
  ]),
  'a pump without lift': loopPlan([
    { id: 'rafts', kind: 'raftBed', area_m2: 2 },
    { id: 'pump', kind: 'returnPump', flow_m3_h: 1 },
  ]),
  'a sump that ran dry': loopPlan(
    [
      { id: 'mats', kind: 'fineFilter', volume_m3: 0.15, stand_m: 0.9 },
      { id: 'sump', kind: 'sump', volume_m3: 0.05, floatValve: false },
      { id: 'pump', kind: 'returnPump', flow_m3_h: 3 },
    ],
    { actions: once(9, { do: 'topUp', stage: 'sump', L: 22 }) },
  ),
  'a power cut': loopPlan(
    [{ id: 'cone', kind: 'conicalClarifier' }, { id: 'rafts', kind: 'raftBed', crop: crop('lettuce'), air_L_min: 30 }, ...end],
    { actions: [...once(6, { do: 'power', on: false }), ...once(16, { do: 'power', on: true })] },
  ),
};

const rafts: StageSpec = { id: 'rafts', kind: 'raftBed', area_m2: 1, air_L_min: 0 };
const media: StageSpec = { id: 'media', kind: 'degassingTank', volume_m3: 0.1, media_m3: 0.02, air_L_min: 10 };
const bench = (stage: StageSpec, inflow: Composition, hold: Rig['hold'], change: Partial<Plan> = {}): Plan =>
  benchPlan({ stage, rig: { inflow, flow_m3_d: 2, hold }, days: 2, change: { start: { water: inflow, biofilm: 'mature' }, ...change } });

/** Water poor in everything a crop takes up. */
const poor: Composition = {
  pH: 6.3,
  alkalinity_meq_L: 0.5,
  O2_mg_L: 7,
  NO3_mgN_L: 0.3,
  TAN_mgN_L: 0.05,
  PO4_mgP_L: 0.1,
  K_mg_L: 1,
  Ca_mg_L: 2,
  Mg_mg_L: 0.5,
  SO4_mgS_L: 0.2,
  Fe_mg_L: 0.01,
};
/** A crop that ripens in a loop that it drinks from. */
const ripening = (kind: CropName): Plan =>
  loopPlan([{ id: 'rafts', kind: 'raftBed', area_m2: 1, crop: crop(kind) }, ...end], {
    days: 90,
    start: {
      water: { ...dirty, NO3_mgN_L: 80, K_mg_L: 150, Fe_mg_L: 4, PO4_mgP_L: 20, Ca_mg_L: 120, solidsCoarse_mg_L: 0, solidsFine_mg_L: 0 },
      biofilm: 'mature',
    },
    climate: {
      air_C: { mean: 22, daySwing: 2, yearSwing: 0, dayOfYear: 150 },
      light_mol_m2_d: 30,
      dayLength_h: 14,
      weather: 0,
      water_C: 22,
    },
  });

const cropPlan = (kind: CropName, inflow: Composition, T_C: number, pH: number): Plan =>
  bench({ ...rafts, crop: crop(kind) }, inflow, { T_C, pH, O2_mg_L: 7 });

/** Plans for a crop's own numbers. */
export function cropPlans(kind: CropName): Plan[] {
  const rich = { ...poor, NO3_mgN_L: 50, PO4_mgP_L: 10, K_mg_L: 60, Ca_mg_L: 60, Mg_mg_L: 10, SO4_mgS_L: 10, Fe_mg_L: 2 };
  const c = CROPS[kind];
  return [
    cropPlan(kind, poor, 21, 6.6),
    cropPlan(kind, rich, 21, 7.6),
    cropPlan(kind, rich, 0.5 * (c.coldStop.value + c.optimumLow.value), 4.5),
    cropPlan(kind, rich, 0.5 * (c.hotStop.value + c.optimumHigh.value), 9.8),
    cropPlan(kind, rich, c.coldStop.value + 0.3, 6),
    cropPlan(kind, rich, c.hotStop.value - 0.3, 6),
    ripening(kind),
  ];
}

/** Plans for a species' own numbers: well kept, and beside each harm. */
export function speciesPlans(species: SpeciesName): Plan[] {
  const f = SPECIES[species];
  const best = 0.5 * (f.optimumLow.value + f.optimumHigh.value);
  const kept = (inflow: Composition, hold: Rig['hold'], number = 40, feed_g_d = 120): Plan =>
    fishTankPlan({
      inflow,
      hold: { T_C: best, pH: 7.2, O2_mg_L: 8, ...hold },
      days: 1,
      fish: { species, number, mass_g: 150 },
      feed_g_d,
      flow_m3_d: 60,
    });
  // at pH 6.6 some 36 % of inorganic carbon is carbon dioxide
  const carbon = (0.5 * (f.co2Safe.value + f.co2Harm.value)) / 44 / 0.36;
  const soft = { alkalinity_meq_L: 0.02, DIC_mmol_L: 0.05 };
  const fasting = kept({}, {}, 40, 0);
  return [
    kept({}, {}),
    { ...fasting, days: 6 },
    kept({ sulfide_mgS_L: 0.02 }, { pH: 7 }),
    kept({}, { O2_mg_L: 0.5 * (f.appetiteFull.value + f.appetiteNone.value) }),
    kept({}, { O2_mg_L: 0.9 * f.o2Harm.value }),
    kept({}, { O2_mg_L: f.o2Safe.value - 0.3 }),
    kept({ TAN_mgN_L: 30 }, { pH: 8.4 }),
    kept({ TAN_mgN_L: 80 }, { pH: 8.6 }),
    kept({ TAN_mgN_L: 2 }, { pH: 8.4 }),
    kept({ NO2_mgN_L: 15, Cl_mg_L: 20 }, {}),
    kept({ NO2_mgN_L: 80, Cl_mg_L: 2000 }, {}),
    kept({ NO2_mgN_L: 3, Cl_mg_L: 20 }, {}),
    kept({ sulfide_mgS_L: 0.05 }, {}),
    kept({ sulfide_mgS_L: 0.2 }, {}),
    kept({ alkalinity_meq_L: 0.4, DIC_mmol_L: 1 }, { pH: 7 }),
    kept({ alkalinity_meq_L: 0.4, DIC_mmol_L: 1.5 }, { pH: 6.6 }),
    kept({ DIC_mmol_L: carbon }, { pH: 6.6 }),
    kept({ DIC_mmol_L: 6 }, { pH: 6.3 }),
    kept({ DIC_mmol_L: 12 }, { pH: 6 }),
    kept(soft, { pH: 0.5 * (f.pHSafe.value + f.pHHarm.value) }),
    kept(soft, { pH: 0.7 * f.pHHarm.value + 0.3 * f.pHLethal.value }),
    kept({}, { pH: f.pHHighSafe.value + 0.6 }),
    kept({}, { pH: f.pHHighHarm.value + 0.2 }),
    kept({}, { T_C: 0.5 * (f.coldStop.value + f.optimumLow.value) }),
    kept({}, { T_C: f.coldLethal.value + 1 }),
    kept({}, { T_C: f.hotStop.value - 0.3 }),
    kept({}, { T_C: f.hotLethal.value - 0.5 }),
    kept({ solidsFine_mg_L: 120 }, {}),
    kept({}, {}, Math.round((1000 * (f.density.value + 20)) / 150), 3000),
    kept({ TAN_mgN_L: 20 }, { pH: 8.4 }, 40, 3000),
  ];
}

/** Plans for the numbers of all kinds alike: loops, then benches of one film. */
export const sharedPlans = (): Plan[] => [
  ...Object.values(loops),
  bench({ id: 'cone', kind: 'conicalClarifier', volume_m3: 0.02 }, { ...dirty, solidsCoarse_mg_L: 2000 }, { T_C: 25 }),
  bench(media, dirty, { T_C: 25, pH: 8.8, O2_mg_L: 2 }),
  bench(media, dirty, { T_C: 18, pH: 6, O2_mg_L: 0.2 }),
  bench(media, { ...dirty, PO4_mgP_L: 0.002, SO4_mgS_L: 0.01 }, {}),
];
