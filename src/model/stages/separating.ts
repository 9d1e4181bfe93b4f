// How still water parts from solids in a cone, and how a filter keeps them until it blocks: what several stages do alike.
import type { Cell } from '../cell';
import type { Values } from '../parameters/values';
import { cleared, passing } from './solidsTerms';
import type { SolidsConditions } from './stageScience';

/**
 * Solids sink into a cone until it is full; past its room sludge washes out, and gas lifts some earlier.
 * @param efficiency share of what ideal settling over the floor would keep, 0–1
 */
export function restInCone(cell: Cell, c: SolidsConditions, efficiency: number): void {
  const k = c.values.kinetics;
  const { coneFull, coneScour, restStill } = c.values.stages;
  const full = Math.min(c.fill, 1.2); // a guard: from 1 on nothing is kept
  const left = Math.max(0, 1 - full * full * full * full) * efficiency;
  cell.settle0 = cleared(k.settleCoarse, cell.floor, cell.flow, left, restStill);
  cell.settle1 = cleared(k.settleFine, cell.floor, cell.flow, left, restStill);
  cell.settle2 = cleared(k.settleSuperfine, cell.floor, cell.flow, left, restStill);
  cell.stir = (c.fill > coneFull && cell.flow > 0 ? coneScour * (c.fill - coneFull) : 0) + k.gasLift * c.gas;
}

/** Keeps shares of coarse, fine and superfine of the water that still passes; a filter past its room lets go of some. */
export function keepBySize(cell: Cell, c: SolidsConditions, coarse: number, fine: number, superfine: number): void {
  const square = c.clog * c.clog;
  const through = 1 / (1 + square * square); // share of the water that does not find a way past
  cell.catch0 = passing(coarse * through, cell.flow);
  cell.catch1 = passing(fine * through, cell.flow);
  cell.catch2 = passing(superfine * through, cell.flow);
  cell.release = cell.flow > 0 && c.clog > 1 ? c.values.stages.blockedShed * (c.clog - 1) : 0;
}

/**
 * Head in m that water loses in a filter bed: even in its speed (Darcy), more as it blocks.
 * @param clean_m loss of a clean bed at the speed `usual_m_d`, m and m/d
 * @param clog 0 clean, 1 when half the water seeks a way past
 */
export function lossThrough(clean_m: number, usual_m_d: number, flow_m3_d: number, floor_m2: number, clog: number, v: Values): number {
  const speed = Math.max(0, flow_m3_d) / floor_m2 / usual_m_d;
  const { clogLoss, worstClog } = v.devices;
  return clean_m * speed * (1 + clogLoss * Math.min(Math.max(clog, 0), worstClog));
}
