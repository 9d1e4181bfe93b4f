// From a plan to cells and links: which water runs where, what each cell is, which beds and tanks there are.
import { pumpAt } from '../catalogue/can';
import { stageType } from '../catalogue/stageTypes';
import type { StageType } from '../model/stages/stageType';
import type { Values } from '../model/parameters/values';
import { makeCell } from '../model/cell';
import type { Cell } from '../model/cell';
import { doses, takesSolids } from './plan';
import type { BaseDosingSide, MineralisationSide, Plan, StageSpec } from './plan';

export interface StageEntry {
  id: string;
  kind: string;
  type: StageType;
  sizes: StageSpec | MineralisationSide;
  first: number;
  cells: number;
  side: boolean;
  count: number;
}
/** From one cell to the next along the loop; `pump` where the return pump stands between; `fall` in m that water drops. */
export interface Step {
  from: number;
  to: number;
  pump: boolean;
  fall: number;
}

export interface Assembly {
  cells: Cell[];
  stages: StageEntry[];
  steps: Step[];
  /** m that the water coming to each cell drops, by cell */
  falls: Float64Array;
  /** the cells of the loop in flow order, beginning at the fish tank (or a rig's first stage) */
  order: number[];
  /** the cell that is topped up: the first of the pump's tank */
  sump: number;
  mineral: MineralisationSide | null;
  dosing: BaseDosingSide | null;
}

/** Where two stages stand apart by gravity, m. */
export const FALL_M = 0.05;

/**
 * Lays out cells in solving order: the largest stage first, then along the flow; side tanks last.
 * @throws RangeError where a kind is unknown or the loop holds no water
 */
export function assemble(plan: Plan, values: Values): Assembly {
  const wet = plan.loop.map((sizes) => ({ sizes, type: stageType(sizes.kind) })).filter(({ type }) => type.cells > 0);
  if (wet.length === 0) throw new RangeError('loop: no stage holds water');
  const volumes = wet.map(({ sizes, type }) => type.volume({ ...type.defaults, ...sizes }, values) / type.cells);
  const largest = plan.rig ? 0 : volumes.indexOf(Math.max(...volumes));
  const cells: Cell[] = [];
  const stages: StageEntry[] = [];
  for (let i = 0; i < wet.length; i++) {
    const { sizes, type } = wet[(largest + i) % wet.length];
    addStage(cells, stages, sizes, type, false, values);
  }
  const first = wet[0].sizes.id;
  const begin = stages.findIndex((stage) => stage.id === first);
  const order = stages.flatMap((_, i) => {
    const stage = stages[(begin + i) % stages.length];
    return Array.from({ length: stage.cells }, (__, c) => stage.first + c);
  });
  const mineral = plan.side.find(takesSolids) ?? null;
  if (mineral) addStage(cells, stages, mineral, stageType(mineral.kind), true, values);
  const steps = plan.rig ? rigSteps(order) : loopSteps(plan, stages, order);
  const falls = new Float64Array(cells.length);
  for (const { to, fall } of steps) if (to >= 0) falls[to] = fall;
  return {
    cells,
    stages,
    order,
    steps,
    falls,
    sump: pumpTank(plan, stages) ?? stages.find((stage) => stage.type.lowest)?.first ?? -1,
    mineral,
    dosing: plan.side.find(doses) ?? null,
  };
}

function addStage(
  cells: Cell[],
  stages: StageEntry[],
  given: StageSpec | MineralisationSide,
  type: StageType,
  side: boolean,
  values: Values,
): void {
  const sizes = { ...type.defaults, ...given };
  const first = cells.length;
  const each = type.cell(sizes, values);
  // A long bed's volume function gives the whole; its cells share it.
  for (let c = 0; c < type.cells; c++) cells.push(makeCell(first + c, given.id, type.kind, each));
  stages.push({
    id: given.id,
    kind: type.kind,
    type,
    sizes,
    first,
    cells: type.cells,
    side,
    count: ('count' in sizes ? sizes.count : 1) ?? 1,
  });
}

function rigSteps(order: number[]): Step[] {
  const inner = order.slice(1).map((to, i): Step => ({ from: order[i], to, pump: false, fall: 0 }));
  return [{ from: -1, to: order[0], pump: false, fall: 0 }, ...inner, { from: order[order.length - 1], to: -1, pump: false, fall: 0 }];
}

/** Steps round the loop; the pump stands in the list of stages between two of them. */
function loopSteps(plan: Plan, stages: StageEntry[], order: number[]): Step[] {
  const pump = pumpAt(plan.loop);
  const before = pump < 0 ? -1 : lastWet(plan, pump);
  const cellOf = (id: string): StageEntry => {
    const found = stages.find((stage) => stage.id === id);
    if (!found) throw new RangeError(`loop: stage ${id} is missing`);
    return found;
  };
  const pumped = before < 0 ? -1 : cellOf(plan.loop[before].id).first + cellOf(plan.loop[before].id).cells - 1;
  const sumpCell = stages.find((stage) => stage.type.lowest)?.first ?? -1;
  return order.map((from, i): Step => {
    const to = order[(i + 1) % order.length];
    const lifted = from === pumped;
    const within = stages.some(
      (stage) => from >= stage.first && to >= stage.first && from < stage.first + stage.cells && to < stage.first + stage.cells,
    );
    return { from, to, pump: lifted, fall: within || lifted ? 0 : to === sumpCell ? 0.5 : FALL_M };
  });
}

/** First cell of the tank that the pump stands in: a sump, or a bed that serves as one. */
function pumpTank(plan: Plan, stages: readonly StageEntry[]): number | undefined {
  const pump = pumpAt(plan.loop);
  if (pump < 0 || plan.rig) return undefined;
  const at = lastWet(plan, pump);
  return stages.find((stage) => at >= 0 && stage.id === plan.loop[at].id)?.first;
}

function lastWet(plan: Plan, pump: number): number {
  for (let i = 1; i <= plan.loop.length; i++) {
    const at = (pump - i + plan.loop.length) % plan.loop.length;
    if (stageType(plan.loop[at].kind).cells > 0) return at;
  }
  return -1;
}
