// What lessons say of a loop, each as a pair of plans and one shown quantity: right against wrong.
// Nothing here knows how the model works; a claim holds or it is not made.
import type { Action, Plan } from '../../src/season/plan';
import type { Trajectory } from '../../src/season/trajectory';
import { course, dayOfPeak, meanOf, most } from './courses';
import type { Claim } from './claim';
import { LATER_CLAIMS } from './laterClaims';
import { inOrder, referencePlan } from './plans';

const REFERENCE = ['fish', 'settler', 'mats', 'degas', 'rafts', 'sump', 'pump'];
const undrained = (action: Action): boolean => action.do !== 'drain';
const forgotten = inOrder(REFERENCE, undrained);
const bedSulfide = (t: Trajectory): number => meanOf(course(t, 'rafts', 'H2S_ug_L', 10));

const bare = (plan: Plan, days: number): Plan => ({ ...plan, days, start: { ...plan.start, biofilm: 'bare' } });

const FIRST_CLAIMS: readonly Claim[] = [
  {
    id: 'no-fine-filter',
    statement: 'roots brown without a fine filter: more solids sit on them',
    right: referencePlan(),
    wrong: inOrder(REFERENCE.filter((id) => id !== 'mats')),
    // Stated threshold: mats that catch half as much as ours still spare the roots this much.
    shown: (t) => most(course(t, 'rafts', 'rootMat_g_m2', 10)),
    ratio: 1.65,
    behind: [/kinetics\.(mat|root|settle)/],
  },
  {
    id: 'no-fine-filter-roots',
    statement: 'roots brown without a fine filter: their health falls below that of the filtered bed',
    right: referencePlan(),
    wrong: inOrder(REFERENCE.filter((id) => id !== 'mats')),
    shown: (t) => 1 - meanOf(course(t, 'rafts', 'rootHealth', 20)),
    ratio: 1.65,
    behind: [/kinetics\.(mat|root|settle)/],
  },
  {
    id: 'forgotten-settler',
    statement: 'sulfide reaches the bed from a settler that nobody drains',
    right: referencePlan(),
    wrong: forgotten,
    // Stated threshold: three quarters more; films between settler and bed take up to half of what it gives off.
    shown: bedSulfide,
    ratio: 1.75,
    behind: [/kinetics\.(sludge|sulfide|bubble|disturbance|gas|methane)/],
  },
  {
    id: 'degassing-before-solids',
    statement:
      'degassing ahead of the solids stages does not help the bed: more sulfide of a forgotten settler reaches it than with degassing behind them',
    right: forgotten,
    wrong: inOrder(['fish', 'degas', 'settler', 'mats', 'rafts', 'sump', 'pump'], undrained),
    // Stated threshold: three quarters more; where sulfide hardly oxidises on media the tank strips less of it.
    shown: bedSulfide,
    ratio: 1.75,
    behind: [/kinetics\.(sludge|sulfide|bubble|disturbance|transfer|alpha)/],
  },
  {
    // The same stages in the same order; only sump and pump stand ahead of them all.
    id: 'pump-before-settler',
    statement: 'a pump ahead of the settler makes fines that nothing catches: they reach the bed',
    right: referencePlan(),
    wrong: inOrder(['fish', 'sump', 'pump', 'settler', 'mats', 'degas', 'rafts']),
    // Stated threshold: a quarter more; the mats behind the settler take part of what the pump made.
    shown: (t) => meanOf(course(t, 'rafts', 'solidsFine_mg_L', 20)),
    ratio: 1.25,
    behind: [/kinetics\.(pump|settle|radial|airShear|mat)/],
  },
  {
    id: 'no-base',
    statement: 'without base, nitrification eats the alkalinity and stalls: ammonia rises',
    right: referencePlan(),
    wrong: inOrder(REFERENCE, (action) => action.do !== 'base'),
    shown: (t) => meanOf(course(t, 'fish', 'TAN_mgN_L', 50)),
    ratio: 2,
    behind: [/kinetics\.nitrifier/, /kinetics\.aob/],
  },
  {
    // One plan, told apart by the quantity: the day of the nitrite peak over that of the ammonia peak.
    id: 'nitrite-follows-ammonia',
    statement: 'in a new loop nitrite peaks after ammonia',
    right: bare(referencePlan(), 45),
    wrong: bare(referencePlan(), 45),
    shown: (t) => dayOfPeak(course(t, 'fish', 'NO2_mgN_L')) - dayOfPeak(course(t, 'fish', 'TAN_mgN_L')),
    ratio: 0,
    behind: [/kinetics\.(aob|nob|inoculum)/],
  },
];

/** Least days by which nitrite is behind ammonia. */
export const LAG_d = 2;

/** Whether a claim shows, from its quantity in the right and the wrong season. */
export function holds(claim: Claim, right: number, wrong: number): boolean {
  if (claim.ratio === 0) return right >= LAG_d;
  if (claim.ratio < 1) return wrong <= claim.ratio * right && right > 0;
  return wrong >= claim.ratio * right && wrong > 0;
}

/** All that is claimed. */
export const CLAIMS: readonly Claim[] = [...FIRST_CLAIMS, ...LATER_CLAIMS];
