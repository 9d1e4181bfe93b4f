// What is known of a water whose surface moves.

/** A water whose surface moves: y of its surface, world units. */
export interface Surfaced {
  level: number;
}
