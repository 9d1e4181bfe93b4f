// Each thing a lesson says of a loop, shown once by the recorded numbers. The wide sweep is in tests/long.
import { describe, expect, it } from 'vitest';
import { runSeason } from '../../src/season/season';
import type { Plan } from '../../src/season/plan';
import type { Trajectory } from '../../src/season/trajectory';
import { CLAIMS, holds } from './claims';

const lived = new Map<string, Trajectory>();
function season(plan: Plan): Trajectory {
  const key = JSON.stringify(plan);
  const known = lived.get(key) ?? runSeason(plan);
  lived.set(key, known);
  return known;
}

describe('what the lessons say shows in the model', () => {
  it.each(CLAIMS)('$id: $statement', (claim) => {
    const right = claim.shown(season(claim.right));
    const wrong = claim.shown(season(claim.wrong));
    expect(holds(claim, right, wrong), `right ${right.toPrecision(4)}, wrong ${wrong.toPrecision(4)}, asked for ×${claim.ratio}`).toBe(
      true,
    );
  });
});
