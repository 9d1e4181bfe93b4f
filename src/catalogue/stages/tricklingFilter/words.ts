// Words of the trickling filter.

export const english = {
  name: 'Trickling filter',
  does: 'Sprays water over open packing: its biofilm works, carbon dioxide leaves, oxygen enters.',
  mistake: 'People forget the lift: every metre of packing is a metre more for the pump.',
};
