// The lesson command's entry: npm run -s lesson.
import { runSeason } from '../season/season';
import { lessonCommand } from './lessonCommand';
import { runCommand } from './planText';

runCommand(() =>
  lessonCommand(process.argv.slice(2), {
    print: (text) => process.stdout.write(text),
    note: (text) => process.stderr.write(text),
    run: (plan) => runSeason(plan),
  }),
);
