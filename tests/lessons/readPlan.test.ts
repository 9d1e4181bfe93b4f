// The gate for plans: what the format's own example shows is read, defaults are written out, faults are named with their place.
import { describe, expect, test } from 'vitest';
import { CROPS, STAGES } from '../../src/catalogue/kinds';
import { readPlan, withDefaults } from '../../src/lessons/readPlan';
import { problemText } from '../../src/words/problemWords';
import type { Deed, Plan } from '../../src/season/plan';
import { changed, fileText, soundPlan } from './plans';
import type { Json } from './plans';

function planOf(value: Json): Plan {
  const read = readPlan(JSON.stringify(value));
  if ('problems' in read) throw new Error(read.problems.map(problemText).join('\n'));
  return read.plan;
}

function problemsIn(text: string): string[] {
  const read = readPlan(text);
  return 'problems' in read ? read.problems.map(problemText) : [];
}

function problemsOf(value: Json): string[] {
  const read = readPlan(JSON.stringify(value));
  return 'problems' in read ? read.problems.map(problemText) : [];
}

const smallest: Json = {
  format: 'loopwright.plan/2',
  loop: [
    { id: 'fish', kind: 'fishTank' },
    { id: 'pump', kind: 'returnPump' },
  ],
};

describe('a plan from outside', () => {
  test('with every part of the format is read as it stands', () => {
    const plan = planOf(soundPlan());
    expect(plan.loop.map((stage) => stage.id)).toEqual(['fish', 'settler', 'mats', 'degas', 'rafts', 'sump', 'pump']);
    expect(plan.source).toEqual({
      pH: 7.6,
      alkalinity_meq_L: 2,
      NO3_mgN_L: 2,
      PO4_mgP_L: 0,
      K_mg_L: 2,
      Ca_mg_L: 40,
      Cl_mg_L: 20,
      SO4_mgS_L: 10,
      Fe_mg_L: 0.05,
    });
    expect(plan.side).toEqual(soundPlan()['side']);
    expect(plan.loop[4].crop).toEqual({ kind: 'lettuce', plants_m2: 24, plantedDay: 0, replant: true });
  });

  test('may leave out what has a default, and comes back complete', () => {
    const plan = planOf(smallest);
    expect(plan).toMatchObject({
      model: '1.1',
      days: 60,
      side: [],
      fish: [],
      actions: [],
      rig: null,
      start: { water: 'source', biofilm: 'bare' },
    });
    expect(plan.loop[0]).toEqual({ id: 'fish', kind: 'fishTank', volume_m3: 1, outlet: 'bottomLift', air_L_min: 0, media_m3: 0, count: 1 });
    expect(plan.climate).toEqual({
      air_C: { mean: 22, daySwing: 6, yearSwing: 0, dayOfYear: 120 },
      light_mol_m2_d: 17,
      dayLength_h: 14,
      weather: 0.3,
    });
  });

  test('feeds at eight, twelve and sixteen unless it says otherwise', () => {
    const plan = planOf(changed(smallest, ['actions'], [{ day: 0, do: 'feed', tank: 'fish', g_d: 60 }]));
    expect(plan.actions).toEqual([{ day: 0, hour: 0, do: 'feed', tank: 'fish', g_d: 60, meals_h: [8, 12, 16] }]);
  });

  test('written out reads back as itself', () => {
    for (const value of [smallest, soundPlan()]) {
      const plan = planOf(value);
      expect(planOf(JSON.parse(JSON.stringify(plan)) as Json)).toEqual(plan);
      expect(withDefaults(plan as Parameters<typeof withDefaults>[0])).toEqual(plan);
    }
  });

  test('has its sizes brought to the litre, its air to a tenth, its feed to the gram; a rig keeps them', () => {
    const stage = { id: 'settler', kind: 'radialFlowSettler', volume_m3: 0.19049, air_L_min: 1.26 };
    const actions: Json = [
      { day: 0, do: 'feed', tank: 'fish', g_d: 60.4 },
      { day: 0, do: 'air', stage: 'settler', L_min: 2.34 },
    ];
    const sized = changed(changed(smallest, ['loop', 1], stage), ['loop', 2], { id: 'pump', kind: 'returnPump' });
    const plan = planOf(changed(sized, ['actions'], actions));
    expect(plan.loop[1]).toMatchObject({ volume_m3: 0.19, air_L_min: 1.3 });
    expect(plan.actions).toMatchObject([{ g_d: 60 }, { L_min: 2.3 }]);
    const bench = planOf({ format: 'loopwright.plan/2', loop: [{ ...stage, volume_m3: 0.00035 }], rig: { inflow: {}, flow_m3_d: 0.01 } });
    expect(bench.loop[0]).toMatchObject({ volume_m3: 0.00035, air_L_min: 1.26 });
  });

  test('may be a rig of any stage alone, with a composition flowing in', () => {
    const rig = {
      inflow: { TAN_mgN_L: 2, NO2_mgN_L: 0.1, organics_mgCOD_L: 6, O2_mg_L: 8, pH: 7.5, alkalinity_meq_L: 3 },
      flow_m3_d: 24,
      hold: { T_C: 27.2, pH: 7.5, O2_mg_L: 8 },
    };
    for (const { kind } of STAGES.filter(({ cells }) => cells > 0)) {
      expect(planOf({ format: 'loopwright.plan/2', loop: [{ id: 'one', kind }], rig }).rig).toEqual(rig);
    }
  });

  test('is read after a byte order mark, and with the key editors use', () => {
    expect('plan' in readPlan(`\uFEFF${JSON.stringify(changed(smallest, ['$schema'], './plan.schema.json'))}`)).toBe(true);
    expect('$schema' in planOf(changed(smallest, ['$schema'], './plan.schema.json'))).toBe(false);
  });

  test('is read with notes after two slashes, which keep every place where it was', () => {
    const noted = JSON.stringify(changed(smallest, ['title'], 'a // b \\" // c'), null, 1).replace(/,\n/g, ', // so it is "here"\n');
    expect(readPlan(noted)).toHaveProperty('plan.title', 'a // b \\" // c');
    expect(readPlan('{ "days": 3, // three\n "loop": }')).toMatchObject({ problems: [{ path: '', line: 2, column: 10 }] });
  });

  test('that stands among the examples is sound', () => {
    for (const name of ['every-part', 'first-loop', 'nitrification-rig', 'settler-rig']) {
      expect(readPlan(fileText(`tests/season/plans/${name}.json`)), name).toHaveProperty('plan');
    }
  });
});

