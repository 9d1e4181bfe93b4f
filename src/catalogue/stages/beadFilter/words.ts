// Words of the bead filter.

export const english = {
  name: 'Bead filter',
  does: 'Presses water through small beads in a closed vessel: they keep solids and carry biofilm.',
  mistake: 'People backwash it too rarely, and it blocks and rots, or too hard, and the biofilm goes with the dirt.',
};
