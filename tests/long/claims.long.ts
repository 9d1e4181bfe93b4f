// Every claim of the lessons in twenty drawn worlds, and with each calibrated or assumed constant behind it halved and doubled.
// A claim is earned where it holds in nine of ten draws and in every bent world; the table says which do not.
import { afterAll, describe, expect, it } from 'vitest';
import { runSeason } from '../../src/season/season';
import type { Plan } from '../../src/season/plan';
import type { Trajectory } from '../../src/season/trajectory';
import { CLAIMS, holds } from '../season/claims';
import type { Claim } from '../season/claims';
import { bentWorlds, drawnWorlds } from './draws';
import type { World } from './draws';

const DRAWS = 20;
const SHARE = 0.9;

/** Claims share seasons: one world's seasons are lived once. */
const lived = new Map<string, Trajectory>();
function season(plan: Plan, world: World): Trajectory {
  const key = JSON.stringify([plan, world.parameters]);
  const known = lived.get(key) ?? runSeason(plan, { parameters: world.parameters });
  if (lived.size > 12) lived.clear();
  lived.set(key, known);
  return known;
}

interface Outcome { world: string; right: number; wrong: number; holds: boolean }
function outcome(claim: Claim, world: World): Outcome {
  const right = claim.shown(season(claim.right, world));
  const wrong = claim.shown(season(claim.wrong, world));
  return { world: world.name, right, wrong, holds: holds(claim, right, wrong) };
}

const table: Record<string, string | number>[] = [];

describe.each(CLAIMS)('$id: $statement', (claim) => {
  it(`holds in ${100 * SHARE} % of ${DRAWS} drawn worlds`, () => {
    const outcomes = drawnWorlds(DRAWS).map((world) => outcome(claim, world));
    const share = outcomes.filter((o) => o.holds).length / DRAWS;
    const times = outcomes.map(({ right, wrong }) => wrong / right).sort((a, b) => a - b);
    table.push({ claim: claim.id, worlds: 'drawn', share, leastTimes: times[0]?.toPrecision(3) ?? '', medianTimes: times[DRAWS / 2]?.toPrecision(3) ?? '', fails: outcomes.filter((o) => !o.holds).map(({ world }) => world).join(', ') });
    expect(share).toBeGreaterThanOrEqual(SHARE);
  });

  it('holds with each calibrated or assumed constant behind it halved and doubled', () => {
    const outcomes = bentWorlds(claim.behind).map((world) => outcome(claim, world));
    const failing = outcomes.filter((o) => !o.holds).map(({ world, right, wrong }) => `${world} (${right.toPrecision(3)} → ${wrong.toPrecision(3)})`);
    table.push({ claim: claim.id, worlds: `${outcomes.length} bent`, share: outcomes.filter((o) => o.holds).length / outcomes.length, leastTimes: Math.min(...outcomes.map(({ right, wrong }) => wrong / right)).toPrecision(3), medianTimes: '', fails: failing.join(', ') });
    expect(failing).toEqual([]);
  });
});

afterAll(() => { console.table(table); });
