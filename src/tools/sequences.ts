// The sequences command's entry, and what its threads run: npm run -s sequences. It is built first, since a built season is the fastest.
import { isMainThread, parentPort, workerData } from 'node:worker_threads';
import { fileURLToPath } from 'node:url';
import { runCommand } from './planText';
import { playVariant } from './playVariant';
import type { Ground } from './playVariant';
import { sequencesCommand } from './sequencesCommand';
import { playOnThreads } from './threads';
import type { Done, Task } from './threads';

if (isMainThread) {
  runCommand(() =>
    sequencesCommand(process.argv.slice(2), {
      print: (text) => process.stdout.write(text),
      note: (text) => process.stderr.write(text),
      play: (ground, plans) => playOnThreads(fileURLToPath(import.meta.url), ground, plans),
    }),
  );
} else {
  parentPort?.on('message', ({ at, plan }: Task) => {
    parentPort?.postMessage({ at, outcome: playVariant(workerData as Ground, plan) } satisfies Done);
  });
}
