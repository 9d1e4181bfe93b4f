// Words of the degassing tank.

export const english = {
  name: 'Degassing tank',
  does: 'Bubbles air through the water: carbon dioxide and other gases leave, oxygen enters, and the biofilm on its media turns ammonia into nitrate.',
  mistake: 'People place it without asking what the water picks up after it, or starve it of air.',
};
