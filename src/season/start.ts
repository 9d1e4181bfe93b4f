// The state a season begins with: water everywhere, films bare, seeded or mature, books empty.
import { pumpAt } from '../catalogue/can';
import { ALL, BA, BH, BN, FLOWING, O2, ROOT, STATES } from '../model/components';
import { PROCESSES } from '../model/processes/catalogue';
import type { StageSizes } from '../model/stages/stageScience';
import { pow } from '../numerics/elementary';
import { stream } from '../numerics/streams';
import { runCircuit, usualCurve } from './circuit';
import type { RunState } from './runState';
import type { Runtime } from './runtime';
import { concentrationsOf } from './water';

export function startState(runtime: Runtime): RunState {
  const { plan, assembly, values, data } = runtime;
  const cells = assembly.cells;
  const y = new Float64Array(cells.length * STATES);
  const water = plan.rig
    ? data.inflow
    : plan.start.water === 'source'
      ? runtime.source
      : concentrationsOf({ ...plan.source, ...plan.start.water }, runtime.startT_C, data.saturation, values);
  const draw = stream(plan.seed, 'inoculum');
  const k = values.kinetics;
  const share =
    plan.start.biofilm === 'bare'
      ? k.inoculumBare
      : plan.start.biofilm === 'seeded'
        ? values.practice.seededShare
        : values.practice.matureShare;
  cells.forEach((cell, c) => {
    const o = c * STATES;
    for (let i = 0; i < FLOWING; i++) y[o + i] = water[i] * cell.volume;
    // Chance of first settlers: within a factor of 1.5 either way where the film is bare.
    const luck = plan.start.biofilm === 'bare' ? pow(1.5, 2 * draw() - 1) : 1;
    y[o + BA] = share * luck * k.aobCapacity * cell.film;
    y[o + BN] = share * luck * k.nobCapacity * cell.film;
    y[o + BH] = (plan.start.biofilm === 'bare' ? 0.01 : plan.start.biofilm === 'seeded' ? 0.1 : 0.3) * cell.film;
    y[o + ROOT] = cell.bed ? 1 : 0;
  });
  const heldO2 = plan.rig?.hold?.O2_mg_L;
  if (heldO2 !== undefined)
    cells.forEach((cell, c) => {
      y[c * STATES + O2] = heldO2 * cell.volume;
    });
  const air: Record<string, number> = {};
  const lamps: Record<string, number> = {};
  for (const stage of assembly.stages) air[stage.id] = ('air_L_min' in stage.sizes ? stage.sizes.air_L_min : 0) ?? 0;
  for (const stage of assembly.stages) lamps[stage.id] = (stage.sizes as StageSizes).lamp_W ?? 0;
  const pump = plan.loop[pumpAt(plan.loop)];
  const flow = plan.rig ? plan.rig.flow_m3_d : pump ? (pump.flow_m3_h ?? 1) * 24 : 0;
  const { circuit } = runtime;
  // Tanks are filled to where they stand when the loop runs as built, as far as no link spills.
  const usual = circuit
    ? runCircuit(
        circuit,
        usualCurve(circuit, flow),
        0,
        circuit.stages.map(() => 0),
        runtime.startT_C,
      )
    : null;
  const lastWater = plan.loop.find((stage) => stage.id === circuit?.stages.at(-1)?.entry.id);
  return {
    day: 0,
    y,
    h: new Float64Array(cells.length).fill(1e-4),
    constants: new Float64Array(data.constants.length),
    firstSteps: new Float64Array(96),
    T_C: runtime.startT_C,
    air,
    lamps,
    pumpOn: true,
    powerOn: true,
    powerOffAt: -1,
    flow_m3_d: flow,
    volumes: Float64Array.from(cells, (cell) => cell.volume),
    floatValve: lastWater?.floatValve ?? pump?.floatValve ?? true,
    dry: false,
    drewAir: false,
    settledFor: '',
    run: usual
      ? {
          flow_m3_d: usual.flow_m3_d,
          level_m: usual.level_m,
          arriving_m3_d: usual.arriving_m3_d,
          spill_m3_d: usual.spill_m3_d.map(() => 0),
          power_W: usual.power_W,
        }
      : { flow_m3_d: flow, level_m: [], arriving_m3_d: [], spill_m3_d: [], power_W: 0 },
    heaters: {},
    light: -1,
    lights: {},
    evaporated: 0,
    feeds: [],
    base: {
      kind: assembly.dosing?.base ?? 'KHCO3',
      g_d: assembly.dosing?.g_d ?? 0,
      targetPH: assembly.dosing?.targetPH ?? 7,
      level: 0,
      at: 0,
    },
    fish: [],
    beds: [],
    gas: new Float64Array(cells.length),
    extents: new Float64Array(PROCESSES),
    put: new Float64Array(ALL),
    taken: new Float64Array(ALL),
    held: 0,
    clipped: new Float64Array(STATES),
    water: { put: 0, taken: 0 },
    waterUsed: 0,
    discharged: { nitrogen: 0, solids: 0 },
    energy_kWh: 0,
    work_h: 0,
    steps: 0,
    rejections: 0,
    warned: [],
  };
}
