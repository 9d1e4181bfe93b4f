// Whole seasons as rounded tables: what a change of the model changes, to be looked at before it is accepted.
import { runSeason } from '../../src/season/season';
import type { Plan } from '../../src/season/plan';
import type { Variable } from '../../src/season/trajectory';
import { course } from '../season/courses';
import { inOrder, keptPlan, referencePlan } from '../season/plans';

const WATER: readonly Variable[] = [
  'TAN_mgN_L',
  'NO2_mgN_L',
  'NO3_mgN_L',
  'O2_mg_L',
  'pH',
  'alkalinity_meq_L',
  'H2S_ug_L',
  'solidsFine_mg_L',
];

export const GOLDEN: readonly {
  name: string;
  plan: Plan;
  every_d: number;
  columns: readonly (readonly [stage: string, variable: Variable])[];
}[] = [
  {
    name: 'reference',
    plan: referencePlan(),
    every_d: 5,
    columns: [
      ...WATER.map((variable) => ['fish', variable] as const),
      ['fish', 'mass_g'],
      ['rafts', 'leafDry_g_m2'],
      ['rafts', 'rootHealth'],
      ['rafts', 'rootMat_g_m2'],
      ['settler', 'sludge_g'],
      ['mats', 'clog'],
    ],
  },
  {
    name: 'never-drained',
    plan: inOrder(['fish', 'settler', 'mats', 'degas', 'rafts', 'sump', 'pump'], (action) => action.do !== 'drain'),
    every_d: 5,
    columns: [...WATER.map((variable) => ['rafts', variable] as const), ['settler', 'sludge_g'], ['settler', 'gas_L_d']],
  },
  {
    name: 'new-loop',
    plan: { ...referencePlan({ days: 45 }), start: { ...referencePlan().start, biofilm: 'bare' } },
    every_d: 3,
    columns: (['TAN_mgN_L', 'NO2_mgN_L', 'NO3_mgN_L', 'NH3_mgN_L', 'pH', 'welfare', 'mass_g'] as const).map(
      (variable) => ['fish', variable] as const,
    ),
  },
  {
    name: 'nitrification-rig',
    plan: keptPlan('nitrification-rig'),
    every_d: 1,
    columns: (['TAN_mgN_L', 'NO2_mgN_L', 'NO3_mgN_L', 'O2_mg_L', 'pH'] as const).map((variable) => ['media', variable] as const),
  },
];

/** Three significant figures; what is less than a thousandth is shown as nothing. */
const rounded = (value: number): string => (Math.abs(value) < 1e-3 ? '0' : String(Number(value.toPrecision(3))));

/** The season's table as CSV, one line every so many days (the state at the end of the day before), its scores last. */
export function tableOf({ plan, every_d, columns }: (typeof GOLDEN)[number]): string {
  const trajectory = runSeason(plan);
  const courses = columns.map(([stage, variable]) => course(trajectory, stage, variable));
  const lines = [['day', ...columns.map(([stage, variable]) => `${stage}.${variable}`)].join(',')];
  for (let day = every_d; day <= plan.days; day += every_d)
    lines.push([day, ...courses.map((values) => rounded(values[24 * day - 1]))].join(','));
  const { fishHealth, harvest, stewardship } = trajectory.summary.scores;
  lines.push(`# fish health ${rounded(fishHealth)}, harvest ${rounded(harvest)}, stewardship ${rounded(stewardship)}`);
  return `${lines.join('\n')}\n`;
}
