// What the page keeps on this device and nowhere else: named texts. A browser that keeps nothing is no fault.

export interface Device {
  /** null where nothing is kept under that name, or nothing may be read */
  read(name: string): string | null;
  /** Keeps a text; where that is refused, it lasts as long as the page. */
  write(name: string, text: string): void;
}

/**
 * A device that keeps texts in the browser's own storage, and in memory where that is closed or full.
 * @param storage asked anew each time, since asking alone may throw in a private window
 */
export function keptIn(storage: () => Pick<Storage, 'getItem' | 'setItem'>): Device {
  const memory = new Map<string, string>();
  return {
    read(name) {
      try {
        return memory.get(name) ?? storage().getItem(name);
      } catch {
        return memory.get(name) ?? null;
      }
    },
    write(name, text) {
      try {
        storage().setItem(name, text);
        memory.delete(name);
      } catch {
        memory.set(name, text);
      }
    },
  };
}

/** More than any path of lessons; a longer list was not written by this page. */
const LESSONS_MAX = 500;

export const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** What a text kept by lesson id holds, unread; nothing where it is of another format or makes no sense. */
export function keptByLesson(text: string | null, format: string): [lesson: string, value: unknown][] {
  let kept: unknown;
  try {
    kept = text === null ? null : JSON.parse(text);
  } catch {
    return [];
  }
  return isObject(kept) && kept.format === format && isObject(kept.lessons) ? Object.entries(kept.lessons).slice(0, LESSONS_MAX) : [];
}

/** The text that keptByLesson reads. */
export const keptText = (format: string, lessons: Readonly<Record<string, unknown>>): string => JSON.stringify({ format, lessons });

/** Keeps texts for as long as the page lives. */
export const forgetful = (): Device => {
  const memory = new Map<string, string>();
  return { read: (name) => memory.get(name) ?? null, write: (name, text) => void memory.set(name, text) };
};
