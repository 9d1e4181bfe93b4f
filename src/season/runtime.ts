// What a season works with and never changes by living: plan, numbers, cells, matrix, weather. Built once from the plan.
import { STATES } from '../model/components';
import { gasAt, saturationAt } from '../model/forcing/gasForcing';
import type { GasAt } from '../model/forcing/gasForcing';
import { debyeHuckelA } from '../model/equilibrium/activity';
import { thermodynamicConstants } from '../model/equilibrium/constants';
import type { ThermodynamicConstants } from '../model/equilibrium/constants';
import { LoopSystem } from '../model/network/loopSystem';
import { makeLoopData } from '../model/network/loopData';
import type { Link, LoopData } from '../model/network/loopData';
import { kineticsAt } from '../model/processes/kineticsAt';
import { exp10 } from '../numerics/elementary';
import { Rosenbrock2 } from '../numerics/rosenbrock';
import { assemble } from './assemble';
import { circuitOf } from './circuit';
import type { Circuit } from './circuit';
import { designOf } from './design';
import type { Assembly } from './assemble';
import { drawWeather } from './climate';
import type { Weather } from './climate';
import type { Plan } from './plan';
import { placesRead } from './placesRead';
import { scienceWith } from './science';
import type { Science } from './science';
import { setTolerances } from './tolerances';
import { concentrationsOf } from './water';

export interface Runtime extends Science {
  plan: Plan;
  assembly: Assembly;
  weather: Weather;
  data: LoopData;
  system: LoopSystem;
  solver: Rosenbrock2;
  /** source water, concentrations of the flowing components */
  source: Float64Array;
  /** what depends on temperature alone, for the temperature last asked for */
  at: { T_C: number; gas: GasAt; constants: ThermodynamicConstants; A: number };
  startT_C: number;
  /** the loop as a circuit, or null on a bench; usual volume of the pump's tank, m³; links without spills */
  circuit: Circuit | null;
  /** m² of water open to the air, and of walls and floors */
  openWater_m2: number;
  wall_m2: number;
  usualVolume: number;
  links: Link[];
}

/** Relative tolerance of a season: chosen for key errors under 0.5 % at the least work. */
export const TOLERANCE = 4e-3;

export function makeRuntime(plan: Plan, parameters: Readonly<Record<string, number>> = {}, tolerance = TOLERANCE): Runtime {
  const science = scienceWith(parameters);
  const { values, matrix } = science;
  const assembly = assemble(plan, values);
  const startT_C = plan.rig?.hold?.T_C ?? plan.climate.water_C ?? plan.climate.air_C.mean;
  const saturation = saturationAt(startT_C, values);
  const links = assembly.steps.map((step): Link => ({
    from: step.from,
    to: step.to,
    flow: 0,
    shear: step.pump ? values.kinetics.pumpShear : 0,
    superfine: values.kinetics.pumpShearSuperfine,
    rate: 0,
  }));
  const data = makeLoopData(assembly.cells, links, matrix, kineticsAt(values, startT_C), saturation);
  if (plan.rig) {
    data.holdO2 = plan.rig.hold?.O2_mg_L ?? -1;
    data.holdH = plan.rig.hold?.pH === undefined ? 0 : exp10(3 - plan.rig.hold.pH);
    const inflow = { ...plan.rig.inflow };
    if (inflow.pH === undefined && plan.rig.hold?.pH !== undefined) inflow.pH = plan.rig.hold.pH;
    data.inflow.set(concentrationsOf(inflow, startT_C, saturation, values));
  }
  setTolerances(data, tolerance / TOLERANCE);
  const circuit = circuitOf(plan, assembly, designOf(plan, values), values);
  const tank = circuit?.stages.at(-1)?.entry;
  const system = new LoopSystem(data, tolerance);
  return {
    plan,
    values,
    content: science.content,
    dry: science.dry,
    matrix,
    uneaten: science.uneaten,
    assembly,
    weather: drawWeather(plan.climate, plan.seed, plan.days),
    data,
    system,
    solver: new Rosenbrock2(system, placesRead(assembly.cells)),
    source: concentrationsOf(plan.source, startT_C, saturation, values),
    at: { T_C: NaN, gas: gasAt(startT_C, values), constants: thermodynamicConstants(startT_C), A: debyeHuckelA(startT_C) },
    startT_C,
    openWater_m2: assembly.cells.reduce((sum, cell) => sum + cell.surface, 0),
    wall_m2: assembly.cells.reduce(
      (sum, cell) => sum + cell.floor + Math.max(0, cell.floor - cell.surface) + 4 * Math.sqrt(cell.floor) * (cell.volume / cell.floor),
      0,
    ),
    circuit,
    usualVolume: tank ? assembly.cells.slice(tank.first, tank.first + tank.cells).reduce((sum, cell) => sum + cell.volume, 0) : 0,
    links,
  };
}

/** Moves everything that hangs on temperature to a new one; cheap where it has not changed. */
export function warmTo(runtime: Runtime, T_C: number): void {
  if (runtime.at.T_C === T_C) return;
  runtime.at = { T_C, gas: gasAt(T_C, runtime.values), constants: thermodynamicConstants(T_C), A: debyeHuckelA(T_C) };
  runtime.data.kinetics = kineticsAt(runtime.values, T_C);
  runtime.data.saturation = saturationAt(T_C, runtime.values);
}

export const offsetOf = (cell: number): number => cell * STATES;
