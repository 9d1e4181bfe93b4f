// What ties a plan's parts together: names that must be unique or must exist, and stages that can do what is asked of them.
import { can } from '../catalogue/can';
import { STAGES } from '../catalogue/kinds';
import { stageType } from '../catalogue/stageTypes';
import type { StageType } from '../model/stages/stageType';
import { doses, takesSolids } from '../season/plan';
import type { Action, Plan, SideSpec, StageSpec } from '../season/plan';
import type { Problem } from './lesson';
import { RECORDED } from '../catalogue/values';
import { describe, PROBLEMS_MAX } from './problems';

export interface CheckOptions {
  /** Parts that may stand in the loop but do not stand there yet; they may be named, and the loop may be incomplete. */
  shelf?: readonly StageSpec[];
}

type Kind = StageSpec['kind'] | SideSpec['kind'];
type Report = (path: string, got: unknown, expected: string) => void;
type Part = { id: string; kind: Kind; media_m3?: number };

const kindsThat = (does: (type: StageType) => boolean): readonly string[] => STAGES.filter(does).map(({ kind }) => kind);

/** Sludge can be let out of these. */
const DRAINED = kindsThat((type) => type.drains === true);
/** What these let out can go on to mineralisation. */
const GIVES_SLUDGE = kindsThat((type) => !type.takesSolids && (type.drains === true || type.cleanedBy !== undefined));
const RINSED = kindsThat((type) => type.cleanedBy?.deed === 'rinse');
const BACKWASHED = kindsThat((type) => type.cleanedBy?.deed === 'backwash');
const LIT = kindsThat((type) => type.controls.includes('lamp'));
const GROWS = kindsThat((type) => type.grows === true);
const HOLDS_NO_WATER = kindsThat((type) => type.cells === 0);
/** Names of the kinds that messages speak of: where a loop begins, what lifts its water, what stands at its side. */
const FISH_TANKS = kindsThat((type) => type.keepsFish === true).join(', ');
const PUMPS = kindsThat((type) => type.pumps === true).join(', ');
const DOSING = kindsThat((type) => type.doses === true).join(', ');
// A litre: below it, a vessel belongs on a bench.
const SMALLEST_m3 = 0.001;

const canBeRinsed = (part: Part): boolean => RINSED.includes(part.kind) || (part.media_m3 ?? 0) > 0;

/** All problems found, at most PROBLEMS_MAX; none means the plan can be run. */
export function checkPlan(plan: Plan, options: CheckOptions = {}): Problem[] {
  const problems: Problem[] = [];
  const report: Report = (path, got, expected) => {
    problems.push({ path, got: describe(got), expected });
  };
  const shelf = options.shelf ?? [];
  const parts = new Map<string, Part>();
  checkNames(plan, shelf, parts, report);
  checkLoop(plan, shelf.length > 0, report);
  checkSides(plan.side, parts, report);
  plan.fish.forEach((stocking, index) => {
    needs(parts, `fish[${index}].tank`, stocking.tank, 'a fish tank of the loop', (part) => can(part.kind, 'keepsFish'), report);
  });
  plan.actions.forEach((action, index) => {
    checkWhen(action, `actions[${index}]`, report);
    checkDeed(action, `actions[${index}]`, plan, parts, report);
  });
  return problems.slice(0, PROBLEMS_MAX);
}

function checkNames(plan: Plan, shelf: readonly StageSpec[], parts: Map<string, Part>, report: Report): void {
  const add = (part: Part, path: string): void => {
    if (parts.has(part.id)) report(path, part.id, 'a name no other stage has');
    else parts.set(part.id, part);
  };
  plan.loop.forEach((stage, index) => add(stage, `loop[${index}].id`));
  plan.side.forEach((stage, index) => add(stage, `side[${index}].id`));
  shelf.forEach((stage, index) => add(stage, `shelf[${index}].id`));
}

function checkLoop(plan: Plan, open: boolean, report: Report): void {
  plan.loop.forEach((stage, index) => {
    const type = stageType(stage.kind);
    if (type.cells === 0) return;
    const tank = stage.volume_m3 ?? (stage.depth_m === undefined ? Infinity : (stage.area_m2 ?? 0) * stage.depth_m);
    if ((stage.media_m3 ?? 0) > tank) report(`loop[${index}].media_m3`, stage.media_m3, `no more media than the ${tank} m³ of its tank`);
    if (plan.rig !== null || type.volume({ ...type.defaults, ...stage, count: 1 }, RECORDED) >= SMALLEST_m3) return;
    const size = (['volume_m3', 'area_m2', 'media_m3'] as const).find((key) => stage[key] !== undefined) ?? 'volume_m3';
    report(`loop[${index}].${size}`, stage[size], `room for at least ${SMALLEST_m3} m³ of water outside a rig`);
  });
  if (plan.rig !== null) {
    if (plan.loop.every((stage) => HOLDS_NO_WATER.includes(stage.kind))) report('loop', plan.loop, 'at least one stage that holds water');
    return;
  }
  plan.loop.forEach((stage, index) => {
    if (can(stage.kind, 'takesSolids')) report(`loop[${index}].kind`, stage.kind, `a stage the whole flow passes; a ${stage.kind} stands at the side (side), or alone in a rig`);
  });
  const keepsFish = plan.loop.map((stage) => can(stage.kind, 'keepsFish'));
  if (!keepsFish[0]) report('loop[0].kind', plan.loop[0]?.kind, `${FISH_TANKS}: a loop begins at its fish tank`);
  plan.loop.forEach((stage, index) => {
    if (keepsFish[index] && index > 0 && keepsFish[0]) report(`loop[${index}].kind`, stage.kind, 'one fish tank only (identical units are given by count)');
  });
  const pumps = plan.loop.flatMap((stage, index) => (can(stage.kind, 'pumps') ? [index] : []));
  pumps.slice(1).forEach((index) => report(`loop[${index}].kind`, plan.loop[index]?.kind, 'one return pump only'));
  if (pumps.length === 0) report('loop', plan.loop, open ? `a ${PUMPS} among the fixed stages` : `a ${PUMPS}: the water must be lifted back to the fish tank`);
}

