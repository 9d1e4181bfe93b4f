// The loop as a circuit: what the pump delivers against lift and losses, how high water stands in each tank, what spills over a rim.
// Worked out at cuts; only the pump's tank gains or loses water, the others stand at their lips and what flows over them.
import { pumpAt } from '../catalogue/can';
import { runningLevels } from '../model/hydraulics/levels';
import type { LevelStage } from '../model/hydraulics/levels';
import { lossOf, usualLink } from '../model/hydraulics/pipe';
import type { Pipe } from '../model/hydraulics/pipe';
import { curveFor, electricalPower_W, operatingFlow_m3_d } from '../model/hydraulics/pump';
import type { PumpCurve } from '../model/hydraulics/pump';
import { keptBy } from '../model/keptBy';
import type { HydraulicNumbers, Values } from '../model/parameters/values';
import type { Assembly, StageEntry } from './assemble';
import type { Design } from './design';
import type { Plan, StageSpec } from './plan';

export interface CircuitStage {
  entry: StageEntry;
  lip_m: number;
  rim_m: number;
  area_m2: number;
  pipe: Pipe;
  lipLength_m: number;
}
export interface Circuit {
  /** from the pump's outlet round to the pump's tank, which is last */
  stages: CircuitStage[];
  riser: Pipe;
  /** where the riser pours out, m */
  top_m: number;
  /** the plan's own curve, or null: then a flow sets it */
  curve: PumpCurve | null;
  values: Values;
}

/** How the circuit runs; entries in the order of its stages. */
export interface Running {
  flow_m3_d: number;
  level_m: number[];
  arriving_m3_d: number[];
  spill_m3_d: number[];
  short_m: number[];
  power_W: number;
}

const SECONDS_PER_DAY = 86400;
const CIRCLE = Math.PI / 4;

/** Inner diameter that keeps a flow to a speed, m. */
const wide = (flow_m3_d: number, speed_m_s: number): number => Math.sqrt(flow_m3_d / SECONDS_PER_DAY / (CIRCLE * speed_m_s));

/** The circuit of a plan, or null where there is none (a rig, or no pump). */
export function circuitOf(plan: Plan, assembly: Assembly, design: Design, values: Values): Circuit | null {
  const h = values.hydraulics;
  const at = pumpAt(plan.loop);
  if (plan.rig || at < 0) return null;
  const pump = plan.loop[at];
  const flow = 24 * (pump.curve ? 0.6 * pump.curve.maxFlow_m3_h : (pump.flow_m3_h ?? 1));
  const after = [...plan.loop.slice(at + 1), ...plan.loop.slice(0, at)];
  const stages = after.flatMap((spec): CircuitStage[] => {
    const entry = assembly.stages.find(({ id, cells }) => id === spec.id && cells > 0);
    const level = design.stages.find(({ id }) => id === spec.id);
    if (!entry || !level) return [];
    // Free water: what a tank holds by how deep it is; less than its plan where gravel or media fill it.
    const area = level.volume_m3 / level.depth_m;
    return [
      {
        entry,
        lip_m: level.level_m,
        rim_m: Math.max(level.floor_m + level.height_m, level.level_m + h.freeboard),
        area_m2: area,
        pipe: outlet(spec, flow, h),
        lipLength_m: flow / SECONDS_PER_DAY / (h.lipCoefficient * h.lipHead * Math.sqrt(h.lipHead)),
      },
    ];
  });
  const tank = stages[stages.length - 1];
  const top = stages[0];
  if (!tank || !top || stages.length < 2) return null;
  // After the pump filters stand in the pressure pipe; an open tank is poured into over its rim.
  const top_m = top.rim_m;
  const length = top_m - tank.lip_m + h.riserRun;
  const width = pump.pipe_mm ? pump.pipe_mm / 1000 : Math.max(h.riserDiameter, wide(flow, h.riserSpeed));
  return { stages, riser: { ...usualLink(h, width, length) }, top_m, curve: pump.curve ?? null, values };
}

