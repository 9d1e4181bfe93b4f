// Words of common carp.

export const english = { name: 'Common carp', inText: 'common carp' };