/** Reports a named stage that is missing or of a kind that cannot do what is asked. */
function needs(parts: Map<string, Part>, path: string, id: string, what: string, able: (part: Part) => boolean, report: Report): void {
  const part = parts.get(id);
  if (part === undefined) report(path, id, `${what}; no stage has this name (there are ${[...parts.keys()].join(', ')})`);
  else if (!able(part)) report(path, `${id} (${part.kind})`, what);
}

function checkSides(sides: readonly SideSpec[], parts: Map<string, Part>, report: Report): void {
  const inLoop = (part: Part): boolean => !HOLDS_NO_WATER.includes(part.kind) && !can(part.kind, 'takesSolids');
  sides.forEach((side, index) => {
    if (doses(side)) {
      needs(parts, `side[${index}].into`, side.into, 'a tank of the loop', inLoop, report);
      if (sides.findIndex(doses) < index) report(`side[${index}].kind`, side.kind, `one ${side.kind} only`);
      return;
    }
    if (sides.findIndex(takesSolids) < index) report(`side[${index}].kind`, side.kind, `one ${side.kind} only`);
    side.takes.forEach((id, at) => needs(parts, `side[${index}].takes[${at}]`, id, `a stage that lets out sludge (${GIVES_SLUDGE.join(', ')})`, (part) => GIVES_SLUDGE.includes(part.kind), report));
    needs(parts, `side[${index}].returnsTo`, side.returnsTo, 'a tank of the loop', inLoop, report);
  });
}

function checkWhen(action: Action, path: string, report: Report): void {
  if (action.every_d === undefined) {
    if (action.day === undefined) report(`${path}.day`, undefined, 'a day, or every_d for something done again and again');
    if (action.from !== undefined) report(`${path}.from`, action.from, 'from only together with every_d');
    if (action.to !== undefined) report(`${path}.to`, action.to, 'to only together with every_d');
    return;
  }
  if (action.day !== undefined) report(`${path}.day`, action.day, 'either a day or every_d, not both');
  if (action.to !== undefined && action.to < (action.from ?? 0)) report(`${path}.to`, action.to, `no day before ${action.from ?? 0}, where it begins`);
}

function checkDeed(action: Action, path: string, plan: Plan, parts: Map<string, Part>, report: Report): void {
  const stage = (id: string, what: string, able: (part: Part) => boolean): void => needs(parts, `${path}.stage`, id, what, able, report);
  switch (action.do) {
    case 'feed': case 'stock': case 'takeFish':
      needs(parts, `${path}.tank`, action.tank, 'a fish tank of the loop', (part) => can(part.kind, 'keepsFish'), report);
      break;
    case 'drain':
      stage(action.stage, `a stage that can be drained (${DRAINED.join(', ')})`, (part) => DRAINED.includes(part.kind));
      break;
    case 'rinse':
      stage(action.stage, `a stage that can be rinsed (${RINSED.join(', ')}, or a tank with media)`, canBeRinsed);
      break;
    case 'backwash':
      stage(action.stage, `a stage that can be backwashed (${BACKWASHED.join(', ')})`, (part) => BACKWASHED.includes(part.kind));
      break;
    case 'setting':
      stage(action.stage, `a stage with a lamp (${LIT.join(', ')})`, (part) => LIT.includes(part.kind));
      break;
    case 'plant': case 'harvest':
      stage(action.stage, `a bed (${GROWS.join(', ')})`, (part) => GROWS.includes(part.kind));
      break;
    case 'air': case 'salt': case 'iron': case 'exchange': case 'topUp': case 'singleDose':
      stage(action.stage, 'a tank that holds water', (part) => !HOLDS_NO_WATER.includes(part.kind));
      break;
    case 'pump': case 'flow':
      if (!plan.loop.some((part) => can(part.kind, 'pumps'))) report(`${path}.do`, action.do, `a ${PUMPS} in the loop to act on`);
      break;
    case 'base':
      if (!plan.side.some(doses)) report(`${path}.do`, action.do, `a ${DOSING} among the side stages to act on`);
      break;
    case 'power': case 'heater': case 'light':
      break;
  }
}
