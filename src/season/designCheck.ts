// A design looked over before any run: what the pump gives against its lift, which link lacks fall or spills, whether the sump holds what
// runs down.
import { stopOfPump } from '../model/hydraulics/drainDown';
import { headLoss_m, pipeVolume_m3 } from '../model/hydraulics/pipe';
import { pumpAt } from '../catalogue/can';
import { valuesWith } from '../catalogue/values';
import { assemble } from './assemble';
import { circuitOf, runCircuit, usualCurve } from './circuit';
import { designOf } from './design';
import type { Design } from './design';
import type { Plan } from './plan';

/** °C at which a design is looked at */
const USUAL_T_C = 22;

/**
 * The design with every problem found.
 * @param parameters in place of the recorded values, by `group.name`
 * @throws RangeError where the loop names a kind outside the catalogue
 */
export function checkDesign(plan: Plan, parameters: Readonly<Record<string, number>> = {}): Design {
  const values = valuesWith(parameters);
  const design = designOf(plan, values);
  if (!design.stages.some((stage) => stage.volume_m3 > 0)) return design;
  const circuit = circuitOf(plan, assemble(plan, values), design, values);
  if (!circuit) return design;
  const pump = plan.loop[pumpAt(plan.loop)];
  const setting = (pump?.flow_m3_h ?? 1) * 24;
  const { stages } = circuit;
  const now = runCircuit(
    circuit,
    usualCurve(circuit, setting),
    0,
    stages.map(() => 0),
    USUAL_T_C,
  );
  const problems = [...design.problems];
  const say = (i: number, key: string, values: Record<string, number>): void => {
    problems.push({ stage: stages[i].entry.id, key, values });
  };
  stages.slice(0, -1).forEach((stage, i) => {
    // A link that only backs its tank up a little is no fault; one that brings it over its rim, or runs uphill, is.
    const uphill = stages[i + 1].lip_m - stage.lip_m;
    if (now.spill_m3_d[i] > 1e-6) say(i, 'design.overflow', { L_h: Math.round((now.spill_m3_d[i] / 24) * 1000) });
    // Only the link at fault is named, not the tanks that it backs up.
    if (now.short_m[i] > 0.001 && (uphill > -1e-9 || now.spill_m3_d[i] > 1e-6))
      say(i, 'design.uphill', { cm: Math.max(1, Math.round(100 * now.short_m[i])) });
  });
  if (pump !== undefined && now.flow_m3_d < 0.02 * setting) problems.push({ stage: pump.id, key: 'design.pumpSmall', values: {} });
  const rows = stages.map((stage) => ({
    overflow_m: stage.lip_m,
    rim_m: stage.rim_m,
    area_m2: stage.area_m2,
    lip_m: stage.lipLength_m,
    linkLoss_m: (flow: number) => headLoss_m(flow, stage.pipe, USUAL_T_C, values.hydraulics),
  }));
  const stop = stopOfPump(rows, now.level_m, pipeVolume_m3(circuit.riser));
  if (!stop.holds) say(stages.length - 1, 'design.sumpSmall', { L: Math.round(stop.spills_m3 * 1000) });
  return { ...design, problems };
}
