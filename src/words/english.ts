// Every word a person reads, in English. Keys are typed; {names} in braces are filled in by say().
// A language is one catalogue like this with the same keys.
import { loopWords } from './english/loop';
import { pageWords } from './english/page';
import { pictureWords } from './english/picture';

export const english = { ...loopWords, ...pageWords, ...pictureWords } as const;