const aDay = { day: 3 };
/** Kinds that may stand in a loop, as a message names them. */
const inFlow = STAGES.filter((type) => !type.doses && !type.takesSolids).map(({ kind }) => kind);
const faults: [string, (string | number)[], Json | undefined, string][] = [
  ['a missing format', ['format'], undefined, 'format: got nothing; expected "loopwright.plan/2"'],
  ['another format', ['format'], 'loopwright.plan/9', 'format: got "loopwright.plan/9"; expected "loopwright.plan/2"'],
  ['a size as text', ['loop', 1, 'volume_m3'], '0.19', 'loop[1].volume_m3: got "0.19"; expected a number from 0.00001 to 1000 m³'],
  ['a negative size', ['loop', 2, 'volume_m3'], -1, 'loop[2].volume_m3: got -1; expected a number from 0.00001 to 1000 m³'],
  [
    'a mistyped key',
    ['loop', 1, 'volume'],
    1,
    'loop[1].volume: got 1; expected no such key here; the keys are id, kind, volume_m3, air_L_min, media_m3, count, pipe_mm, stand_m',
  ],
  ['an unknown kind', ['loop', 3, 'kind'], 'bucket', `loop[3].kind: got "bucket"; expected one of ${inFlow.join(', ')}`],
  ['a half hour', ['actions', 2, 'hour'], 9.5, 'actions[2].hour: got 9.5; expected a whole number from 0 to 23'],
  ['too many days', ['days'], 1001, 'days: got 1001; expected a whole number from 1 to 1000 days'],
  [
    'an id that is no name',
    ['loop', 4, 'id'],
    'Raft bed',
    'loop[4].id: got "Raft bed"; expected a name of 1 to 24 letters, digits or hyphens that begins with a small letter',
  ],
  ['the same id twice', ['loop', 2, 'id'], 'settler', 'loop[2].id: got "settler"; expected a name no other stage has'],
  [
    'a loop that begins elsewhere',
    ['loop', 0],
    { id: 'first', kind: 'sump' },
    'loop[0].kind: got "sump"; expected fishTank: a loop begins at its fish tank',
  ],
  [
    'a second fish tank',
    ['loop', 1],
    { id: 'settler', kind: 'fishTank' },
    'loop[1].kind: got "fishTank"; expected one fish tank only (identical units are given by count)',
  ],
  ['a second pump', ['loop', 5], { id: 'sump', kind: 'returnPump' }, 'loop[6].kind: got "returnPump"; expected one return pump only'],
  [
    'a mineralisation tank in the flow',
    ['loop', 5],
    { id: 'sump', kind: 'mineralisationTank' },
    'loop[5].kind: got "mineralisationTank"; expected a stage the whole flow passes; a mineralisationTank stands at the side (side), or alone in a rig',
  ],
  [
    'no pump',
    ['loop', 6],
    { id: 'other', kind: 'sump' },
    'loop: got a list of 7; expected a returnPump: the water must be lifted back to the fish tank',
  ],
  ['more media than tank', ['loop', 3, 'media_m3'], 0.2, 'loop[3].media_m3: got 0.2; expected no more media than the 0.1 m³ of its tank'],
  [
    'lettuce in a settler',
    ['loop', 1, 'crop'],
    { kind: 'lettuce' },
    'loop[1].crop: got an object with keys kind; expected no such key here; the keys are id, kind, volume_m3, air_L_min, media_m3, count, pipe_mm, stand_m',
  ],
  [
    'a drain where nothing settles',
    ['actions', 1, 'stage'],
    'rafts',
    'actions[1].stage: got "rafts (raftBed)"; expected a stage that can be drained (conicalClarifier, mineralisationTank, radialFlowSettler, swirlSeparator)',
  ],
  [
    'a rinse of an empty tank',
    ['actions', 1],
    { ...aDay, do: 'rinse', stage: 'sump' },
    'actions[1].stage: got "sump (sump)"; expected a stage that can be rinsed (cartridgeFilter, fineFilter, mediaBed, or a tank with media)',
  ],
  [
    'a backwash of mats',
    ['actions', 1],
    { ...aDay, do: 'backwash', stage: 'mats' },
    'actions[1].stage: got "mats (fineFilter)"; expected a stage that can be backwashed (beadFilter, drumFilter, sandFilter)',
  ],
  [
    'a heater in the pump',
    ['actions', 1],
    { ...aDay, do: 'heater', stage: 'pump', power_W: 100, target_C: 24 },
    'actions[1].stage: got "pump (returnPump)"; expected a tank that holds water',
  ],
  [
    'a lamp over a settler',
    ['actions', 1],
    { ...aDay, do: 'light', stage: 'settler', mol_m2_d: 12 },
    'actions[1].stage: got "settler (radialFlowSettler)"; expected a bed (mediaBed, nftChannel, raftBed, tower)',
  ],
  [
    'a lamp in the sump',
    ['actions', 1],
    { ...aDay, do: 'setting', stage: 'sump', lamp_W: 40 },
    'actions[1].stage: got "sump (sump)"; expected a stage with a lamp (uvUnit)',
  ],
  [
    'lettuce on a degassing tank',
    ['actions', 1],
    { ...aDay, do: 'plant', stage: 'degas', crop: 'lettuce' },
    'actions[1].stage: got "degas (degassingTank)"; expected a bed (mediaBed, nftChannel, raftBed, tower)',
  ],
  [
    'a crop nobody knows',
    ['loop', 4, 'crop'],
    { kind: 'orchid' },
    `loop[4].crop.kind: got "orchid"; expected one of ${Object.keys(CROPS).join(', ')}`,
  ],
  [
    'a base nobody knows',
    ['side', 1, 'base'],
    'soap',
    'side[1].base: got "soap"; expected one of Ca(OH)2, KOH, CaCO3, K2CO3, NaHCO3, KHCO3',
  ],
  [
    'a tower of a hand’s breadth',
    ['loop', 4],
    { id: 'rafts', kind: 'tower', area_m2: 0.1 },
    'loop[4].area_m2: got 0.1; expected room for at least 0.001 m³ of water outside a rig',
  ],
  [
    'feed for no tank',
    ['actions', 0, 'tank'],
    'pond',
    'actions[0].tank: got "pond"; expected a fish tank of the loop; no stage has this name (there are fish, settler, mats, degas, rafts, sump, pump, mineral, base)',
  ],
  ['fish in the sump', ['fish', 0, 'tank'], 'sump', 'fish[0].tank: got "sump (sump)"; expected a fish tank of the loop'],
  ['air for the pump', ['actions', 2, 'stage'], 'pump', 'actions[2].stage: got "pump (returnPump)"; expected a tank that holds water'],
  [
    'an action without a day',
    ['actions', 2, 'day'],
    undefined,
    'actions[2].day: got nothing; expected a day, or every_d for something done again and again',
  ],
  ['an action once and again', ['actions', 1, 'day'], 4, 'actions[1].day: got 4; expected either a day or every_d, not both'],
  ['an end before the beginning', ['actions', 1, 'to'], 0, 'actions[1].to: got 0; expected no day before 1, where it begins'],
  [
    'a side stage that returns nowhere',
    ['side', 0, 'returnsTo'],
    'tank',
    'side[0].returnsTo: got "tank"; expected a tank of the loop; no stage has this name (there are fish, settler, mats, degas, rafts, sump, pump, mineral, base)',
  ],
  [
    'sludge taken from the rafts',
    ['side', 0, 'takes', 1],
    'rafts',
    'side[0].takes[1]: got "rafts (raftBed)"; expected a stage that lets out sludge (beadFilter, cartridgeFilter, conicalClarifier, drumFilter, fineFilter, mediaBed, radialFlowSettler, sandFilter, swirlSeparator)',
  ],
  ['base into the pump', ['side', 1, 'into'], 'pump', 'side[1].into: got "pump (returnPump)"; expected a tank of the loop'],
  ['a wrong start', ['start', 'water'], 'rain', 'start.water: got "rain"; expected "source" or a composition'],
  ['a slip in a composition', ['start', 'water'], { TAN: 1, pH: 'x' }, 'start.water.pH: got "x"; expected a number from 2 to 13'],
  ['a rig without flow', ['rig'], { inflow: {} }, 'rig.flow_m3_d: got nothing; expected a number from 0 to 100000 m³/d'],
  ['a stage that is no object', ['loop', 2], 'mats', 'loop[2]: got "mats"; expected an object with a "kind"'],
];

