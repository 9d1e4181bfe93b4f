// What tells how dirty a stage's filling is. Pure.

/** A reading, and its value at which the filling is drawn full of dirt. */
export interface Load {
  variable: 'clog' | 'caught_g';
  full: number;
}

/** Where the model reckons blockage, that tells; a stage that never blocks is as dirty as what it has caught. */
export const BLOCKAGE: Load = { variable: 'clog', full: 1 };
