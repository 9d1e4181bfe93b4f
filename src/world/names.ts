// Names of the stages: broken into lines and placed so that none lies over another. Pure, but for the measure handed in.

export interface Name { id: string; lines: string[]; x: number; /** base line of the last line */ y: number; width: number; align: 'center' | 'right' }
export interface NameWish { id: string; words: string; x: number; y: number; room: number; align: 'center' | 'right' }

/** Least room beside a name, as a share of the height of its lines. */
const GAP = 0.32;
/** A name that lies over its neighbour by no more than this share of a line steps aside; by more, it is lifted above. */
const ASIDE = 0.9;

/** Breaks words into at most two lines of about even width, if they do not fit the room. */
export function broken(words: string, room: number, measure: (text: string) => number): string[] {
  const parts = words.split(' ');
  if (parts.length < 2 || measure(words) <= room) return [words];
  let best = [words];
  let least = Infinity;
  for (let i = 1; i < parts.length; i += 1) {
    const lines = [parts.slice(0, i).join(' '), parts.slice(i).join(' ')];
    const widest = Math.max(measure(lines[0]), measure(lines[1]));
    if (widest < least) {
      least = widest;
      best = lines;
    }
  }
  return best;
}

/**
 * Places names over their stages; one that would lie over its neighbour is lifted above it.
 * @param line height of a line
 * @param width names are kept inside 0…width
 */
export function placeNames(wishes: readonly NameWish[], line: number, width: number, measure: (text: string) => number): Name[] {
  const placed: Name[] = [];
  const gap = GAP * line;
  const left = (name: Name): number => (name.align === 'center' ? name.x - name.width / 2 : name.x - name.width);
  for (const wish of wishes) {
    const lines = broken(wish.words, wish.room, measure);
    const wide = Math.max(...lines.map(measure));
    const x = wish.align === 'center' ? Math.max(wide / 2 + gap, Math.min(width - wide / 2 - gap, wish.x)) : wish.x;
    const name: Name = { id: wish.id, lines, x, y: wish.y, width: wide, align: wish.align };
    for (let tries = 0; tries < placed.length; tries += 1) {
      const over = placed.find((other) => left(name) < left(other) + other.width + gap && left(other) < left(name) + wide + gap
        && name.y - lines.length * line < other.y && other.y - other.lines.length * line < name.y);
      if (over === undefined) break;
      const into = left(over) + over.width + gap - left(name);
      if (tries === 0 && into > 0 && into < ASIDE * line && left(name) + into + wide < width) {
        name.x += into;
        continue;
      }
      name.y = over.y - over.lines.length * line - 2;
    }
    placed.push(name);
  }
  return placed;
}
