// Notes in a JSON text: passed over wherever one is read.

/** Blanks `// …` notes outside of texts, so that an annotated plan can be read; every other character keeps its place. */
export function withoutNotes(text: string): string {
  const pieces: string[] = [];
  let from = 0;
  let inText = false;
  for (let at = text.indexOf('/') < 0 ? text.length : 0; at < text.length; at += 1) {
    const sign = text[at];
    if (inText && sign === '\\') at += 1;
    else if (sign === '"') inText = !inText;
    else if (!inText && sign === '/' && text[at + 1] === '/') {
      const newline = text.indexOf('\n', at);
      const end = newline < 0 ? text.length : newline;
      pieces.push(text.slice(from, at), ' '.repeat(end - at));
      from = end;
      at = end;
    }
  }
  return pieces.join('') + text.slice(from);
}
