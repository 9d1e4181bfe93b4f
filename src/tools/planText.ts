// How the commands get a plan or lesson: from a file or standard input, from the examples kept with the tests.
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { OldFile } from '../lessons/oldFormats';
import type { Problem } from '../lessons/problem';
import { SeasonError } from '../season/seasonError';
import { faultWords } from '../words/faultWords';
import { problemText } from '../words/problemWords';
import { say } from '../words/say';

const EXAMPLES = fileURLToPath(new URL('../../tests/season/plans/', import.meta.url));

/** What a command says instead of a result. Code 1: the input is at fault; 2: the command line is. */
export class CommandError extends Error {
  constructor(
    message: string,
    readonly exitCode: 1 | 2 = 1,
  ) {
    super(message);
  }
}

/** Reads a file, or standard input for "-". */
export function readText(name: string): string {
  try {
    return readFileSync(name === '-' ? 0 : name, 'utf8');
  } catch (failure) {
    const code = failure instanceof Error && 'code' in failure ? String(failure.code) : 'unknown';
    throw new CommandError(
      code === 'ENOENT'
        ? say('command.noFile', { name })
        : code === 'EISDIR'
          ? say('command.folder', { name })
          : say('command.unreadable', { name, code }),
    );
  }
}

export function refused(name: string, problems: readonly Problem[]): CommandError {
  return new CommandError(
    [
      say('command.refused', { name: name === '-' ? say('command.standardInput') : name }),
      ...problems.map((problem) => `  ${problemText(problem)}`),
    ].join('\n'),
  );
}

/** What a person is told of a file of an older format, beside the result. */
export function oldFileText({ format, renamed }: OldFile): string {
  if (renamed.length === 0) return `${say('command.oldFormat', { format })}\n`;
  return [say('command.oldNames', { format }), ...renamed.map(({ was, is }) => `  ${say('command.oldName', { was, is })}`), ''].join('\n');
}

/** Names of the example plans, sorted. */
export function exampleNames(): string[] {
  return readdirSync(EXAMPLES)
    .filter((name) => name.endsWith('.json'))
    .map((name) => name.slice(0, -'.json'.length))
    .sort();
}

export function exampleText(name: string): string {
  if (!exampleNames().includes(name)) throw new CommandError(say('command.noExample', { name, names: exampleNames() }), 2);
  return readText(`${EXAMPLES}${name}.json`);
}

/** Runs a command's body; what goes wrong is one message on standard error and an exit code, never a stack. */
export function runCommand(body: () => number | Promise<number>): void {
  // A reader that has seen enough (head) closes the pipe: that is no fault.
  process.stdout.on('error', (failure: NodeJS.ErrnoException) => process.exit(failure.code === 'EPIPE' ? 0 : 1));
  const settled = async (): Promise<void> => {
    process.exitCode = await body();
  };
  settled().catch((failure: unknown) => {
    process.stderr.write(
      `${failure instanceof SeasonError ? faultWords(failure.fault) : failure instanceof Error ? failure.message : String(failure)}\n`,
    );
    process.exitCode = failure instanceof CommandError ? failure.exitCode : 1;
  });
}
