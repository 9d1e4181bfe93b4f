// Words of the media bed.

export const english = {
  name: 'Media bed',
  does: 'Grows plants in gravel that floods and drains: solids filter, biofilter and bed in one.',
  mistake: 'People load it like a settler; after months the gravel is full and has to be dug over.',
};
