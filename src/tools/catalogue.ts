// Writes what follows from the folders of src/catalogue: npm run catalogue.
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { kindsFile } from '../catalogue/generate/kindsFile';
import { pageFiles } from '../catalogue/generate/pageFiles';

const root = fileURLToPath(new URL('../../', import.meta.url));
const files = { 'src/catalogue/kinds.ts': kindsFile(`${root}src/catalogue`), ...(await pageFiles(root)) };
for (const [path, text] of Object.entries(files)) {
  writeFileSync(`${root}${path}`, text);
  process.stdout.write(`${path}\n`);
}