// The compiler asks for one example of everything the plan's type knows; the gate must let each through.
const inLine = STAGES.filter((type) => !type.doses);
const deeds: { [Do in Deed['do']]: Extract<Deed, { do: Do }> } = {
  feed: { do: 'feed', tank: 'fish', g_d: 60 },
  air: { do: 'air', stage: 'rafts', L_min: 25 },
  pump: { do: 'pump', on: false },
  flow: { do: 'flow', flow_m3_h: 1 },
  drain: { do: 'drain', stage: 'mineral' },
  rinse: { do: 'rinse', stage: 'degas' },
  base: { do: 'base', g_d: 10, targetPH: 7, base: 'KHCO3' },
  salt: { do: 'salt', stage: 'sump', g: 100 },
  iron: { do: 'iron', stage: 'sump', g: 1 },
  exchange: { do: 'exchange', stage: 'sump', fraction: 0.1 },
  stock: { do: 'stock', tank: 'fish', species: 'tilapia', number: 5, mass_g: 20 },
  takeFish: { do: 'takeFish', tank: 'fish', number: 5 },
  plant: { do: 'plant', stage: 'rafts', crop: 'lettuce', plants_m2: 20, replant: false },
  harvest: { do: 'harvest', stage: 'rafts' },
  backwash: { do: 'backwash', stage: 'beads' },
  topUp: { do: 'topUp', stage: 'sump', L: 20 },
  singleDose: { do: 'singleDose', stage: 'sump', base: 'KOH', g: 5 },
  heater: { do: 'heater', power_W: 200, target_C: 24 },
  light: { do: 'light', mol_m2_d: 4 },
  setting: { do: 'setting', stage: 'uv', lamp_W: 0 },
  power: { do: 'power', on: false },
};

