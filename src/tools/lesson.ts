// The lesson command's entry: npm run -s lesson.
import { runSeason } from '../season/season';
import { lessonCommand } from './lessonCommand';
import { runCommand } from './planText';

runCommand(() => lessonCommand(process.argv.slice(2), (text) => process.stdout.write(text), (plan) => runSeason(plan)));
