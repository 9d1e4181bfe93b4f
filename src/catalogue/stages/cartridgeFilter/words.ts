// Words of the cartridge filter.

export const english = {
  name: 'Cartridge filter',
  does: 'Polishes the water in fine pleats that keep nearly all fine solids.',
  mistake: 'People place it first; it holds little and is full long before a settler would be.',
};
