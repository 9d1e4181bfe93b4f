// Words of the fish tank.

export const english = {
  name: 'Fish tank',
  does: 'Keeps the fish; everything the plants will eat starts here as feed.',
  mistake: 'People stock by volume alone; oxygen and ammonia run out long before space does.',
};
