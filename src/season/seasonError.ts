// A season that cannot be lived further: a code with the stage and the day, which words/faultWords.ts puts in words.

export interface SeasonFault {
  code: 'stepTooSmall' | 'notFinite';
  /** id of the stage whose water could not be followed; empty where none stands out */
  stage: string;
  /** day of the season, from 1, and hour of that day, 0–24 */
  day: number;
  hour: number;
}

export class SeasonError extends Error {
  constructor(
    readonly fault: SeasonFault,
    cause: unknown,
  ) {
    super(`${fault.code} ${fault.stage} ${fault.day} ${fault.hour}`, { cause });
    this.name = 'SeasonError';
  }
}
