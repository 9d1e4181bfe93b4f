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

/** Keeps texts for as long as the page lives. */
export const forgetful = (): Device => {
  const memory = new Map<string, string>();
  return { read: (name) => memory.get(name) ?? null, write: (name, text) => void memory.set(name, text) };
};
