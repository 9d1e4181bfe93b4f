// npm run -s water -- FILE.jsonl (or - for standard input): one water composition a line in, one equilibrium a line out.
import { readCommandLine } from './commandLine';
import { cannotRead, readLines, stopWhenReaderStops, writeLine } from './lines';
import { FIELDS } from './waterFields';
import { answerLine } from './waterLine';

const USAGE = `Usage: npm run -s water -- FILE.jsonl     (or - for standard input)

One JSON object a line; each is answered by one line. Blank lines are skipped.
Give T_C, and two of alkalinity_meq_L (titration alkalinity), DIC_mmol_L and pH; or pH alone, for fractions only;
or neither, for oxygen saturation only. What a line does not tell is answered by null, a bad line by {"error": …}.

Fields:
${Object.entries(FIELDS).map(([key, field]) => `  ${key.padEnd(22)}${field.low} to ${field.high} ${field.unit}`).join('\n')}

Ionic strength is computed unless given: sodium (or an unnamed anion) closes the charge balance, and a salinity sets the
least it can be; 0 asks for the ideal solution. With pH alone it is 0 unless nitrate, calcium, chloride or salinity are given.
Alkalinity is [HCO3-] + 2[CO3--] + [NH3] + [HS-] + [HPO4--] + 2[PO4---] - [H3PO4] + [OH-] - [H+]; pH is -log activity.
`;

const HELP = Symbol('help');

/** The one file that is asked for, or help; null where the command cannot be understood. */
function sourceOf(args: readonly string[]): string | typeof HELP | null {
  try {
    const { flags, rest } = readCommandLine(args, { help: 'flag' });
    return flags.help ? HELP : rest.length === 1 ? rest[0].word : null;
  } catch {
    return null;
  }
}

async function main(args: string[]): Promise<number> {
  const source = sourceOf(args);
  if (source === HELP) {
    process.stdout.write(USAGE);
    return 0;
  }
  if (source === null) {
    process.stderr.write(USAGE);
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
