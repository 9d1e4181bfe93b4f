// Words of lettuce.

export const english = { name: 'Lettuce' };
