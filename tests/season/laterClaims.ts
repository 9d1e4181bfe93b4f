// What later lessons say of a loop: the same form as claims.ts, on loops of their own.
import type { Action, Plan, StageSpec } from '../../src/season/plan';
import type { Trajectory } from '../../src/season/trajectory';
import type { Claim } from './claim';
import { course, least, meanOf, most } from './courses';
import { inOrder, referencePlan } from './plans';

const withActions = (plan: Plan, ...actions: Action[]): Plan => ({ ...plan, actions: [...plan.actions, ...actions] });
const without = (plan: Plan, ...dropped: Action['do'][]): Plan => ({
  ...plan,
  actions: plan.actions.filter((action) => !dropped.includes(action.do)),
});
/** The plan with some stages changed, by id. */
const changed = (plan: Plan, changes: Readonly<Record<string, Partial<StageSpec>>>): Plan => ({
  ...plan,
  loop: plan.loop.map((stage) => ({ ...stage, ...changes[stage.id] })),
});
const fed = (plan: Plan, g_d: number): Plan => withActions(without(plan, 'feed'), { day: 0, do: 'feed', tank: 'fish', g_d });
const open = (plan: Plan, mean: number): Plan => ({
  ...plan,
  climate: { ...plan.climate, water_C: undefined, weather: 0, air_C: { ...plan.climate.air_C, mean } },
});
const spelled = (plan: Plan, air_C: number): Plan => ({ ...plan, climate: { ...plan.climate, spells: [{ day: 20, days: 7, air_C }] } });
/** Hourly values over the days of a spell and the one after it, in which the water is still as it made it. */
const inSpell = (t: Trajectory, variable: Parameters<typeof course>[2]): number[] => course(t, 'fish', variable, 22).slice(0, 5 * 24);

/** Want of welfare that nobody would see. */
const SLIGHT = 0.05;

const reference = referencePlan();
const short = referencePlan({ days: 30 });
const full = changed(short, { fish: { air_L_min: 20 } });
const stocked = (plan: Plan, number: number, mass_g: number): Plan => ({
  ...plan,
  fish: [{ tank: 'fish', species: 'tilapia', number, mass_g, day: 0 }],
});

/** Dense, so that the night's oxygen hangs on the stones. */
const dense = fed(stocked(full, 120, 100), 200);
/** Every stone off from evening to morning. */
const dark = withActions(
  dense,
  ...dense.loop
    .filter(({ air_L_min }) => (air_L_min ?? 0) > 0)
    .flatMap(({ id, air_L_min }): Action[] => [
      { every_d: 1, from: 1, hour: 18, do: 'air', stage: id, L_min: 0 },
      { every_d: 1, from: 2, hour: 7, do: 'air', stage: id, L_min: air_L_min ?? 0 },
    ]),
);
const cut: Action[] = [
  { day: 15, hour: 1, do: 'power', on: false },
  { day: 15, hour: 7, do: 'power', on: true },
];

/** Twelve square metres of lettuce on the feed for three. */
const lean = changed(fed(reference, 40), { rafts: { area_m2: 12 } });
const mineral: Plan = {
  ...lean,
  side: [
    ...lean.side,
    { id: 'mineral', kind: 'mineralisationTank', volume_m3: 0.2, air_L_min: 20, takes: ['settler', 'mats'], returnsTo: 'sump' },
  ],
};

/** A moving bed with hardly more carriers than its feed needs, and nothing else that nitrifies. */
const nearCapacity = (order: string[]): Plan => {
  const plan = withActions(fed(without(stocked(inOrder(order), 80, 120), 'base'), 110), { day: 0, do: 'base', g_d: 60, targetPH: 7.2 });
  return {
    ...plan,
    days: 45,
    start: { ...plan.start, biofilm: 'mature' },
    loop: plan.loop.map((stage): StageSpec =>
      stage.id === 'degas'
        ? { id: 'degas', kind: 'movingBedBiofilter', volume_m3: 0.15, media_m3: 0.03, air_L_min: 40 }
        : stage.id === 'fish'
          ? { ...stage, air_L_min: 60 }
          : stage,
    ),
  };
};

const spilt = (t: Trajectory): number =>
  t.days
    .flatMap(({ events }) => events)
    .filter(({ kind }) => kind === 'spilled')
    .reduce((sum, { amount }) => sum + amount, 0);
const highestNH3 = (t: Trajectory): number => most(course(t, 'fish', 'NH3_mgN_L', 6));

