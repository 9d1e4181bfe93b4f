// Words of the mineralisation tank.

export const english = {
  name: 'Mineralisation tank',
  does: 'Keeps drained sludge stirred and aired so that its nutrients dissolve and return.',
  mistake: 'People let the air fail; stirred sludge without oxygen turns sour within hours.',
};
