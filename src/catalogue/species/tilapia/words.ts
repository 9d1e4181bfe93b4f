// Words of tilapia.

export const english = { name: 'Tilapia', inText: 'tilapia' };
