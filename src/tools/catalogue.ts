// Writes what follows from the folders of src/catalogue: npm run catalogue.
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { kindsFile } from '../catalogue/generate/kindsFile';

const root = fileURLToPath(new URL('../catalogue/', import.meta.url));
const files = { 'kinds.ts': kindsFile(root) };
for (const [name, text] of Object.entries(files)) {
  writeFileSync(`${root}${name}`, text);
  process.stdout.write(`src/catalogue/${name}\n`);
}
