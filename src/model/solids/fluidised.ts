// A bed of grains that water flows up through: from which speed it is lifted, how far it then expands, what head it takes.
import { pow } from '../../numerics/elementary';

/** Grains: m/d at which one sinks alone; exponent of Richardson & Zaki 1954; share of voids in the bed at rest; density against water. */
export interface Grains {
  terminal_m_d: number;
  exponent: number;
  restVoids: number;
  density: number;
}

/** m/d of water over the empty floor from which the bed is lifted: U = Ut·εⁿ at the voids of rest (Richardson & Zaki 1954). */
export const liftsFrom = (g: Grains): number => g.terminal_m_d * pow(g.restVoids, g.exponent);

/** How much higher the bed stands than at rest, as a share of that height; 0 below the speed that lifts it. */
export function expansion(g: Grains, speed_m_d: number): number {
  if (speed_m_d <= liftsFrom(g)) return 0;
  const voids = pow(Math.min(speed_m_d / g.terminal_m_d, 0.9), 1 / g.exponent); // a guard: past it the grains are carried away
  return (1 - g.restVoids) / (1 - voids) - 1;
}

/** m of head: the bed's weight in water once it is lifted, whatever the speed; even in the speed before. @param rest_m height at rest */
export function headOfBed(g: Grains, rest_m: number, speed_m_d: number): number {
  const weight = rest_m * (1 - g.restVoids) * (g.density - 1);
  return weight * Math.min(1, Math.max(0, speed_m_d) / liftsFrom(g));
}
