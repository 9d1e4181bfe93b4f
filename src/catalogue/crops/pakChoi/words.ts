// Words of pak choi.

export const english = { name: 'Pak choi' };
