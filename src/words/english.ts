// Every word a person reads, in English. Keys are typed; {names} in braces are filled in by say().
// A language is one catalogue like this with the same keys.
import { english as kindWords } from '../catalogue/words';
import { askingWords } from './english/asking';
import { commandWords } from './english/commands';
import { failureWords } from './english/failures';
import { fileWords } from './english/files';
import { helpWords } from './english/help';
import { lookWords } from './english/look';
import { loopWords } from './english/loop';
import { pageWords } from './english/page';
import { paperWords } from './english/paper';
import { pathWords } from './english/path';
import { pictureWords } from './english/picture';
import { presenterWords } from './english/presenter';
import { whyWords } from './english/why';

export const english = {
  ...kindWords,
  ...loopWords,
  ...pageWords,
  ...pictureWords,
  ...lookWords,
  ...whyWords,
  ...helpWords,
  ...askingWords,
  ...pathWords,
  ...paperWords,
  ...presenterWords,
  ...failureWords,
  ...fileWords,
  ...commandWords,
} as const;
