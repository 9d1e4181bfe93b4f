// Words of base dosing.

export const english = {
  name: 'Base dosing',
  does: 'Drips dissolved base into the water to replace the alkalinity that nitrification uses up.',
  mistake:
    'People dose it all at once; a large single dose jolts the pH, and more of the ammonia becomes un-ionised, the form that is toxic.',
};
