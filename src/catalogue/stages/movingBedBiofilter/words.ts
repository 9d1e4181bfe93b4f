// Words of the moving-bed biofilter.

export const english = {
  name: 'Moving-bed biofilter',
  does: 'Tumbles plastic carriers with air (also called MBBR); the biofilm on them turns ammonia into nitrate.',
  mistake: 'People send solids through it; the tumbling grinds them too fine to catch.',
};
