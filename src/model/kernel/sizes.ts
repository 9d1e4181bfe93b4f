// How much room a cell's numbers take, and which coefficients stand in the table.
// Written by `npm run kernels` from the tables of components and processes: never edited, stale copies fail a test.
export const PROCESSES = 94;
/** Kept derivatives; entries of the dense block; diagonals of what is solved alone; numbers kept of a factorised cell. */
export const DERIVATIVES = 56, BLOCK = 39, DIAGONALS = 13, FACTORS = 38;

/** Process and component of each coefficient in the table. */
export const TABLE_OF: readonly (readonly [process: number, component: number])[] = [[0, 0], [0, 1], [0, 4], [0, 5], [0, 34], [1, 0],
  [1, 2], [1, 4], [1, 5], [1, 35], [2, 0], [2, 1], [2, 4], [2, 5], [2, 36], [3, 1], [3, 3], [3, 4], [3, 5], [3, 9], [3, 36], [4, 1], [4, 4],
  [4, 5], [4, 10], [4, 11], [4, 22], [4, 23], [7, 1], [7, 4], [7, 5], [12, 1], [12, 5], [12, 10], [12, 11], [13, 1], [13, 5], [13, 10],
  [13, 11], [27, 4], [27, 5], [27, 37], [28, 4], [28, 5], [28, 37], [29, 4], [32, 4], [40, 3], [40, 5], [40, 9], [41, 3], [41, 5], [41, 9],
  [45, 0], [45, 1], [45, 4], [45, 5], [45, 7], [45, 10], [45, 11], [45, 12], [45, 13], [45, 14], [45, 17], [45, 19], [45, 20], [45, 21],
  [45, 22], [45, 23], [45, 24], [45, 25], [45, 26], [45, 27], [45, 40], [46, 0], [46, 1], [46, 4], [46, 5], [46, 10], [46, 11], [46, 12],
  [46, 13], [46, 14], [47, 0], [47, 1], [47, 4], [47, 5], [47, 10], [47, 11], [47, 12], [47, 13], [47, 14], [59, 5], [59, 10], [59, 14],
  [59, 42], [59, 43], [59, 44], [59, 45], [59, 46], [76, 49], [78, 49], [79, 49], [81, 49], [85, 22], [85, 25], [88, 19], [88, 22]];
/** Coefficients in all columns; those that are the same whatever the parameters are written into the kernels. */
export const COEFFICIENTS = 379;
