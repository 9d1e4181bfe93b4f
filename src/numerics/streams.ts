// Named random streams from one seed: drawn up front, so that one more draw in a stream never moves another.
import seedrandom from 'seedrandom';

/** A uniform stream on [0, 1) for a seed and a name (weather, inoculum, parameters, …). */
export function stream(seed: string, name: string): () => number {
  const generator = seedrandom.alea(`${seed}/${name}`);
  return () => generator.quick();
}
