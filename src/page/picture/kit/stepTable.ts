// Numbers computed beforehand for whole steps. Code that runs rarely is not compiled, and there each fraction computed, or read out of
// a list that holds fractions only, is allocated anew; one that is kept here is handed on without an allocation.

/** Steps on either side of a rest in which a level may lie. */
export const FAR = 240;

export class StepTable {
  /** begins with null, so that the list holds each fraction as an object of its own */
  private readonly kept: (number | null)[] = [null];

  /**
   * @param from, to whole steps for which a number is worked out now
   * @param make the number of a step; asked again for each other step that is come to
   */
  constructor(
    private readonly from: number,
    to: number,
    private readonly make: (step: number) => number,
  ) {
    for (let step = from; step <= to; step += 1) this.kept.push(make(step));
  }

  at(step: number): number {
    const i = step - this.from + 1;
    const known = i > 0 && i < this.kept.length ? this.kept[i] : null;
    return known ?? this.make(step);
  }
}
