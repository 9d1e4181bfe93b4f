// Absolute tolerances of every state: what is too little to matter, as the list of components says, per m³ of water or m² of film.
import { COMPONENTS } from '../model/componentList';
import { STATES } from '../model/components';
import type { LoopData } from '../model/network/loopData';

/** @param times of the usual tolerances, e.g. a hundredth for a converged run */
export function setTolerances(data: LoopData, times = 1): void {
  const whole = data.cells.reduce((sum, cell) => sum + cell.volume, 0);
  data.cells.forEach((cell, c) => {
    // A pipe-sized vessel of a loop is followed no closer than a fiftieth of the loop: what it holds matters to nobody.
    const sizes = { water: Math.max(cell.volume, Math.min(0.05, 0.02 * whole)), film: Math.max(cell.film, 0.1), cell: 1 };
    for (let i = 0; i < STATES; i++) {
      const { amount, per } = COMPONENTS[i].tolerance;
      data.tolerance[c * STATES + i] = amount * sizes[per] * times;
    }
  });
}
