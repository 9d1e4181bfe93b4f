// Words of rainbow trout.

export const english = { name: 'Rainbow trout', inText: 'rainbow trout' };
