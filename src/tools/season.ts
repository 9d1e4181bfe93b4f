// The season command's entry: npm run -s season.
import { runSeason } from '../season/season';
import { runCommand } from './planText';
import { seasonCommand } from './seasonCommand';

runCommand(() =>
  seasonCommand(process.argv.slice(2), {
    print: (text) => process.stdout.write(text),
    note: (text) => process.stderr.write(text),
    run: (plan) => runSeason(plan),
  }),
);
