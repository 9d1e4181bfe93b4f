// Writes the golden tables anew. Only ever run by hand, by someone who then reads the difference.
import { writeFileSync } from 'node:fs';
import { GOLDEN, tableOf } from './tables';

for (const golden of GOLDEN) writeFileSync(new URL(`./${golden.name}.csv`, import.meta.url), tableOf(golden));
