// How fast oxygen comes to roots through the water beside them: faster where water flows past, bubbles rise, or a bed draws air.
import type { Cell } from '../cell';
import type { Values } from '../parameters/values';
import { PER_L_MIN } from './gasForcing';

/**
 * @returns m/d through the still layer at the roots, from still water to water on the move, smooth in flow and air
 */
export function rootTransfer(cell: Cell, values: Values): number {
  const k = values.kinetics;
  // a cell as long as it is wide
  const speed = (cell.flow * Math.sqrt(cell.floor)) / cell.volume;
  const moved =
    speed / k.rootSpeedHalf + cell.air / PER_L_MIN / cell.floor / k.rootAirHalf + (cell.breath + cell.spray > 0 ? k.rootDrained : 0);
  return k.rootStill + ((k.rootMoving - k.rootStill) * moved) / (1 + moved);
}
