// Headline rows of the published checks that need no season: water chemistry, gases, solids that sink, pipes, light.
import { logCarbonicAcid } from '../../src/model/equilibrium/constants';
import { gasOverWater } from '../../src/model/equilibrium/henry';
import { drainDown_m3 } from '../../src/model/hydraulics/drainDown';
import { headLoss_m } from '../../src/model/hydraulics/pipe';
import { ALK } from '../../src/model/components';
import { contentTable } from '../../src/model/content';
import { RECORDED, valuesWith } from '../../src/catalogue/values';
import { uvWaterFactor } from '../../src/model/polish/uv';
import { ID } from '../../src/model/processes/catalogue';
import { closedColumns } from '../../src/model/processes/definitions';
import { stokesVelocity_m_d } from '../../src/model/solids/stokes';
import { ask, table } from './answers';

const { hydraulics: h } = RECORDED;

/** One published check: how far off it may be, as a share of what is expected, by a factor either way, or in its own unit. */
export interface Check {
  source: string;
  quantity: string;
  expected: number;
  ours: number;
  share?: number;
  factor?: number;
  within?: number;
}

const N_MG = 14.007;
const S_MG = 32.06;

/** Largest distance in pH from the independent code over its waters of known alkalinity and carbon. */
function worstPH(): number {
  return Math.max(
    ...table('phreeqc-checks.csv')
      .filter((row) => row['id'].startsWith('A'))
      .map((row) => {
        const value = (column: string): number => Number(row[column]);
        const found = ask({
          T_C: value('T_C'),
          TAN_mgN_L: value('TAN_in_mmol_kgw') * N_MG,
          sulfide_mgS_L: value('TS_in_mmol_kgw') * S_MG,
          nitrate_mgN_L: value('NO3_in_mmol_kgw') * N_MG,
          chloride_mmol_L: value('Cl_in_mmol_kgw'),
          alkalinity_meq_L: value('alk_out_meq_kgw'),
          DIC_mmol_L: value('DIC_out_mmol_kgw'),
        });
        return Math.abs(found.pH - value('pH_if_Ca_replaced_by_Na'));
      }),
  );
}

/** meq of alkalinity that a gram of slaked lime brings. */
function limeAlkalinity(): number {
  const values = valuesWith();
  const { rows, coefficients } = closedColumns(values, contentTable(values))[ID.doseCalciumHydroxide];
  return 1000 * coefficients[rows.indexOf(ALK)];
}

export const chemistry = (): Check[] => [
  {
    source: 'Emerson et al. 1975',
    quantity: 'NH3 share at pH 8.0, 26 °C, %',
    expected: 5.736,
    ours: 100 * ask({ T_C: 26, pH: 8 }).NH3_fraction,
    share: 0.001,
  },
  {
    source: 'Trussell 1972',
    quantity: 'NH3 share at pH 8.0, 25 °C, %',
    expected: 5.28,
    ours: 100 * ask({ T_C: 25, pH: 8 }).NH3_fraction,
    share: 0.03,
  },
  {
    source: 'FAO AC175E',
    quantity: 'H2S share at pH 7.0, 24 °C, %',
    expected: 51.4,
    ours: 100 * ask({ T_C: 24, pH: 7 }).H2S_fraction,
    within: 4,
  },
  {
    source: 'Russian sulfide guidance',
    quantity: 'H2S share at pH 6.3, 25 °C, %',
    expected: 82,
    ours: 100 * ask({ T_C: 25, pH: 6.3 }).H2S_fraction,
    within: 1.5,
  },
  {
    source: 'Plummer & Busenberg 1982',
    quantity: 'log K1 of carbonic acid, 25 °C',
    expected: -6.3519,
    ours: logCarbonicAcid(25),
    within: 1e-4,
  },
  { source: 'PHREEQC 3.8.9', quantity: 'worst pH difference in 31 waters', expected: 0, ours: worstPH(), within: 0.01 },
  {
    source: 'Tucker 1984',
    quantity: 'CO2 per alkalinity at pH 7.2, 20 °C',
    expected: 0.133,
    ours: ask({ T_C: 20, pH: 7.2, alkalinity_meq_L: 100 / 50.043, ionicStrength_mol_L: 0 }).CO2_mg_L / 100,
    share: 0.015,
  },
  { source: 'Formula weight', quantity: 'alkalinity of Ca(OH)2, meq/g', expected: 26.99, ours: limeAlkalinity(), share: 5e-4 },
  { source: 'EN 25814', quantity: 'O2 saturation at 25 °C, mg/L', expected: 8.26, ours: ask({ T_C: 25 }).O2_saturation_mg_L, within: 0.01 },
  {
    source: 'Benson & Krause 1984',
    quantity: 'O2 saturation at 22 °C, 0.85 atm, mg/L',
    expected: 7.398,
    ours: ask({ T_C: 22, pressure_atm: 0.85 }).O2_saturation_mg_L,
    within: 0.002,
  },
  {
    source: 'EN 25814, salt',
    quantity: 'O2 lost to each g/kg at 25 °C, mg/L',
    expected: 0.0421,
    ours: (ask({ T_C: 25 }).O2_saturation_mg_L - ask({ T_C: 25, salinity_g_kg: 2 }).O2_saturation_mg_L) / 2,
    share: 0.15,
  },
  { source: 'Sander 2015', quantity: 'H2S in air over water, 25 °C', expected: 0.4, ours: gasOverWater('H2S', 25), share: 0.04 },
  {
    source: 'Stokes',
    quantity: '200 µm, 1050 kg/m³ at 20 °C, m/d',
    expected: 97.3,
    ours: stokesVelocity_m_d(200, 1050, 20, h),
    share: 0.01,
  },
  {
    source: 'Swamee & Jain 1976',
    quantity: '2000 L/h in 25 mm over 5 m, m',
    expected: 0.312,
    ours: headLoss_m(48, { length_m: 5, diameter_m: 0.025, fittings: 0 }, 20, h),
    share: 0.012,
  },
  {
    source: 'Sump geometry',
    quantity: 'room for what runs down, m³',
    expected: 0.44,
    ours: drainDown_m3(
      [
        { area_m2: 4, above_m: 0.25, voids: 0.4 },
        { area_m2: 1, above_m: 0.03, voids: 1 },
      ],
      0.01,
    ),
    share: 1e-9,
  },
  { source: 'Bolton & Linden 2003', quantity: 'UV mean over 5 cm at 60 %/cm', expected: 0.3611, ours: uvWaterFactor(0.6, 5), share: 0.001 },
];
