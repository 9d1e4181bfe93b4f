// What a kilogram of feed eaten turns into, in a tank of fish over three weeks.
import { contentTable } from '../../src/model/content';
import { valuesWith } from '../../src/catalogue/values';
import { ID } from '../../src/model/processes/catalogue';
import type { ProcessName } from '../../src/model/processes/catalogue';
import { closedColumns } from '../../src/model/processes/definitions';
import type { SpeciesKind } from '../../src/season/plan';
import { did, fishTankPlan, liveThrough } from './bench';

const values = valuesWith();
const columns = closedColumns(values, contentTable(values));
const EATING: readonly ProcessName[] = ['fishGrowth', 'fishExpenditure'];
const FISH_LIFE: readonly ProcessName[] = [...EATING, 'fishBasal'];

/** What fish did to each component for each kilogram they ate, in the component's unit per kg. */
export function perKilogram(species: SpeciesKind): (component: number) => number {
  const T_C = values.fish[species].optimumLow + 1;
  const done = new Map<ProcessName, number>(FISH_LIFE.map((process) => [process, 0]));
  liveThrough(
    fishTankPlan({
      inflow: { pH: 7.5, O2_mg_L: 8 },
      hold: { T_C, pH: 7.5, O2_mg_L: 8 },
      days: 21,
      fish: { species, number: 100, mass_g: 100 },
      feed_g_d: 200,
    }),
    (_season, extents) => {
      for (const process of FISH_LIFE) done.set(process, (done.get(process) ?? 0) + did(extents, process));
    },
  );
  const eaten = EATING.reduce((sum, process) => sum + (done.get(process) ?? 0), 0);
  return (component) =>
    (1000 / eaten)
    * FISH_LIFE.reduce((sum, process) => {
      const { rows, coefficients } = columns[ID[process]];
      const at = rows.indexOf(component);
      return sum + (at < 0 ? 0 : coefficients[at] * (done.get(process) ?? 0));
    }, 0);
}
