// Words of the sump.

export const english = {
  name: 'Sump',
  does: 'The lowest tank: gathers the water, takes the swings in level, and feeds the return pump.',
  mistake: 'People make it too small to hold what drains down when the pump stops.',
};
