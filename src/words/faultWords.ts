// A season that cannot be lived further, in a sentence with its stage and day.
import type { SeasonFault } from '../season/seasonError';
import { say } from './say';

export const faultWords = (fault: SeasonFault): string =>
  say(fault.stage === '' ? `fault.${fault.code}` : `fault.${fault.code}.stage`, { ...fault });
