// Reading and writing for the command line: a file or standard input, whole or line by line.
import { createReadStream } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { createInterface } from 'node:readline';
import type { Readable } from 'node:stream';
import { say } from '../words/say';

const open = (source: string): Readable => (source === '-' ? process.stdin : createReadStream(source));

/**
 * The lines of a file, without their line ends; a byte order mark at the start is dropped.
 * @param source path, or `-` for standard input
 * @throws the file system's error when the file cannot be read
 */
export async function* readLines(source: string): AsyncGenerator<string> {
  const input = open(source);
  let failure: Error | undefined;
  const lines = createInterface({ input, crlfDelay: Infinity });
  input.on('error', (error: Error) => {
    failure = error;
    lines.close();
  });
  let first = true;
  for await (const line of lines) {
    yield first ? line.replace(/^\uFEFF/, '') : line;
    first = false;
  }
  if (failure) throw failure;
}

/**
 * All the text of a file.
 * @param source path, or `-` for standard input
 * @throws the file system's error when the file cannot be read
 */
export async function readText(source: string): Promise<string> {
  if (source !== '-') return (await readFile(source, 'utf8')).replace(/^\uFEFF/, '');
  const parts: Buffer[] = [];
  for await (const part of process.stdin) parts.push(Buffer.from(part as Uint8Array));
  return Buffer.concat(parts)
    .toString('utf8')
    .replace(/^\uFEFF/, '');
}

/** Writes one line to standard output and waits when the reader is slower. */
export function writeLine(text: string): Promise<void> {
  return new Promise((resolve) => {
    if (process.stdout.write(`${text}\n`)) resolve();
    else process.stdout.once('drain', resolve);
  });
}

/** Ends quietly when whoever reads our output (`head`, say) has had enough. */
export function stopWhenReaderStops(): void {
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') process.exit(0);
    throw error;
  });
}

/** Says on standard error why a source could not be read. */
export function cannotRead(source: string, error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  switch (code) {
    case 'ENOENT':
      return say('waterLine.noFile', { source });
    case 'EISDIR':
      return say('waterLine.folder', { source });
    case 'EACCES':
      return say('waterLine.denied', { source });
    default:
      return say('waterLine.unreadable', { source, reason: error instanceof Error ? error.message : String(error) });
  }
}