export const LATER_CLAIMS: readonly Claim[] = [
  {
    id: 'cycled-films',
    statement: 'fish put into a loop whose films are bare meet a nitrite peak that a cycled loop spares them',
    right: { ...short, start: { ...short.start, biofilm: 'mature' } },
    wrong: { ...short, start: { ...short.start, biofilm: 'bare' } },
    shown: (t) => most(course(t, 'fish', 'NO2_mgN_L')),
    ratio: 2,
    behind: [/kinetics\.(aob|nob|inoculum)/],
  },
  {
    id: 'air-off-at-night',
    statement: 'a full tank whose air is turned off at night runs short of oxygen before morning',
    right: dense,
    wrong: dark,
    shown: (t) => least(course(t, 'fish', 'O2_mg_L', 2)),
    ratio: 0.5,
    behind: [/kinetics\.(transfer|alpha|surface)/, /tilapia\.(respiration|gain|digestion)/],
  },
  {
    id: 'no-battery',
    statement: 'six hours without power empty a full tank of oxygen; a battery for the air keeps half of it',
    right: { ...withActions(dense, ...cut), backupAir_h: 8 },
    wrong: withActions(dense, ...cut),
    shown: (t) => least(course(t, 'fish', 'O2_mg_L', 14)),
    ratio: 0.5,
    behind: [/kinetics\.(transfer|alpha|surface)/, /tilapia\.(respiration|gain|digestion)/],
  },
  {
    id: 'slug-of-base',
    statement:
      'hydrated lime thrown into the fish tank once a week throws the pH up and sets ammonia free; the same lime as a trickle does not',
    right: withActions(without(short, 'base'), { day: 6, do: 'base', base: 'Ca(OH)2', g_d: 8, targetPH: 7 }),
    wrong: withActions(without(short, 'base'), { every_d: 7, from: 6, hour: 9, do: 'singleDose', stage: 'fish', base: 'Ca(OH)2', g: 56 }),
    shown: highestNH3,
    ratio: 2,
    behind: [/kinetics\.(transfer|alpha)/, /practice\.dosing/],
  },
  {
    id: 'mineralisation-phosphorus',
    statement: 'at lean feed, drained solids that are mineralised give phosphorus back to the bed',
    // Stated threshold: a tenth more phosphorus in the water, since most of it comes from the fish directly.
    right: mineral,
    wrong: lean,
    shown: (t) => meanOf(course(t, 'rafts', 'PO4_mgP_L', 30)),
    ratio: 0.9,
    behind: [/kinetics\.(hydro|fast|slow|anaerobic)/, /practice\.drained/],
  },
  {
    id: 'smothered-biofilter',
    statement: 'a biofilter sized for clear water is smothered by solids that no settler took: ammonia rises',
    right: nearCapacity(['fish', 'settler', 'degas', 'sump', 'pump']),
    wrong: nearCapacity(['fish', 'degas', 'sump', 'pump']),
    shown: (t) => meanOf(course(t, 'fish', 'TAN_mgN_L', 15)),
    ratio: 2,
    behind: [/kinetics\.(smothering|het|aob)/, /devices\.moving/],
  },
  {
    id: 'hot-week',
    statement: 'in a hot week fish fare worse',
    right: open(short, 26),
    wrong: spelled(open(short, 26), 10),
    shown: (t) => Math.max(SLIGHT, 1 - meanOf(inSpell(t, 'welfare'))),
    ratio: 2,
    behind: [/kinetics\.(transfer|alpha)/, /heat\./],
  },
  {
    id: 'cold-week',
    statement: 'in a cold week warm-water fish stop eating',
    right: open(short, 24),
    wrong: spelled(open(short, 24), -8),
    shown: (t) => meanOf(inSpell(t, 'eaten_g_d')),
    ratio: 0.5,
    behind: [/heat\./],
  },
  {
    id: 'small-sump',
    statement: 'a sump too small for what runs down spills when the power fails',
    right: withActions(short, ...cut),
    wrong: withActions(changed(short, { sump: { volume_m3: 0.06 } }), ...cut),
    shown: spilt,
    ratio: 2,
    behind: [/hydraulics\./],
  },
  {
    id: 'more-feed-than-plants',
    statement: 'nitrate piles up where the feed is more than the plants can take',
    right: fed(reference, 40),
    wrong: fed(stocked(reference, 120, 50), 160),
    shown: (t) => course(t, 'rafts', 'NO3_mgN_L').at(-1) ?? 0,
    ratio: 2,
    behind: [/kinetics\.(store|het)/, /lettuce\.(quota|half)/],
  },
];
