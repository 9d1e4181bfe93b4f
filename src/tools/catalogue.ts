// Writes the catalogue's lists from its folders.
import { writeFileSync } from 'node:fs';
import { pageFiles } from '../catalogue/generate/pageFiles';

for (const [path, text] of Object.entries(await pageFiles('.'))) {
  writeFileSync(path, text);
  console.log(path);
}
