// A small sound plan and lesson to break in many ways.
import { readFileSync } from 'node:fs';

export type Json = null | boolean | number | string | Json[] | { [key: string]: Json };

const root = new URL('../../', import.meta.url);

export function fileText(path: string): string {
  return readFileSync(new URL(path, root), 'utf8');
}

/** A plan with every part that ties to another. */
export function soundPlan(): { [key: string]: Json } {
  return JSON.parse(fileText('tests/season/plans/every-part.json')) as { [key: string]: Json };
}

export function soundLesson(): { [key: string]: Json } {
  return JSON.parse(fileText('levels/00-first-loop.json')) as { [key: string]: Json };
}

/** The same value with one place changed; `undefined` takes the key away. */
export function changed(value: Json, path: (string | number)[], to: Json | undefined): Json {
  const copy = structuredClone(value);
  let at = copy as Record<string | number, Json>;
  for (const key of path.slice(0, -1)) at = at[key] as Record<string | number, Json>;
  const last = path[path.length - 1];
  if (to === undefined) delete at[last];
  else at[last] = to;
  return copy;
}
