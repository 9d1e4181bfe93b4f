// Mass balances of a fish farm.

/** kg of N and P let go for a tonne of feed at FCR 1.9. @param contents g/g of feed and of wet fish */
export function loads({ feedN, feedP, fishN, fishP }: { feedN: number; feedP: number; fishN: number; fishP: number }): {
  N: number;
  P: number;
} {
  const fish = 1000 / 1.9;
  return { N: 1000 * feedN - fish * fishN, P: 1000 * feedP - fish * fishP };
}
