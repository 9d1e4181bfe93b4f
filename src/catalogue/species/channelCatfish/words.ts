// Words of channel catfish.

export const english = { name: 'Channel catfish', inText: 'channel catfish' };
