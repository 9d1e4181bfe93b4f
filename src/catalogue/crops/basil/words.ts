// Words of basil.

export const english = { name: 'Basil' };
