// A season that cannot be lived further: a code with the stage and the day, which the page puts in its own words.

export interface SeasonFault {
  code: 'stepTooSmall' | 'notFinite';
  /** id of the stage whose water could not be followed; empty where none stands out */
  stage: string;
  /** day of the season, from 1, and hour of that day, 0–24 */
  day: number; hour: number;
}

const REASON: Readonly<Record<SeasonFault['code'], string>> = { stepTooSmall: 'the time step became too small to go on', notFinite: 'a number was lost' };

export class SeasonError extends Error {
  constructor(readonly fault: SeasonFault, cause: unknown) {
    super(`day ${fault.day}, hour ${fault.hour}${fault.stage === '' ? '' : `, stage ${fault.stage}`}: ${REASON[fault.code]}`, { cause });
    this.name = 'SeasonError';
  }
}
