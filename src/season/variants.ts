// Variants of a plan: its parts in other sequences, one part left out, one routine left out; and how a variant is lived. Pure, and the same
// for the same plan. Heights follow the sequence by themselves where the plan gives none.
import { can } from '../catalogue/can';
import { stream } from '../numerics/streams';
import { takesSolids } from './plan';
import type { Action, Plan, StageSpec } from './plan';
import { runSeason } from './season';
import { SeasonError } from './seasonError';
import type { SeasonFault } from './seasonError';
import type { Trajectory } from './trajectory';

/** Sequences that are all played; of more, so many are drawn. */
export const MOST_SEQUENCES = 120;
/** Always the same draw, so that two runs can be laid side by side. */
const SEED = 'sequences';

/** Stages of a loop whose place is a choice: all but the fish tank, the lowest tank and the pump. */
export function movableStages(loop: readonly Pick<StageSpec, 'id' | 'kind'>[]): string[] {
  return loop.filter(({ kind }) => !(['keepsFish', 'lowest', 'pumps'] as const).some((what) => can(kind, what))).map(({ id }) => id);
}

/** How many sequences so many parts can stand in. */
export const possibleSequences = (parts: number): number => (parts < 2 ? 1 : parts * possibleSequences(parts - 1));

/** The order with its parts put one by one into the places where a part stands; all else stays. */
function placed(order: readonly string[], parts: readonly string[], sequence: readonly string[]): string[] {
  const next = sequence.values();
  return order.map((id) => (parts.includes(id) ? (next.next().value ?? id) : id));
}

function* permutations(parts: readonly string[]): Generator<string[]> {
  if (parts.length === 0) yield [];
  for (const first of parts) for (const rest of permutations(parts.filter((id) => id !== first))) yield [first, ...rest];
}

function shuffled(parts: readonly string[], random: () => number): string[] {
  const row = [...parts];
  for (let i = row.length - 1; i > 0; i -= 1) {
    const j = Math.floor(random() * (i + 1));
    [row[i], row[j]] = [row[j], row[i]];
  }
  return row;
}

/**
 * The orders of a loop whose parts change places among themselves: all of them, or a drawn sample where there are more than `most`.
 * The order given stands first.
 * @param order ids of the whole loop
 * @param parts ids of those that may change places
 */
export function sequencesOf(order: readonly string[], parts: readonly string[], most = MOST_SEQUENCES): string[][] {
  const standing = order.filter((id) => parts.includes(id));
  if (possibleSequences(standing.length) <= most) return [...permutations(standing)].map((sequence) => placed(order, standing, sequence));
  const random = stream(SEED, standing.join('/'));
  const drawn = new Map([[standing.join('/'), standing]]);
  while (drawn.size < most) {
    const sequence = shuffled(standing, random);
    drawn.set(sequence.join('/'), sequence);
  }
  return [...drawn.values()].map((sequence) => placed(order, standing, sequence));
}

/** The orders in which two parts have changed places, each pair once. */
export function swapsOf(order: readonly string[], parts: readonly string[]): string[][] {
  const standing = order.filter((id) => parts.includes(id));
  return standing.flatMap((one, i) =>
    standing.slice(i + 1).map((other) => order.map((id) => (id === one ? other : id === other ? one : id))),
  );
}

/** Sequences and swaps, each order once; the order given first. */
export function ordersOf(order: readonly string[], parts: readonly string[], most = MOST_SEQUENCES): string[][] {
  const all = [...sequencesOf(order, parts, most), ...swapsOf(order, parts)];
  return [...new Map(all.map((one) => [one.join('/'), one])).values()];
}

/** The plan with its loop in another order. Ids that the loop lacks are passed over. */
export function inOrder(plan: Plan, order: readonly string[]): Plan {
  return { ...plan, loop: order.flatMap((id) => plan.loop.filter((stage) => stage.id === id)) };
}

/** Whether an action is done to a stage, by name. */
const doneTo = (action: Action, id: string): boolean =>
  ('stage' in action && action.stage === id) || ('tank' in action && action.tank === id);

/** The plan without a stage of its loop and without what is done to it; what stands at the side takes from it no more. */
export function withoutPart(plan: Plan, id: string): Plan {
  return {
    ...plan,
    loop: plan.loop.filter((stage) => stage.id !== id),
    side: plan.side.map((side) => (takesSolids(side) ? { ...side, takes: side.takes.filter((one) => one !== id) } : side)),
    actions: plan.actions.filter((action) => !doneTo(action, id)),
  };
}

/** What is done again and again. */
export const routinesOf = (plan: Pick<Plan, 'actions'>): Action[] => plan.actions.filter((action) => action.every_d !== undefined);

/** The plan without one of its own actions, told by identity: of two alike only the one goes. */
export const withoutAction = (plan: Plan, action: Action): Plan => ({ ...plan, actions: plan.actions.filter((one) => one !== action) });

/** All variants of a plan. Each holds what tells it from the plan. */
export interface Variants {
  sequences: { order: string[]; plan: Plan }[];
  withoutPart: { part: string; plan: Plan }[];
  withoutRoutine: { routine: Action; plan: Plan }[];
}

/** @param parts ids of the stages that change places and are left out one by one; default: all whose place is a choice */
export function variantsOf(plan: Plan, parts: readonly string[] = movableStages(plan.loop), most = MOST_SEQUENCES): Variants {
  const order = plan.loop.map((stage) => stage.id);
  return {
    sequences: ordersOf(order, parts, most).map((one) => ({ order: one, plan: inOrder(plan, one) })),
    withoutPart: order.filter((id) => parts.includes(id)).map((part) => ({ part, plan: withoutPart(plan, part) })),
    withoutRoutine: routinesOf(plan).map((routine) => ({ routine, plan: withoutAction(plan, routine) })),
  };
}

/**
 * Lives a variant to its end, as the page lives a design: a loop in which water cannot flow is lived too, and shows it.
 * @param plantsWeight weight of plants in the harvest; one for all variants of a plan, or their harvests could not be compared
 */
export function liveVariant(plan: Plan, plantsWeight: number): { trajectory: Trajectory } | { fault: SeasonFault } {
  try {
    return { trajectory: runSeason(plan, { plantsWeight }) };
  } catch (failure) {
    if (failure instanceof SeasonError) return { fault: failure.fault };
    throw failure;
  }
}
