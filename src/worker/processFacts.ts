// What the page needs to tell why: what one unit of each process does to the water, and at which reading it runs at half its rate.
import { ALK, CF, CI, FF, IC, NO2, NO3, O2, S2, SS, TAN, UI } from '../model/components';
import { contentTable, dryMass } from '../model/content';
import { CROPS } from '../catalogue/kinds';
import type { CropName } from '../catalogue/kinds';
import { valuesWith } from '../catalogue/values';
import { PROCESS_NAMES } from '../model/processes/catalogue';
import { closedColumns, DEFINITIONS } from '../model/processes/definitions';
import type { Limit, ProcessFacts, WaterQuantity } from './messages';

/** g of carbon dioxide in a mole of inorganic carbon */
const CO2_MOLAR = 44.009;

const DISSOLVED: readonly (readonly [number, WaterQuantity, number])[] = [
  [TAN, 'ammonia', 1],
  [NO2, 'nitrite', 1],
  [NO3, 'nitrate', 1],
  [O2, 'oxygen', 1],
  [IC, 'carbonDioxide', CO2_MOLAR],
  [S2, 'sulfide', 1],
  [ALK, 'alkalinity', 1],
  [SS, 'organics', 1],
];

/** Facts of all processes, from the model's own stoichiometry and parameter records. */
export function processFacts(): ProcessFacts {
  const values = valuesWith();
  const dry = dryMass(values);
  const effects: ProcessFacts['effects'] = {};
  closedColumns(values, contentTable(values)).forEach(({ rows, coefficients }, p) => {
    const effect: Partial<Record<WaterQuantity, number>> = {};
    const add = (quantity: WaterQuantity, amount: number): void => {
      effect[quantity] = (effect[quantity] ?? 0) + amount;
    };
    rows.forEach((component, i) => {
      for (const [row, quantity, per] of DISSOLVED) if (row === component) add(quantity, coefficients[i] * per);
      if (component >= CF && component <= UI) add('solids', coefficients[i] * dry[component]);
      if (component >= CF && component <= CI) add('coarse', coefficients[i] * dry[component]);
      if (component >= FF && component <= UI) add('fine', coefficients[i] * dry[component]);
    });
    effects[PROCESS_NAMES[p]] = effect;
  });
  const k = values.kinetics;
  const monod = (by: Limit['by'], variables: string[], half: number): Limit => ({ by, variables, half, shape: 'saturation' });
  const nitrifying: Limit[] = [
    { by: 'pH', variables: ['pH'], half: k.nitrifierLowPH, shape: 'acid' },
    monod('alkalinity', ['alkalinity_meq_L'], k.nitrifierAlkalinity),
  ];
  const nitrogen = ['NO3_mgN_L', 'TAN_mgN_L'];
  const crops = Object.fromEntries(
    (Object.keys(CROPS) as CropName[]).map((crop): [string, Limit[]] => {
      const c = values.crops[crop];
      return [
        crop,
        [
          monod('nitrogen', nitrogen, c.halfN),
          monod('phosphorus', ['PO4_mgP_L'], c.halfP),
          monod('potassium', ['K_mg_L'], c.halfK),
          monod('calcium', ['Ca_mg_L'], c.halfCa),
          monod('magnesium', ['Mg_mg_L'], c.halfMg),
          monod('iron', ['Fe_mg_L'], c.halfFe),
        ],
      ];
    }),
  );
  return {
    effects,
    limits: {
      nitritation: [monod('ammonia', ['TAN_mgN_L'], k.aobTAN), monod('oxygen', ['O2_mg_L'], k.aobO2), ...nitrifying],
      nitriteOxidation: [monod('nitrite', ['NO2_mgN_L'], k.nobNO2), monod('oxygen', ['O2_mg_L'], k.nobO2), ...nitrifying],
      heterotrophsAerobic: [monod('organics', ['organics_mgCOD_L'], k.hetSubstrate), monod('oxygen', ['O2_mg_L'], k.hetO2)],
    },
    crops,
    units: Object.fromEntries(DEFINITIONS.map(({ id, unit }) => [id, unit])),
  };
}
