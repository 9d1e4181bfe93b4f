// How fast a season is: whole seasons, cost per cell and day, and the ratio to odex at equal error, all in one run.
import { Season } from '../../src/season/season';
import type { Plan } from '../../src/season/plan';
import { KEY_ERROR, ratioOn } from './odexRatio';
import { eightStages, fourStages, manyBeds } from './seasons';

const print = (...cells: (string | number)[]): void => {
  process.stdout.write(`${cells.map((cell, i) => (i === 0 ? String(cell).padEnd(30) : String(cell).padStart(12))).join('')}\n`);
};

function time(name: string, plan: Plan, runs: number): void {
  const once = (): { ms: number; season: Season } => {
    const begin = performance.now();
    const season = new Season(plan);
    while (season.day < plan.days) season.liveDay();
    return { ms: performance.now() - begin, season };
  };
  once();
  once();
  const timesOf = Array.from({ length: runs }, once);
  timesOf.sort((a, b) => a.ms - b.ms);
  const { ms, season } = timesOf[Math.floor(runs / 2)] ?? once();
  const cells = season.runtime.assembly.cells.length;
  print(
    name,
    plan.days,
    cells,
    ms.toFixed(1),
    ((1000 * ms) / cells / plan.days).toFixed(1),
    season.state.steps,
    season.state.rejections,
    season.summary().clipped.toExponential(1),
  );
}

print('season', 'days', 'cells', 'ms (median)', 'µs/cell/day', 'steps', 'rejections', 'clipped');
for (const days of [30, 90, 365]) time('4 stages and a pump', fourStages(days), days > 90 ? 3 : 9);
for (const days of [30, 90, 365]) time('8 stages and a pump', eightStages(days), days > 90 ? 3 : 9);
for (const beds of [4, 8, 12]) time(`${beds} long beds`, manyBeds(beds, 30), 5);

print('');
print(`same error (${100 * KEY_ERROR} %)`, 'day', 'ours ms', 'odex ms', 'ratio', 'ours f', 'odex f', 'ours tol', 'odex tol', 'apart');
for (const [name, plan, day] of [
  ['4 stages, early', fourStages(30), 3],
  ['8 stages, early', eightStages(30), 3],
  ['8 stages, late', eightStages(60), 45],
] as const) {
  const r = ratioOn(plan, day);
  print(
    name,
    r.day,
    r.ours_ms.toFixed(2),
    r.odex_ms.toFixed(1),
    (r.odex_ms / r.ours_ms).toFixed(1),
    r.ours_evaluations,
    r.odex_evaluations,
    r.ours_tolerance.toExponential(1),
    r.odex_tolerance.toExponential(1),
    r.apart.toExponential(1),
  );
}
