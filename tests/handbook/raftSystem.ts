// The commercial raft system of the University of the Virgin Islands as a season: its plan at a share of the published feed, and what is
// read off it. Rakocy et al., EcoSymposium paper and slides; Rakocy et al. 2004, ISTA-6 and Acta Hort. Air is not published in L/min: 1.5
// hp of blower taken as 2800 L/min for the fish tanks and 1 hp as 1800 for the rafts: chosen, and the harvest depends on it. Light, source
// water, base caps: assumptions. The system stands under the open sky: rain of about 1.05 m a year (St. Croix, from memory) on its 250 m²
// of water pushes as much of the loop's water out, on top of the 1.5 % a day that is published as drawn. Mats are published as cleaned once
// or twice a week; here once.
import { ELEMENTS, GUT, LEAF, N2, STATES, STORES } from '../../src/model/components';
import { PROCESS_NAMES } from '../../src/model/processes/catalogue';
import { cropAt } from '../../src/model/organisms/plants/cropAt';
import { VARIABLES } from '../../src/season/trajectory';
import type { Plan } from '../../src/season/plan';
import type { DayChunk, Variable } from '../../src/season/trajectory';
import type { Season } from '../../src/season/season';
import { keptPlan } from '../season/plans';
import { liveThroughChunks } from './bench';

/** m² of rafts; m³ of one fish tank; kg/d that its FCR of 1.7 makes of its harvest; fish put in each tank */
export const RAFT_AREA = 214;
const TANK_M3 = 7.8;
export const PUBLISHED_FEED = 19.4;
const STOCKED = 600;
/** the fish tanks' first harvest, past which the loop is taken to be in its rhythm */
const SETTLED_DAY = 42;

export interface RaftSeason {
  /** feed offered, kg/d; its FCR, offered against gained */
  feed: number;
  FCR: number;
  /** harvest of the tank that went through its 24 weeks: fish left of those stocked, g, kg/m³; NaN if not reached */
  survival: number;
  mass_g: number;
  kg_m3: number;
  /** means from day 42 on, mg/L */
  mean: (stage: string, variable: Variable) => number;
  /** share of what the crop's stores of N, P, K, Ca, Fe could hold, at the end */
  stores: number[];
  /** crop cut and standing, fresh, kg/m² a year */
  crop_kg_m2_yr: number;
  /** what the rafts take out of the water that passes, g/m²/d, from day 42 on */
  removed: { ammonia: number; nitrogen: number; phosphorus: number };
  /** water drawn without the rain, as a share of what the system holds, per day */
  drawn: number;
  /** share of the nitrogen fed that bacteria made gas of, over the whole season */
  denitrified: number;
  season: Season;
}

/** Lives the system for some days at a share of the published feed. @param feedShare 1 = 19.4 kg/d on the average */
export function liveRafts(feedShare: number, days: number, change: (plan: Plan) => Plan = (plan) => plan): RaftSeason {
  const kept = change(keptPlan('commercial-raft'));
  const actions = kept.actions.map((action) => (action.do === 'feed' ? { ...action, g_d: action.g_d * feedShare } : action));
  const chunks: DayChunk[] = [];
  const season = liveThroughChunks({ ...kept, days, actions }, (chunk) => {
    chunks.push(chunk);
  });
  const { state, runtime } = season;
  const stages = season.stages();
  const width = VARIABLES.length;
  /** Daily-hourly mean over the cells asked for. */
  const meanOver = (first: number, cells: number, variable: Variable): number => {
    const column = VARIABLES.indexOf(variable);
    let sum = 0,
      n = 0;
    for (const chunk of chunks.slice(SETTLED_DAY)) {
      for (let hour = 0; hour < 24; hour++)
        for (let c = first; c < first + cells; c++) {
          sum += chunk.hourly[(hour * runtime.assembly.cells.length + c) * width + column];
          n++;
        }
    }
    return sum / n;
  };
  const placeOf = (stage: string): { first: number; cells: number; volume_m3: number } =>
    stages.find(({ id }) => id === stage) ?? { first: 0, cells: 1, volume_m3: 0 };
  const mean = (stage: string, variable: Variable): number => meanOver(placeOf(stage).first, placeOf(stage).cells, variable);
  const rafts = placeOf('rafts');
  const last = rafts.first + rafts.cells - 1;
  const flow = 24 * (kept.loop.find(({ kind }) => kind === 'returnPump')?.flow_m3_h ?? 0);
  const taken = (...variables: Variable[]): number =>
    variables.reduce((sum, variable) => sum + mean('degas', variable) - meanOver(last, 1, variable), 0) * (flow / RAFT_AREA);
  const whole = state.fish.find(({ unit }) => unit === 1);
  const reached = whole !== undefined && whole.takenNumber > 0;
  const { plants_kg, gain_kg, waterUsed_L } = season.summary().scores;
  const rain = kept.actions.find((action) => action.do === 'exchange' && action.stage === 'rafts');
  const rain_m3_d = rain?.do === 'exchange' ? rain.fraction * rafts.volume_m3 : 0;
  const held_m3 = stages.reduce((sum, { volume_m3 }) => sum + volume_m3, 0);
  const offered = state.put[GUT] / 1000;
  const at = cropAt(runtime.values, kept.loop.find(({ id }) => id === 'rafts')?.crop?.kind ?? 'basil');
  const rooms = [at.roomN, at.roomP, at.roomK, at.roomCa, at.roomFe];
  const total = (component: number): number =>
    Array.from({ length: rafts.cells }, (_, c) => state.y[(rafts.first + c) * STATES + component]).reduce((a, b) => a + b, 0);
  const NITROGEN = ELEMENTS.indexOf('N');
  const gasOf = (p: number): number => runtime.matrix.columns[p].coefficients[runtime.matrix.columns[p].rows.indexOf(N2)] ?? 0;
  const madeGas = PROCESS_NAMES.reduce((sum, name, p) => (name === 'nitrogenTransfer' ? sum : sum + state.extents[p] * gasOf(p)), 0);
  return {
    feed: offered / days,
    FCR: offered / gain_kg,
    survival: reached ? whole.takenNumber / STOCKED : NaN,
    mass_g: reached ? whole.takenMass / whole.takenNumber : NaN,
    kg_m3: reached ? whole.takenMass / 1000 / TANK_M3 : NaN,
    mean,
    stores: STORES.map((store, i) => total(store) / (total(LEAF) * rooms[i])),
    crop_kg_m2_yr: (plants_kg / RAFT_AREA / days) * 365,
    removed: { ammonia: taken('TAN_mgN_L'), nitrogen: taken('TAN_mgN_L', 'NO2_mgN_L', 'NO3_mgN_L'), phosphorus: taken('PO4_mgP_L') },
    drawn: (waterUsed_L / 1000 / days - rain_m3_d) / held_m3,
    denitrified: madeGas / (state.put[GUT] * runtime.content[GUT][NITROGEN]),
    season,
  };
}
