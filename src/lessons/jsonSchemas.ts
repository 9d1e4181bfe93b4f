// The JSON Schemas as text, made from the same schemas that read plans and lessons.
import { z } from 'zod';
import { lessonSchema } from './lessonSchema';
import { planSchema } from './planSchema';

/** File name in levels/ → text. The input side is described: what has a default may be left out. */
export function schemaTexts(): Record<string, string> {
  const text = (schema: z.ZodType, title: string): string =>
    `${JSON.stringify({ title, ...z.toJSONSchema(schema, { io: 'input', reused: 'ref' }) }, null, 2)}\n`;
  return { 'plan.schema.json': text(planSchema, 'Loopwright plan'), 'lesson.schema.json': text(lessonSchema, 'Loopwright lesson') };
}
