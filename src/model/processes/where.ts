// Where processes run: each condition as the text of an expression over a cell, which `npm run kernels` writes into the kernels.
// A condition holds or fails from one cut to the next; what a process did before it failed is never read.

/** In the order in which processes stand among the rates. */
export const WHERE = {
  everywhere: '',
  /** a bed of sludge lies on the floor or in the cone */
  sludge: 'cell.bedThickness > 0',
  /** solids are caught here, or were */
  caught: 'cell.holds',
  filter: 'cell.filter',
  fish: 'cell.fish',
  crop: 'cell.bed',
  /** under an ultraviolet lamp */
  lamp: 'cell.kill > 0',
  /** base is given */
  dosed: 'cell.doseRate > 0',
  /** solids on the move: coarse, fine, superfine settle or are caught; coarse is broken; sludge is stirred up, what was caught let go */
  settle0: 'cell.settle0 > 0',
  settle1: 'cell.settle1 > 0',
  settle2: 'cell.settle2 > 0',
  catch0: 'cell.catch0 > 0',
  catch1: 'cell.catch1 > 0',
  catch2: 'cell.catch2 > 0',
  shear: 'cell.shear > 0',
  stir: 'cell.stir > 0 && cell.sludgeRoom > 0',
  release: 'cell.release > 0',
} as const;

export type Where = keyof typeof WHERE;
