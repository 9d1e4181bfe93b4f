// Finds the first place where a text stops being JSON. Engines word and place this differently, so it is found here.
// No recursion, and no nesting deeper than any plan or lesson needs: what reads the text afterwards may recurse.
import type { Expected } from './problem';

/** Where the text fails (offset in UTF-16 units) and what could have stood there. */
export interface JsonFault {
  offset: number;
  expected: Expected['code'] & `json.${string}`;
}

/** Levels of braces and brackets; a lesson has about ten. */
export const NESTING_MAX = 64;

const SPACE = /[ \t\n\r]*/y;
const STRING = /"(?:[^"\\\u0000-\u001f]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*/y;
const NUMBER = /-?(?:0|[1-9][0-9]*)(?:\.[0-9]+)?(?:[eE][+-]?[0-9]+)?/y;
const WORD = /true|false|null/y;

function matchAt(pattern: RegExp, text: string, offset: number): number {
  pattern.lastIndex = offset;
  const found = pattern.exec(text);
  return found === null ? -1 : offset + found[0].length;
}

type Wanted = 'value' | 'valueOrEnd' | 'key' | 'keyOrEnd' | 'colon' | 'commaOrEnd';

class Scanner {
  private at = 0;
  private readonly open: ('{' | '[')[] = [];
  private wanted: Wanted = 'value';
  constructor(private readonly text: string) {}

  fault(): JsonFault | null {
    for (;;) {
      this.at = matchAt(SPACE, this.text, this.at);
      if (this.wanted === 'commaOrEnd' && this.open.length === 0) {
        return this.at === this.text.length ? null : this.here('json.end');
      }
      const problem = this.step();
      if (problem !== null) return problem;
    }
  }

  private here(expected: JsonFault['expected']): JsonFault {
    return { offset: this.at, expected };
  }

  private step(): JsonFault | null {
    const sign = this.text[this.at];
    switch (this.wanted) {
      case 'colon':
        if (sign !== ':') return this.here('json.colon');
        return this.take('value');
      case 'commaOrEnd':
        return this.commaOrEnd(sign);
      case 'key':
      case 'keyOrEnd':
        if (sign === '}' && this.wanted === 'keyOrEnd') return this.close();
        if (sign !== '"') return this.here('json.key');
        return this.string('colon');
      default:
        if (sign === ']' && this.wanted === 'valueOrEnd') return this.close();
        return this.value(sign);
    }
  }

  private take(next: Wanted): null {
    this.at += 1;
    this.wanted = next;
    return null;
  }

  private close(): null {
    this.open.pop();
    return this.take('commaOrEnd');
  }

  private commaOrEnd(sign: string | undefined): JsonFault | null {
    const inObject = this.open[this.open.length - 1] === '{';
    if (sign === (inObject ? '}' : ']')) return this.close();
    if (sign === ',') return this.take(inObject ? 'key' : 'value');
    return this.here(inObject ? 'json.commaOrBrace' : 'json.commaOrBracket');
  }

  private value(sign: string | undefined): JsonFault | null {
    if (sign === '{' || sign === '[') {
      if (this.open.length === NESTING_MAX) return this.here('json.nesting');
      this.open.push(sign);
      return this.take(sign === '{' ? 'keyOrEnd' : 'valueOrEnd');
    }
    if (sign === '"') return this.string('commaOrEnd');
    const end = Math.max(matchAt(NUMBER, this.text, this.at), matchAt(WORD, this.text, this.at));
    if (end < 0) return this.here('json.value');
    this.at = end;
    this.wanted = 'commaOrEnd';
    return null;
  }

  private string(next: Wanted): JsonFault | null {
    const end = matchAt(STRING, this.text, this.at);
    if (end < 0 || this.text[end] !== '"') {
      return { offset: Math.max(end, this.at), expected: 'json.closingQuote' };
    }
    this.at = end;
    return this.take(next);
  }
}

/** null if the text is one JSON value, nested no deeper than NESTING_MAX. */
export function jsonFault(text: string): JsonFault | null {
  return new Scanner(text).fault();
}
