// A small loop with every kind of cell, forced and in some random but plausible state: what the engine's parts are tested on.
import { ALK, BA, BH, BN, CLOG, FISH, FLOWING, GUT, IC, LEAF, NO3, O2, PO, PS, ROOT, S2, STATES, TAN } from '../../src/model/components';
import { stream } from '../../src/numerics/streams';
import { refreshForcing } from '../../src/season/forcing';
import { Season } from '../../src/season/season';
import type { Plan } from '../../src/season/plan';
import { referencePlan } from '../season/plans';

/** A season whose cells have lived a day: forcing, active processes and constants are set, every kind of stage is there. */
export function livedLoop(change: Partial<Plan> = {}): Season {
  const plan = referencePlan({ days: 3, ...change });
  const season = new Season(plan);
  season.liveDay();
  season.liveDay();
  // evaporation at midnight moved the sump's volume
  refreshForcing(season.runtime, season.state, 2, 0);
  return season;
}

/** A random state: amounts within a factor of some tens around what loops hold; films, sludge, fish and leaves where they can be. */
export function randomState(season: Season, seed: string): Float64Array {
  const draw = stream(seed, 'state');
  const y = new Float64Array(season.state.y.length);
  const upTo = (most: number): number => most * (0.03 + draw());
  season.runtime.assembly.cells.forEach((cell, c) => {
    const o = c * STATES;
    const v = cell.volume;
    for (let i = 0; i < FLOWING; i++) y[o + i] = upTo(10) * v;
    y[o + O2] = (0.5 + 8 * draw()) * v;
    y[o + TAN] = upTo(5) * v;
    y[o + NO3] = upTo(40) * v;
    y[o + IC] = (0.5 + 2 * draw()) * v;
    y[o + ALK] = (0.3 + 2 * draw()) * v;
    y[o + S2] = upTo(0.05) * v;
    for (let i = FLOWING; i < STATES; i++) y[o + i] = upTo(20);
    y[o + BA] = upTo(0.4) * cell.film;
    y[o + BN] = upTo(0.3) * cell.film;
    y[o + BH] = upTo(3) * cell.film;
    y[o + PO] = upTo(0.2);
    y[o + PS] = upTo(0.02);
    y[o + GUT] = cell.fish ? upTo(60) : 0;
    y[o + FISH] = cell.fish ? upTo(4000) : 0;
    y[o + LEAF] = cell.bed ? upTo(100) : 0;
    y[o + ROOT] = cell.bed ? draw() : 0;
    y[o + CLOG] = cell.filter ? upTo(50) : 0;
  });
  return y;
}
