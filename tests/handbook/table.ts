// Prints all published checks as a Markdown table, worked out anew: npx tsx tests/handbook/table.ts
import { chemistry } from './tableChemistry';
import type { Check } from './tableChemistry';
import { crops, films, fish, rafts, sludge } from './tableLife';

const short = (value: number): string =>
  value === 0
    ? '0'
    : Math.abs(value) < 1e-3
      ? value.toExponential(1)
      : String(Number(value.toPrecision(3 + Number(Math.abs(value) > 1 && Math.abs(value) < 10))));

function line({ source, quantity, expected, ours, share, factor, within }: Check): string {
  const off = ours - expected;
  const sign = off < 0 ? '−' : '+';
  const error = within === undefined ? `${sign}${short(Math.abs((100 * off) / expected))} %` : `${sign}${short(Math.abs(off))}`;
  const pass =
    within !== undefined
      ? Math.abs(off) <= within
      : factor !== undefined
        ? Math.abs(Math.log(ours / expected)) <= Math.log(factor)
        : Math.abs(off / expected) <= (share ?? 0);
  return `| ${source} | ${quantity} | ${short(expected)} | ${short(ours)} | ${error} | ${pass ? 'yes' : 'no'} |`;
}

const rows = [chemistry, films, sludge, fish, crops, rafts].flatMap((part) => part()).map(line);
process.stdout.write(`| Source | Quantity | Expected | Ours | Error | Pass |\n| --- | --- | --- | --- | --- | --- |\n${rows.join('\n')}\n`);
