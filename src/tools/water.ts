// npm run -s water -- FILE.jsonl (or - for standard input): one water composition a line in, one equilibrium a line out.
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

async function main(args: string[]): Promise<number> {
  const [source, ...rest] = args;
  if (source === '--help' || source === '-h') {
    process.stdout.write(USAGE);
    return 0;
  }
  if (source === undefined || rest.length > 0 || (source.startsWith('-') && source !== '-')) {
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