function outlet(spec: StageSpec, flow: number, h: HydraulicNumbers): Pipe {
  return usualLink(h, spec.pipe_mm ? spec.pipe_mm / 1000 : Math.max(h.linkDiameter / 1.5, wide(flow, h.linkSpeed)));
}

/**
 * Runs the circuit.
 * @param curve the pump's own, or the one `usualCurve` finds for the flow a person set
 * @param tankLevel_m how far the pump's tank stands above or below its usual level
 * @param clog blockage of each stage
 */
export function runCircuit(circuit: Circuit, curve: PumpCurve, tankLevel_m: number, clog: readonly number[], T_C: number): Running {
  const { stages, riser, top_m, values } = circuit;
  const h = values.hydraulics;
  const tank = stages[stages.length - 1];
  // Between pump and fish tank a pressure filter's loss is the pump's; in gravity flow it raises the water before it.
  const lifted = stages.findIndex((stage) => stage.entry.type.keepsFish);
  const pressed = (i: number): boolean => i < lifted && (stages[i].entry.type.pressurised ?? false);
  const own = (i: number, flow: number): number => stages[i].entry.type.loss?.(stages[i].entry.sizes, flow, clog[i], values) ?? 0;
  const inPressure = stages.map((_, i) => i).filter(pressed);
  const rise = lossOf(riser, T_C, h);
  const loss = (flow: number): number => inPressure.reduce((sum, i) => sum + own(i, flow), rise(flow));
  const lift = top_m - tank.lip_m - tankLevel_m;
  const flow_m3_d = operatingFlow_m3_d(curve, lift, loss);
  const rows = stages.map((stage, i): LevelStage => {
    const pipeLoss = lossOf(stage.pipe, T_C, h);
    const count = stage.entry.count;
    return {
      overflow_m: i === stages.length - 1 ? stage.lip_m + tankLevel_m : stage.lip_m,
      rim_m: stage.rim_m,
      area_m2: stage.area_m2,
      lip_m: stage.lipLength_m,
      linkLoss_m: pressed(i) ? (flow) => pipeLoss(flow / count) : (flow) => pipeLoss(flow / count) + own(i, flow),
    };
  });
  const { level_m, arriving_m3_d, spill_m3_d, short_m } = runningLevels(rows, flow_m3_d, h);
  return { flow_m3_d, level_m, arriving_m3_d, spill_m3_d, short_m, power_W: electricalPower_W(flow_m3_d, lift + loss(flow_m3_d), T_C, h) };
}

/** The weakest sensible pump that delivers a flow at the usual level, or the pump's own curve. */
export const usualCurve = (circuit: Circuit, setting_m3_d: number): PumpCurve => circuit.curve ?? chosenCurve(circuit, setting_m3_d);

const chosenCurve = keptBy(chooseCurve);

function chooseCurve(circuit: Circuit, setting_m3_d: number): PumpCurve {
  const tank = circuit.stages[circuit.stages.length - 1];
  if (!(setting_m3_d > 0)) return NO_PUMP;
  const { stages, riser, top_m, values } = circuit;
  const lifted = stages
    .slice(
      0,
      stages.findIndex((stage) => stage.entry.type.keepsFish),
    )
    .filter((stage) => stage.entry.type.pressurised);
  const rise = lossOf(riser, USUAL_T_C, values.hydraulics);
  const loss = (flow: number): number =>
    lifted.reduce((sum, { entry }) => sum + (entry.type.loss?.(entry.sizes, flow, 0, values) ?? 0), rise(flow));
  return curveFor(setting_m3_d / 24, top_m - tank.lip_m, loss, values.hydraulics);
}

const NO_PUMP: PumpCurve = { maxHead_m: 0, maxFlow_m3_h: 0 };
/** °C at which a pump is chosen */
const USUAL_T_C = 20;
