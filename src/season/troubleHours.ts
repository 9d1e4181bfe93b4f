// Which limit of fish or roots a season was past for how long: at each hour the worst of those passed, counted over the season.
import { can } from '../catalogue/can';
import { comfortOf } from './comfort';
import type { Band } from './comfort';
import type { Plan } from './plan';
import { stageReading } from './stageReading';
import type { StageCells, Trajectory } from './trajectory';

/** A limit at a stage, and the hours in which it was the one furthest passed; value: the reading furthest past it. */
export interface TroubleHours {
  applies: Band['applies'];
  stage: string;
  variable: string;
  side: 'above' | 'below';
  value: number;
  limit: number;
  act_h: number;
  watch_h: number;
}

/** What is told of a limit, and how far it was passed at most. */
interface Counted {
  told: TroubleHours;
  times: number;
}
type Past = Pick<TroubleHours, 'side' | 'value' | 'limit'> & { act: boolean; times: number };

/** How a value stands against a band; null within it. times: how far past the limit, a ratio, so that unlike quantities can be ranked. */
function past(band: Band, value: number): Past | null {
  const { watchBelow = -Infinity, actBelow = -Infinity, watchAbove = Infinity, actAbove = Infinity } = band;
  const below = (act: boolean, limit: number): Past => ({ side: 'below', value, limit, act, times: value > 0 ? limit / value : Infinity });
  const above = (act: boolean, limit: number): Past => ({ side: 'above', value, limit, act, times: limit > 0 ? value / limit : 1 + value });
  if (value < actBelow) return below(true, actBelow);
  if (value > actAbove) return above(true, actAbove);
  if (value < watchBelow) return below(false, watchBelow);
  return value > watchAbove ? above(false, watchAbove) : null;
}

const isWorse = (one: Past, other: Past | undefined): boolean =>
  other === undefined || (one.act === other.act ? one.times > other.times : one.act);

/** Health of roots is what the other limits come to, and so is no cause of its own. */
const OUTCOME = 'rootHealth';

/** Hours of trouble of a whole season, by stage and limit; only those that were ever the worst. */
export function troubleHours(plan: Plan, season: Pick<Trajectory, 'stages' | 'cells' | 'variables' | 'days'>): TroubleHours[] {
  const bands = comfortOf(plan).filter(({ variable }) => variable !== OUTCOME);
  const found = new Map<string, Counted>();
  const width = season.cells * season.variables.length;
  const read = (block: Float32Array, at: number, stage: StageCells, variable: string): number =>
    variable === 'solids'
      ? read(block, at, stage, 'solidsCoarse_mg_L') + read(block, at, stage, 'solidsFine_mg_L')
      : stageReading(block, at, season.variables, stage, variable);
  for (const stage of season.stages) {
    if (stage.cells === 0) continue;
    const own = bands.filter(({ applies }) => can(stage.kind, applies === 'fish' ? 'keepsFish' : 'grows'));
    for (const { hourly } of own.length > 0 ? season.days : []) {
      for (let at = 0; at + width <= hourly.length; at += width) {
        let worst: { band: Band; past: Past } | undefined;
        for (const band of own) {
          const now = past(band, read(hourly, at, stage, band.variable));
          if (now !== null && isWorse(now, worst?.past)) worst = { band, past: now };
        }
        if (worst !== undefined) count(found, stage.id, worst.band, worst.past);
      }
    }
  }
  return [...found.values()].map(({ told }) => told);
}

function count(found: Map<string, Counted>, stage: string, { applies, variable }: Band, now: Past): void {
  const { side, value, limit, act, times } = now;
  const key = `${stage} ${variable} ${side}`;
  const known = found.get(key) ?? { times: 0, told: { applies, stage, variable, side, value, limit, act_h: 0, watch_h: 0 } };
  if (act) known.told.act_h += 1;
  else known.told.watch_h += 1;
  // the limit told is the one that the worst reading is past
  if (times > known.times) {
    known.times = times;
    Object.assign(known.told, { value, limit });
  }
  found.set(key, known);
}
