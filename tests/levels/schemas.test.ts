// The JSON Schemas beside the levels say what the readers check.
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { schemaTexts } from '../../src/lessons/jsonSchemas';

describe.each(Object.entries(schemaTexts()))('levels/%s', (name, text) => {
  test('is in step with the code (refresh with: npm run schema)', () => {
    expect(readFileSync(new URL(`../../levels/${name}`, import.meta.url), 'utf8')).toBe(text);
  });

  test('refuses unknown keys and names the sizes', () => {
    expect(text).toContain('"additionalProperties": false');
    expect(text).toContain('"volume_m3"');
  });
});
