// Names of the stages: broken into lines and placed so that none lies over another or over what stands in its way. Pure, but for the
// measure handed in.

export interface Name {
  id: string;
  lines: string[];
  x: number;
  /** base line of the last line */
  y: number;
  width: number;
  align: 'center' | 'right';
}
export interface NameWish {
  id: string;
  words: string;
  x: number;
  y: number;
  room: number;
  align: 'center' | 'right';
}

/** What a name may not lie over, world units. */
export interface InTheWay {
  x: number;
  y: number;
  w: number;
  h: number;
}

/** Least room beside a name, as a share of the height of its lines. */
const GAP = 0.55;
/** A name that lies over its neighbour by no more than this share of a line steps aside; by more, it is lifted above. */
const ASIDE = 0.9;

/** Room between the ground line and a name under it, as a share of a line. */
const IN_GROUND = 0.35;

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

/** What bounds names beside the width: things in their way, and the upper edge of the view. */
export interface Field {
  things: readonly InTheWay[];
  top: number;
}
const OPEN: Field = { things: [], top: -Infinity };

/**
 * Places names over their stages; one that would lie over its neighbour is lifted above it, one that would lie over a thing steps to its
 * left, and one that finds no room over its stage stands in the ground under it.
 * @param line height of a line
 * @param width names are kept inside 0…width
 */
export function placeNames(
  wishes: readonly NameWish[],
  line: number,
  width: number,
  measure: (text: string) => number,
  { things, top }: Field = OPEN,
): Name[] {
  const placed: Name[] = [];
  const gap = GAP * line;
  const left = (name: Name): number => (name.align === 'center' ? name.x - name.width / 2 : name.x - name.width);
  const topOf = (name: Name): number => name.y - name.lines.length * line;
  const under = (name: Name): Name | undefined =>
    placed.find(
      (other) =>
        left(name) < left(other) + other.width + gap
        && left(other) < left(name) + name.width + gap
        && topOf(name) < other.y
        && topOf(other) < name.y,
    );
  const behind = (name: Name): InTheWay | undefined =>
    things.find(({ x, y, w, h }) => left(name) < x + w + gap && x < left(name) + name.width + gap && topOf(name) < y + h && y < name.y);
  for (const wish of wishes) {
    const lines = broken(wish.words, wish.room, measure);
    const wide = Math.max(...lines.map(measure));
    const x = wish.align === 'center' ? Math.max(wide / 2 + gap, Math.min(width - wide / 2 - gap, wish.x)) : wish.x;
    const name: Name = { id: wish.id, lines, x, y: wish.y, width: wide, align: wish.align };
    const thing = behind(name);
    if (thing !== undefined && thing.x - gap - wide > 0) name.x -= left(name) + wide + gap - thing.x;
    for (let tries = 0; tries < placed.length; tries += 1) {
      const over = under(name);
      if (over === undefined) break;
      const into = left(over) + over.width + gap - left(name);
      if (tries === 0 && thing === undefined && into > 0 && into < ASIDE * line && left(name) + into + wide < width) {
        name.x += into;
        continue;
      }
      name.y = topOf(over) - 2;
    }
    if (topOf(name) < top && wish.align === 'center') {
      const low = { ...name, x, y: (lines.length + IN_GROUND) * line };
      if (under(low) === undefined && behind(low) === undefined) Object.assign(name, low);
    }
    placed.push(name);
  }
  return placed;
}
