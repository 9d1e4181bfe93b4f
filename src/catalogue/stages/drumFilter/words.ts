// Words of the drum filter.

export const english = {
  name: 'Drum filter',
  does: 'A self-cleaning screen: strains the water through a fine mesh on a drum that washes itself when it covers.',
  mistake: 'People expect a finer mesh to catch everything; the finest solids pass any screen.',
};
