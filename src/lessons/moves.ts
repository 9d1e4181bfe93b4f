// How many places of a loop were changed: stages moved, put in or taken out, counted by what has to be touched at least.

/** Length of the longest run of stages, in order but not side by side, that both loops share. */
function sharedInOrder(a: readonly string[], b: readonly string[]): number {
  let row = new Array<number>(b.length + 1).fill(0);
  for (const id of a) {
    const next = [0];
    b.forEach((other, index) => next.push(id === other ? row[index] + 1 : Math.max(row[index + 1], next[index])));
    row = next;
  }
  return row[b.length];
}

/** The least number of stages to move, put in or take out to make one loop of the other. */
export function movesBetween(given: readonly string[], built: readonly string[]): number {
  const stays = sharedInOrder(given, built);
  const both = given.filter((id) => built.includes(id)).length;
  return both - stays + (given.length - both) + (built.length - both);
}
