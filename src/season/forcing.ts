// What acts on the water until the next cut: temperature, flow, gas, solids, light, base, activities, and which processes can run.
import { ATOM, CA, IC, LEAF } from '../model/components';
import { calciteSaturation } from '../model/equilibrium/calcite';
import { CONDITIONAL_LENGTH } from '../model/equilibrium/conditional';
import { setGasForcing } from '../model/forcing/gasForcing';
import { setSolidsForcing } from '../model/forcing/solidsForcing';
import type { StageSettings } from '../model/forcing/solidsForcing';
import { fixDiagonals } from '../model/network/blockSolve';
import { fishAt } from '../model/organisms/fish/fishAt';
import { cropAt } from '../model/organisms/plants/cropAt';
import { acidityFactor, lightGrowth, plateau } from '../model/organisms/plants/growth';
import { ID } from '../model/processes/catalogue';
import { DOSE_OF } from '../model/processes/dosing';
import type { Link } from '../model/network/loopData';
import { rootTransfer } from '../model/forcing/rootTransfer';
import type { StageSizes } from '../model/stages/stageScience';
import { exp, log10 } from '../numerics/elementary';
import { setActivities } from './activities';
import type { StageEntry } from './assemble';
import { lightNow } from './climate';
import { running } from './deeds';
import type { SpeciesKind } from './plan';
import { settleAcidity } from './reading';
import type { FishState, RunState } from './runState';
import { offsetOf, warmTo } from './runtime';
import type { Runtime } from './runtime';
import { EMPTY_BED, EMPTY_TANK } from '../catalogue/standIn';

/** Sets all forcing for what follows: temperature, flow, gas, solids, light, dosing, activities. */
export function refreshForcing(runtime: Runtime, state: RunState, day: number, hour: number): void {
  const { data, assembly, plan, values } = runtime;
  warmTo(runtime, state.T_C);
  settleAcidity(runtime, state.y);
  const flowOf = setFlows(runtime, state);
  const light = lightOf(runtime, state, day);
  data.light = (t) => lightNow(plan.climate, (t - Math.floor(t + 1e-9)) * 24);
  const ofHour = airShare(runtime, state, day * 24 + hour);
  for (const stage of assembly.stages) {
    const flow = stage.side ? 0 : flowOf(stage.id);
    const air = (ofHour * (state.air[stage.id] ?? 0) * stage.count) / stage.cells;
    const settings = settingsOf(state, stage);
    for (let c = stage.first; c < stage.first + stage.cells; c++) {
      const cell = assembly.cells[c];
      cell.flow = flow;
      setGasForcing(cell, values, runtime.at.gas, air, assembly.falls[c], cell.flow);
      setSolidsForcing(cell, stage.type, state.y, offsetOf(c), values, state.gas[c], settings);
      setActivities(runtime, state.y, c);
      if (cell.bed) {
        const pH = 3 - log10(data.h[c]);
        const bed = state.beds.find((it) => c >= it.first && c < it.first + it.cells);
        const crop = values.crops[bed?.crop ?? EMPTY_BED];
        if (bed) cell.cropAt = cropAt(values, bed.crop);
        cell.growth = bed
          ? lightGrowth(
              crop,
              state.y[offsetOf(c) + LEAF] / cell.floor,
              state.lights[stage.id] ?? light,
              state.T_C,
              values.heat.photonsPerJoule,
            )
            * cell.floor
            * acidityFactor(crop, pH)
          : 0;
        cell.rootTransfer = rootTransfer(cell, values);
        cell.rootTarget =
          crop.rootLeast
          + (1 - crop.rootLeast)
            * plateau(state.T_C, crop.coldStop, crop.optimumLow - crop.rootWider, crop.optimumHigh + crop.rootWider, crop.hotStop);
      }
      if (cell.fish) cell.fishAt = fishAt(values, mostOf(state, c), state.T_C);
      cell.doseRate = 0;
    }
  }
  setDosing(runtime, state, hour);
  // What cannot run any longer leaves no rate behind.
  data.r0.fill(0);
  data.r1.fill(0);
  fixDiagonals(data);
}

