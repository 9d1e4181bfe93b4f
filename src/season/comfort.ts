// Limits that turn a number into a mark, from the species, the crop, chloride and temperature; none is fixed.
import { nitriteLC50 } from '../model/organisms/fish/comfort';
import { plateau } from '../model/organisms/plants/growth';
import { valuesWith } from '../catalogue/values';
import type { Values } from '../model/parameters/values';
import type { Plan } from './plan';
import { EMPTY_BED, EMPTY_TANK } from '../catalogue/standIn';

export interface Band {
  applies: 'fish' | 'roots';
  variable: string;
  watchBelow?: number;
  actBelow?: number;
  watchAbove?: number;
  actAbove?: number;
}

/** Shares of the way from safe to harm at which a mark begins: watch where discomfort begins, act a third of the way. */
const ACT = 0.33;

/** Oxygen at the roots' surface that leaves such a health, mg/L. */
function surfaceFor(health: number, k: Values['kinetics']): number {
  const share = (Math.sqrt(health) * k.rootBreathes - k.rootAired) / (1 - k.rootAired);
  return (k.rootO2Half * share) / (1 - share);
}

/** Comfort bands of a plan's fish and roots. Variables are those of the trajectory. */
export function comfortOf(plan: Plan): Band[] {
  const values = valuesWith();
  const species = plan.fish[0]?.species ?? plan.actions.find((action) => action.do === 'stock')?.species ?? EMPTY_TANK;
  const f = values.fish[species];
  const between = (safe: number, harm: number): number => safe + ACT * (harm - safe);
  const no2 = nitriteLC50(f, plan.source.Cl_mg_L ?? 0);
  const bands: Band[] = [
    { applies: 'fish', variable: 'NH3_mgN_L', watchAbove: f.nh3Safe, actAbove: between(f.nh3Safe, f.nh3Harm) },
    { applies: 'fish', variable: 'NO2_mgN_L', watchAbove: f.no2Safe * no2, actAbove: between(f.no2Safe, f.no2Harm) * no2 },
    { applies: 'fish', variable: 'O2_mg_L', watchBelow: f.o2Safe, actBelow: between(f.o2Safe, f.o2Harm) },
    { applies: 'fish', variable: 'CO2_mg_L', watchAbove: f.co2Safe, actAbove: between(f.co2Safe, f.co2Harm) },
    { applies: 'fish', variable: 'H2S_ug_L', watchAbove: 1000 * f.h2sSafe, actAbove: 1000 * between(f.h2sSafe, f.h2sHarm) },
    {
      applies: 'fish',
      variable: 'pH',
      watchBelow: f.pHSafe,
      actBelow: between(f.pHSafe, f.pHHarm),
      watchAbove: f.pHHighSafe,
      actAbove: between(f.pHHighSafe, f.pHHighHarm),
    },
    { applies: 'fish', variable: 'solids', watchAbove: f.solidsSafe, actAbove: between(f.solidsSafe, f.solidsHarm) },
  ];
  // Roots: where health falls by a twentieth, and by a third; a coat on which rot begins to spread, and one that hides roots from air.
  const k = values.kinetics;
  const fall = (share: number): number => Math.sqrt(1 / (1 - share) - 1);
  bands.push(
    { applies: 'roots', variable: 'rootO2_mg_L', watchBelow: surfaceFor(0.95, k), actBelow: surfaceFor(0.67, k) },
    { applies: 'roots', variable: 'H2S_ug_L', watchAbove: 1000 * k.rootSulfide * fall(0.05), actAbove: 1000 * k.rootSulfide * fall(0.33) },
    { applies: 'roots', variable: 'rootMat_g_m2', watchAbove: k.rotCoat / 3, actAbove: k.rotCoat },
    { applies: 'roots', variable: 'rootHealth', watchBelow: 0.8, actBelow: 0.6 },
  );
  const T = plan.climate.water_C ?? plan.climate.air_C.mean;
  const c = values.crops[plan.loop.find((stage) => stage.crop)?.crop?.kind ?? EMPTY_BED];
  // A pH that is fine for bacteria and fish costs leaves a little; it is marked only where it costs them much.
  bands.push({
    applies: 'roots',
    variable: 'pH',
    watchBelow: 5.2,
    actBelow: 4.6,
    watchAbove: plateau(T, c.coldStop, c.optimumLow, c.optimumHigh, c.hotStop) > 0 ? 7.8 : 7.6,
    actAbove: 8.3,
  });
  return bands;
}
