// npm run -s water -- FILE.jsonl (or - for standard input): one water composition a line in, one equilibrium a line out.
import { readCommandLine } from './commandLine';
import { cannotRead, readLines, stopWhenReaderStops, writeLine } from './lines';
import { FIELDS } from './waterFields';
import { answerLine } from './waterLine';
import { say } from '../words/say';

const FIELD_WIDTH = 22;

function usage(): string {
  const fields = Object.entries(FIELDS).map(
    ([key, { low, high, unit }]) =>
      `  ${key.padEnd(FIELD_WIDTH)}${say('command.waterField', { low: String(low), high: String(high), unit })}`,
  );
  return say('command.waterHelp', { fields: fields.join('\n') });
}

const HELP = Symbol('help');

/** The one file that is asked for, or help; null where the command cannot be understood. */
function sourceOf(args: readonly string[]): string | typeof HELP | null {
  try {
    const { flags, rest } = readCommandLine(args, {});
    return flags.help ? HELP : rest.length === 1 ? rest[0].word : null;
  } catch {
    return null;
  }
}

async function main(args: string[]): Promise<number> {
  const source = sourceOf(args);
  if (source === HELP) {
    process.stdout.write(usage());
    return 0;
  }
  if (source === null) {
    process.stderr.write(usage());
    return 2;
  }
  stopWhenReaderStops();
  try {
    for await (const line of readLines(source)) {
      if (line.trim() !== '') await writeLine(answerLine(line));
    }
  } catch (error) {
    process.stderr.write(`${cannotRead(source, error)}\n`);
    return 1;
  }
  return 0;
}

process.exitCode = await main(process.argv.slice(2));
