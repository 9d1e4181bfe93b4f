// Words of the NFT channel.

export const english = {
  name: 'NFT channel',
  does: 'Runs a thin film of water past the roots of leafy plants in covered channels (nutrient film technique).',
  mistake: 'People let solids into it; all the water seeps through the root mat, which fouls fast.',
};
