// Where water stands when the loop runs: over its own lip, or backed up by the next tank, or at the rim with the rest on the floor.
import { largestWhere } from './edge';
import { headOverLip_m } from './pipe';
import type { HydraulicNumbers } from '../parameters/values';
import type { Loss } from './pump';

/** A tank on the way down. Heights over one common ground. */
export interface LevelStage {
  /** where its water leaves: the lip's height; for the pump's tank, the level its water stands at */
  overflow_m: number;
  rim_m: number;
  /** plan area of free water, all units together */
  area_m2: number;
  /** length of the overflow's lip */
  lip_m: number;
  /** head lost on the way to the next tank; the pump's tank has none */
  linkLoss_m: Loss;
}

/** One entry a stage, in their order. */
export interface Levels {
  level_m: number[];
  /** flow that arrives, m³/d */
  arriving_m3_d: number[];
  /** share of what arrives that goes on; 1 where nothing arrives and for the pump's tank */
  passes: number[];
  spill_m3_d: number[];
  /**
   * fall that the link to the next tank lacks to run without backing up, at the pump's flow and with the next tank at its own lip; 0 for
   * the pump's tank
   */
  short_m: number[];
}

/**
 * Levels and flows of a running loop, stages in flow order from the pump's outlet to the pump's tank.
 * A stage stands at its lip and the head over it, or as high as the next stage's level and the link's loss push it; at its rim only as much
 * goes on as keeps it there, and the rest spills. Lip and link lose head that does not fall with flow, so each stage has one greatest flow
 * it can pass.
 * @param flow_m3_d what the pump delivers, 0 or more
 */
export function runningLevels(stages: readonly LevelStage[], flow_m3_d: number, h: HydraulicNumbers): Levels {
  const last = stages.length - 1;
  // Most a stage can pass on, found from the pump's tank upward since each stands on the next.
  const most: number[] = stages.map(() => flow_m3_d);

  /** Level that a flow through stage i asks for over what the next stage stands at. */
  const over = (i: number, flow: number, next: number): number =>
    Math.max(stages[i].overflow_m + headOverLip_m(flow, stages[i].lip_m, h), next + stages[i].linkLoss_m(flow));

  /** Level that a flow through stage i asks for, were its own rim without end; stages below spill at theirs. */
  function asked(i: number, flow: number): number {
    if (i === last) return stages[last].overflow_m;
    if (i + 1 === last) return over(i, flow, asked(last, flow));
    // One that passes nothing at all, its lip or the next water above its rim, stands at that rim.
    return over(i, flow, most[i + 1] >= flow ? Math.min(asked(i + 1, flow), stages[i + 1].rim_m) : stages[i + 1].rim_m);
  }

  // The pump's whole flow as far up as the stages below pass it; where one does not, what it does pass is sought.
  const whole: number[] = stages.map(() => stages[last].overflow_m);
  for (let i = last - 1; i >= 0; i--) {
    whole[i] = over(i, flow_m3_d, i + 1 === last || most[i + 1] >= flow_m3_d ? whole[i + 1] : stages[i + 1].rim_m);
    if (whole[i] > stages[i].rim_m) most[i] = largestWhere(flow_m3_d, (flow) => stages[i].rim_m - asked(i, flow));
  }

  const out: Levels = { level_m: [], arriving_m3_d: [], passes: [], spill_m3_d: [], short_m: [] };
  let arriving = flow_m3_d;
  stages.forEach((stage, i) => {
    const passing = Math.min(arriving, most[i]);
    out.level_m.push(passing < arriving ? stage.rim_m : Math.min(stage.rim_m, passing === flow_m3_d ? whole[i] : asked(i, passing)));
    out.arriving_m3_d.push(arriving);
    out.passes.push(arriving > 0 ? passing / arriving : 1);
    out.spill_m3_d.push(arriving - passing);
    out.short_m.push(i === last ? 0 : missingFall(stage, stages[i + 1], i + 1 === last, flow_m3_d, h));
    arriving = passing;
  });
  return out;
}

function missingFall(stage: LevelStage, next: LevelStage, nextIsPumpTank: boolean, flow: number, h: HydraulicNumbers): number {
  const nextLevel = next.overflow_m + (nextIsPumpTank ? 0 : headOverLip_m(flow, next.lip_m, h));
  return Math.max(0, nextLevel + stage.linkLoss_m(flow) - stage.overflow_m - headOverLip_m(flow, stage.lip_m, h));
}
