// Every word a person reads, in English. Keys are typed; {names} in braces are filled in by say().
// A language is one catalogue like this with the same keys.
import { helpWords } from './english/help';
import { loopWords } from './english/loop';
import { pageWords } from './english/page';
import { pictureWords } from './english/picture';
import { whyWords } from './english/why';

export const english = { ...loopWords, ...pageWords, ...pictureWords, ...whyWords, ...helpWords } as const;
