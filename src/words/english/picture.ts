// English words written into the picture of the loop.

export const pictureWords = {
  'world.cm': '{n} cm',
  'world.falls': 'falls {n} cm',
  'world.rises': 'rises {n} cm',
} as const;
