// Names of the model's processes as a person reads them; those that differ only in what kind of solids or film they concern share one.
import { isWord, say } from './say';

const FAMILY = /^(slough|lysis|hydrolysisCaught|hydrolysisSludge|hydrolysis|settle|catch|shear|stir|release|clumpDenitrification|dose)[A-Z]/;

/** What a process does, in a few words; its id where the catalogue has none. */
export function processName(id: string): string {
  const own = `process.${id}`;
  if (isWord(own)) return say(own);
  const family = `process.${FAMILY.exec(id)?.[1] ?? ''}`;
  return isWord(family) ? say(family) : id;
}
