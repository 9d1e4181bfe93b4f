// English words written into the picture of the loop.

export const pictureWords = {
  'world.falls': 'falls {height}',
  'world.rises': 'rises {height}',
  'world.spills': 'Water runs over the rim',
} as const;
