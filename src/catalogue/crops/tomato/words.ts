// Words of tomato.

export const english = { name: 'Tomato' };
