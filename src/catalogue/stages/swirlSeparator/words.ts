// Words of the swirl separator.

export const english = {
  name: 'Swirl separator',
  does: 'Lets the water turn in a round tank so that coarse solids gather in the middle and sink.',
  mistake: 'People trust the swirl; it stirs as it turns and keeps far fewer solids than still water.',
};
