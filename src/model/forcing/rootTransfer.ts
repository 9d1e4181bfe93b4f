// How fast oxygen comes to roots through the water beside them: faster where water flows past, bubbles rise, or a bed draws air.
import type { Cell } from '../cell';
import type { Values } from '../parameters/values';

/** m³/d of air that is a litre a minute. */
const L_min = 1.44;

/**
 * @returns m/d through the still layer at the roots, from still water to water on the move, smooth in flow and air
 */
export function rootTransfer(cell: Cell, values: Values): number {
  const k = values.kinetics;
  // a cell as long as it is wide
  const speed = (cell.flow * Math.sqrt(cell.floor)) / cell.volume;
  const moved =
    speed / k.rootSpeedHalf + cell.air / L_min / cell.floor / k.rootAirHalf + (cell.breath + cell.spray > 0 ? k.rootDrained : 0);
  return k.rootStill + ((k.rootMoving - k.rootStill) * moved) / (1 + moved);
}
