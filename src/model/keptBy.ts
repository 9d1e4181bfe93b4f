// Keeps what is worked out of an object and a key, for as long as the object lives.

/** @returns `make`, worked out once for each object and key */
export function keptBy<A extends object, K, V>(make: (from: A, key: K) => V): (from: A, key: K) => V {
  const known = new WeakMap<A, Map<K, V>>();
  return (from, key) => {
    const ofOne = known.get(from) ?? new Map<K, V>();
    known.set(from, ofOne);
    const found = ofOne.get(key);
    if (found !== undefined) return found;
    const made = make(from, key);
    ofOne.set(key, made);
    return made;
  };
}
