// Words of Arctic char.

export const english = { name: 'Arctic char', inText: 'Arctic char' };
