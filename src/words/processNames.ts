// Names of the model's processes and their units as a person reads them; processes that differ only in what kind of solids or film they
// concern share a name.
import { isWord, say } from './say';

const FAMILY =
  /^(slough|lysis|hydrolysisCaught|hydrolysisSludge|hydrolysis|settle|catch|shear|stir|release|clumpDenitrification|coatRespiration|dose)[A-Z]/;

/** What a process does, in a few words; its id where the catalogue has none. */
export function processName(id: string): string {
  const own = `process.${id}`;
  if (isWord(own)) return say(own);
  const family = `process.${FAMILY.exec(id)?.[1] ?? ''}`;
  return isWord(family) ? say(family) : id;
}

/** The model's unit of a process as it stands behind a number: an index is said as what it compares with. */
export function processUnit(unit: string): string {
  return unit.startsWith('index') ? say('unit.germs') : unit.replace('O2', 'O₂');
}