describe('everything the model knows can be asked for', () => {
  const withFilters = changed(changed(soundPlan(), ['loop', 7], { id: 'beads', kind: 'beadFilter' }), ['loop', 8], {
    id: 'uv',
    kind: 'uvUnit',
  });

  test('every kind of the catalogue of stages, as it stands there', () => {
    expect(inLine.length).toBeGreaterThan(15);
    for (const { kind, defaults } of inLine) {
      const plan = planOf({
        format: 'loopwright.plan/2',
        loop: [
          { id: 'one', kind },
          { id: 'tank', kind: 'sump' },
        ],
        rig: { inflow: {}, flow_m3_d: 1 },
      });
      // Air left out is no air, whatever is usual.
      expect(plan.loop[0], kind).toMatchObject({ ...defaults, ...('air_L_min' in defaults ? { air_L_min: 0 } : {}) });
    }
  });

  test.each(inLine.map(({ kind }) => kind))('the stage %s', (kind) => {
    expect(
      problemsOf({
        format: 'loopwright.plan/2',
        loop: [
          { id: 'one', kind },
          { id: 'tank', kind: 'sump' },
        ],
        rig: { inflow: {}, flow_m3_d: 1 },
      }),
    ).toEqual([]);
  });

  test.each(Object.values(deeds))('the deed $do', (deed) => {
    for (const when of [{ day: 3, hour: 12 }, { every_d: 2 }, { every_d: 2, from: 4, to: 40 }]) {
      const action = JSON.parse(JSON.stringify({ ...when, ...deed })) as Json;
      const plan = planOf(changed(withFilters, ['actions'], [action]));
      expect(plan.actions).toMatchObject([{ ...when, ...deed }]);
    }
  });
});

