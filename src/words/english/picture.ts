// English words written into the picture of the loop.

export const pictureWords = {
  'world.cm': '{n} cm',
  'world.falls': 'falls {n} cm',
  'world.rises': 'rises {n} cm',
  'world.spills': 'Water runs over the rim',
  'world.pumpDry': 'The pump drew air and stands still',
} as const;
