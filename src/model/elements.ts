// The elements that continuity sums over, and their atomic masses.

/** What continuity sums over. Charge is that of the species at the alkalinity end point, in eq. */
export const ELEMENTS = ['COD', 'N', 'P', 'C', 'S', 'K', 'Ca', 'Mg', 'Na', 'Fe', 'Cl', 'charge'] as const;
export type Element = (typeof ELEMENTS)[number];

/** Atomic masses, g/mol (IUPAC standard atomic weights, abridged). */
export const ATOM = {
  C: 12.011,
  N: 14.007,
  P: 30.974,
  S: 32.06,
  K: 39.098,
  Ca: 40.078,
  Mg: 24.305,
  Na: 22.99,
  Cl: 35.45,
  O: 15.999,
  H: 1.008,
} as const;
