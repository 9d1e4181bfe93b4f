// Writes the JSON Schemas of plans and lessons beside the levels, for editors that check while a person types.
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { schemaTexts } from '../lessons/jsonSchemas';

const LEVELS = fileURLToPath(new URL('../../levels/', import.meta.url));

for (const [name, text] of Object.entries(schemaTexts())) {
  writeFileSync(`${LEVELS}${name}`, text);
  process.stdout.write(`levels/${name}\n`);
}
