// Numbers worked out beforehand for whole steps. What happens now and then is never compiled, and there each fraction that is reckoned, or read
// out of a list of fractions alone, is made anew; a fraction that lies ready is handed on as it is.

/** Steps on either side of a rest in which a level may lie. */
export const FAR = 240;

export class Ready {
  /** begins with what is no number, so that fractions are kept one by one */
  private readonly kept: (number | null)[] = [null];

  /**
   * @param from, to whole steps for which a number is worked out now
   * @param make the number of a step; asked again for each other step that is come to
   */
  constructor(private readonly from: number, to: number, private readonly make: (step: number) => number) {
    for (let step = from; step <= to; step += 1) this.kept.push(make(step));
  }

  at(step: number): number {
    const i = step - this.from + 1;
    const known = i > 0 && i < this.kept.length ? this.kept[i] : null;
    return known ?? this.make(step);
  }
}
