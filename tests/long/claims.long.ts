// Every claim of the lessons in twenty drawn worlds, and with each calibrated or assumed constant behind it halved and doubled.
// A claim is earned where it holds in nine of ten draws and in every bent world; the table says which do not.
import { afterAll, describe, expect, it } from 'vitest';
import { runSeason } from '../../src/season/season';
import { CLAIMS, holds } from '../season/claims';
import type { Claim } from '../season/claim';
import { bentWorlds, drawnWorlds } from './draws';
import type { World } from './draws';

const DRAWS = 20;
/** Fresh, so that nothing was fitted to it. */
const SEED = 'first-frost';
const SHARE = 0.9;

type Side = 'right' | 'wrong';
const keyOf = (claim: Claim, side: Side, world: World): string => `${claim.id} ${side} ${world.name}`;
const PLANS = CLAIMS.flatMap((claim) => (['right', 'wrong'] as const).map((side) => ({ claim, side, text: JSON.stringify(claim[side]) })));

/** Claims share seasons: one season is lived once a world, and asked by all that claim something of it. */
const known = new Map<string, number>();
function shown(claim: Claim, side: Side, world: World): number {
  const key = keyOf(claim, side, world);
  if (!known.has(key)) {
    const season = runSeason(claim[side], { parameters: world.parameters });
    const text = JSON.stringify(claim[side]);
    for (const one of PLANS) if (one.text === text) known.set(keyOf(one.claim, one.side, world), one.claim.shown(season));
  }
  return known.get(key) ?? Number.NaN;
}

interface Outcome {
  world: string;
  right: number;
  wrong: number;
  holds: boolean;
}
function outcome(claim: Claim, world: World): Outcome {
  const right = shown(claim, 'right', world);
  const wrong = shown(claim, 'wrong', world);
  return { world: world.name, right, wrong, holds: holds(claim, right, wrong) };
}

const table: Record<string, string | number>[] = [];

describe.each(CLAIMS)('$id: $statement', (claim) => {
  it(`holds in ${100 * SHARE} % of ${DRAWS} drawn worlds`, () => {
    const outcomes = drawnWorlds(DRAWS, SEED).map((world) => outcome(claim, world));
    const share = outcomes.filter((o) => o.holds).length / DRAWS;
    const times = outcomes.map(({ right, wrong }) => wrong / right).sort((a, b) => a - b);
    table.push({
      claim: claim.id,
      worlds: 'drawn',
      share,
      leastTimes: times[0]?.toPrecision(3) ?? '',
      medianTimes: times[DRAWS / 2]?.toPrecision(3) ?? '',
      fails: outcomes
        .filter((o) => !o.holds)
        .map(({ world }) => world)
        .join(', '),
    });
    expect(share).toBeGreaterThanOrEqual(SHARE);
  });

  it('holds with each calibrated or assumed constant behind it halved and doubled', () => {
    const outcomes = bentWorlds(claim.behind).map((world) => outcome(claim, world));
    const failing = outcomes
      .filter((o) => !o.holds)
      .map(({ world, right, wrong }) => `${world} (${right.toPrecision(3)} → ${wrong.toPrecision(3)})`);
    table.push({
      claim: claim.id,
      worlds: `${outcomes.length} bent`,
      share: outcomes.filter((o) => o.holds).length / outcomes.length,
      leastTimes: Math.min(...outcomes.map(({ right, wrong }) => wrong / right)).toPrecision(3),
      medianTimes: '',
      fails: failing.join(', '),
    });
    expect(failing).toEqual([]);
  });
});

afterAll(() => {
  console.table(table);
});