/** The species that makes up most of a tank's fish: the water sees its rates. */
function mostOf(state: RunState, cell: number): SpeciesKind {
  let most: FishState | undefined;
  for (const fish of state.fish) if (fish.cell === cell && fish.mass > (most?.mass ?? -1)) most = fish;
  return most?.species ?? EMPTY_TANK;
}

/** Daily light integral of a day, mol/m²/d: the climate's, or what a person set for all beds; none where the day has no length. */
export const lightOf = (runtime: Runtime, state: RunState, day: number): number =>
  state.light >= 0 && runtime.plan.climate.dayLength_h > 0
    ? state.light
    : runtime.weather.light[Math.min(day, runtime.weather.light.length - 1)];

/** Share of the air that blows: all with power; with a battery a part for so many hours; else none. */
function airShare({ plan, values }: Runtime, state: RunState, hour: number): number {
  if (state.powerOn) return 1;
  return hour - state.powerOffAt < (plan.backupAir_h ?? 0) ? values.hydraulics.backupShare : 0;
}

/** Sets the flow of every link, those over a rim among them. @returns the flow that reaches each stage */
function setFlows(runtime: Runtime, state: RunState): (stage: string) => number {
  const { data, assembly, plan, circuit, links } = runtime;
  if (!circuit) {
    const flow = plan.rig || running(state) ? state.flow_m3_d : 0;
    for (const link of links) link.flow = flow;
    return () => flow;
  }
  const { run } = state;
  const place = new Map(circuit.stages.map(({ entry }, i) => [entry.id, i]));
  const last = circuit.stages.length - 1;
  const placeOf = (cell: number): number => place.get(assembly.cells[cell].stage) ?? 0;
  for (const link of links) {
    const i = placeOf(link.from);
    link.flow = i === placeOf(link.to) ? run.arriving_m3_d[i] : i === last ? run.flow_m3_d : run.arriving_m3_d[i] - run.spill_m3_d[i];
  }
  const spills = circuit.stages.flatMap(({ entry }, i): Link[] =>
    run.spill_m3_d[i] > 0
      ? [{ from: entry.first + entry.cells - 1, to: -1, flow: run.spill_m3_d[i], shear: 0, superfine: 0, rate: 0 }]
      : [],
  );
  data.links = spills.length > 0 ? [...links, ...spills] : links;
  return (id) => run.arriving_m3_d[place.get(id) ?? last];
}

function settingsOf(state: RunState, stage: StageEntry): StageSettings {
  const sizes: StageSizes = stage.sizes;
  const lamp = state.powerOn ? (state.lamps[stage.id] ?? 0) * stage.count : 0;
  return { outlet: sizes.outlet ?? 'bottomLift', lamp_W: lamp, mesh_um: sizes.mesh_um ?? 60 };
}

/** Base trickles in at a rate that follows the pH with a lag, up to the cap. */
function setDosing(runtime: Runtime, state: RunState, hour: number): void {
  const side = runtime.assembly.dosing;
  if (!side) return;
  const stage = runtime.assembly.stages.find((entry) => entry.id === side.into);
  if (!stage) return;
  const { dosingBand, dosingLag } = runtime.values.practice;
  const pH = 3 - log10(runtime.data.h[stage.first]);
  const wish = Math.min(1, Math.max(0, (state.base.targetPH + dosingBand / 2 - pH) / dosingBand));
  // First-order lag over the time since the last cut.
  const now = state.day + hour / 24;
  const share = 1 - exp(-Math.min(1, Math.max(0, now - state.base.at)) / dosingLag);
  state.base.at = now;
  state.base.level += (wish - state.base.level) * share;
  const cell = runtime.assembly.cells[stage.first];
  let rate = state.base.g_d * state.base.level;
  // Limestone dissolves only as far as the water lets it; what does not stays in the dosing tank.
  if (state.base.kind === 'CaCO3') {
    const o = offsetOf(stage.first);
    const omega = calciteSaturation(
      state.T_C,
      state.y[o + CA] / cell.volume / ATOM.Ca,
      state.y[o + IC] / cell.volume,
      runtime.data.h[stage.first],
      runtime.data.constants,
      stage.first * CONDITIONAL_LENGTH,
    );
    rate *= Math.max(0, 1 - omega);
  }
  cell.doseProcess = ID[DOSE_OF[state.base.kind]];
  cell.doseRate = rate;
}
