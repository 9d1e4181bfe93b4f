// Words of the radial-flow settler.

export const english = {
  name: 'Radial-flow settler',
  does: 'Slows the water so that coarse solids sink into a cone, to be drained.',
  mistake: 'People forget to drain it; old sludge rots without oxygen and feeds back what it caught.',
};