describe('a broken plan names the place, what stands there and what was expected', () => {
  test.each(faults)('%s', (_name, path, to, message) => {
    expect(problemsOf(changed(soundPlan(), path, to))).toContain(message);
  });

  test('base without a dosing stage', () => {
    const plan = changed(changed(soundPlan(), ['side'], []), ['actions', 1], { day: 2, do: 'base', g_d: 5 });
    expect(problemsOf(plan)).toEqual(['actions[1].do: got "base"; expected a baseDosing among the side stages to act on']);
  });

  test('a rig of a pump alone', () => {
    const plan: Json = { format: 'loopwright.plan/2', loop: [{ id: 'pump', kind: 'returnPump' }], rig: { inflow: {}, flow_m3_d: 1 } };
    expect(problemsOf(plan)).toEqual(['loop: got a list of 1; expected at least one stage that holds water']);
  });

  test('two mineralisation tanks', () => {
    const plan = changed(soundPlan(), ['side', 1], { id: 'second', kind: 'mineralisationTank', returnsTo: 'sump' });
    expect(problemsOf(plan)).toEqual(['side[1].kind: got "mineralisationTank"; expected one mineralisationTank only']);
  });

  test('a text that is no JSON, by line and column', () => {
    expect(problemsIn('{\n  "format": "loopwright.plan/2",\n  "days": 60,,\n}')).toEqual([
      'line 3, column 14: got ",\\n}"; expected a key in double quotes',
    ]);
    expect(problemsIn('')).toEqual(['line 1, column 1: got the end of the text; expected a value']);
  });

  test('a text too long to be a plan', () => {
    expect(problemsIn(' '.repeat(1_000_001))).toEqual(['(whole file): got 1000001 characters; expected at most 1000000 characters']);
  });

  test('never more problems than a person can read', () => {
    const read = readPlan(JSON.stringify({ ...soundPlan(), actions: Array.from({ length: 2000 }, () => ({ do: 'dance' })) }));
    expect('problems' in read && read.problems.length).toBe(40);
  });
});
