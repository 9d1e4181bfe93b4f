// Words of chard.

export const english = { name: 'Chard' };
