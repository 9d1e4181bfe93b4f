// What ties a plan's parts together: names that must be unique or must exist, and stages that can do what is asked of them.
import { can } from '../catalogue/can';
import { STAGES } from '../catalogue/kinds';
import { stageType } from '../catalogue/stageTypes';
import type { StageType } from '../model/stages/stageType';
import { doses, takesSolids } from '../season/plan';
import type { Action, Plan, SideSpec, StageSpec } from '../season/plan';
import { RECORDED } from '../catalogue/values';
import type { Expected, Problem } from './problem';
import { describe, PROBLEMS_MAX } from './problems';
import type { Report } from './problems';

export interface CheckOptions {
  /** Parts that may stand in the loop but do not stand there yet; they may be named, and the loop may be incomplete. */
  shelf?: readonly StageSpec[];
}

type Kind = StageSpec['kind'] | SideSpec['kind'];
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
// A litre: below it, a vessel belongs on a bench.
const SMALLEST_m3 = 0.001;

const canBeRinsed = (part: Part): boolean => RINSED.includes(part.kind) || (part.media_m3 ?? 0) > 0;

/** All problems found, at most PROBLEMS_MAX; none means the plan can be run. */
export function checkPlan(plan: Plan, options: CheckOptions = {}): Problem[] {
  const problems: Problem[] = [];
  const report: Report = (path, got, expected, found = describe(got)) => {
    problems.push({ path, got: found, expected });
  };
  const shelf = options.shelf ?? [];
  const parts = new Map<string, Part>();
  checkNames(plan, shelf, parts, report);
  checkLoop(plan, shelf.length > 0, report);
  checkSides(plan.side, parts, report);
  plan.fish.forEach((stocking, index) => {
    needs(parts, `fish[${index}].tank`, stocking.tank, { code: 'fishTankOfLoop' }, (part) => can(part.kind, 'keepsFish'), report);
  });
  plan.actions.forEach((action, index) => {
    checkWhen(action, `actions[${index}]`, report);
    checkDeed(action, `actions[${index}]`, plan, parts, report);
  });
  return problems.slice(0, PROBLEMS_MAX);
}

function checkNames(plan: Plan, shelf: readonly StageSpec[], parts: Map<string, Part>, report: Report): void {
  const add = (part: Part, path: string): void => {
    if (parts.has(part.id)) report(path, part.id, { code: 'ownName' });
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
    if ((stage.media_m3 ?? 0) > tank) report(`loop[${index}].media_m3`, stage.media_m3, { code: 'mediaThatFit', m3: tank });
    if (plan.rig !== null || type.volume({ ...type.defaults, ...stage, count: 1 }, RECORDED) >= SMALLEST_m3) return;
    const size = (['volume_m3', 'area_m2', 'media_m3'] as const).find((key) => stage[key] !== undefined) ?? 'volume_m3';
    report(`loop[${index}].${size}`, stage[size], { code: 'roomFor', m3: SMALLEST_m3 });
  });
  if (plan.rig !== null) {
    if (plan.loop.every((stage) => HOLDS_NO_WATER.includes(stage.kind))) report('loop', plan.loop, { code: 'stageWithWater' });
    return;
  }
  plan.loop.forEach((stage, index) => {
    if (can(stage.kind, 'takesSolids')) report(`loop[${index}].kind`, stage.kind, { code: 'wholeFlow' });
  });
  const keepsFish = plan.loop.map((stage) => can(stage.kind, 'keepsFish'));
  if (!keepsFish[0]) report('loop[0].kind', plan.loop[0]?.kind, { code: 'beginsAtFishTank' });
  plan.loop.forEach((stage, index) => {
    if (keepsFish[index] && index > 0 && keepsFish[0]) report(`loop[${index}].kind`, stage.kind, { code: 'oneFishTank' });
  });
  const pumps = plan.loop.flatMap((stage, index) => (can(stage.kind, 'pumps') ? [index] : []));
  pumps.slice(1).forEach((index) => report(`loop[${index}].kind`, plan.loop[index]?.kind, { code: 'onePump' }));
  if (pumps.length === 0) report('loop', plan.loop, { code: open ? 'pumpFixed' : 'pump' });
}

/** Reports a named stage that is missing or of a kind that cannot do what is asked. */
function needs(parts: Map<string, Part>, path: string, id: string, wanted: Expected, able: (part: Part) => boolean, report: Report): void {
  const part = parts.get(id);
  if (part === undefined) report(path, id, { code: 'missing', wanted, there: [...parts.keys()] });
  else if (!able(part)) report(path, id, wanted, { code: 'stageOfKind', stage: id, kind: part.kind });
}

function checkSides(sides: readonly SideSpec[], parts: Map<string, Part>, report: Report): void {
  const inLoop = (part: Part): boolean => !HOLDS_NO_WATER.includes(part.kind) && !can(part.kind, 'takesSolids');
  sides.forEach((side, index) => {
    if (doses(side)) {
      needs(parts, `side[${index}].into`, side.into, { code: 'tankOfLoop' }, inLoop, report);
      if (sides.findIndex(doses) < index) report(`side[${index}].kind`, side.kind, { code: 'oneDosing' });
      return;
    }
    if (sides.findIndex(takesSolids) < index) report(`side[${index}].kind`, side.kind, { code: 'oneMineralisation' });
    side.takes.forEach((id, at) => {
      needs(
        parts,
        `side[${index}].takes[${at}]`,
        id,
        { code: 'givesSludge', kinds: GIVES_SLUDGE },
        (part) => GIVES_SLUDGE.includes(part.kind),
        report,
      );
    });
    needs(parts, `side[${index}].returnsTo`, side.returnsTo, { code: 'tankOfLoop' }, inLoop, report);
  });
}

function checkWhen(action: Action, path: string, report: Report): void {
  if (action.every_d === undefined) {
    if (action.day === undefined) report(`${path}.day`, undefined, { code: 'dayOrEvery' });
    if (action.from !== undefined) report(`${path}.from`, action.from, { code: 'fromWithEvery' });
    if (action.to !== undefined) report(`${path}.to`, action.to, { code: 'toWithEvery' });
    return;
  }
  if (action.day !== undefined) report(`${path}.day`, action.day, { code: 'dayNorEvery' });
  if (action.to !== undefined && action.to < (action.from ?? 0))
    report(`${path}.to`, action.to, { code: 'notBefore', day: action.from ?? 0 });
}

function checkDeed(action: Action, path: string, plan: Plan, parts: Map<string, Part>, report: Report): void {
  const stage = (id: string, wanted: Expected, able: (part: Part) => boolean): void =>
    needs(parts, `${path}.stage`, id, wanted, able, report);
  switch (action.do) {
    case 'feed':
    case 'stock':
    case 'takeFish':
      needs(parts, `${path}.tank`, action.tank, { code: 'fishTankOfLoop' }, (part) => can(part.kind, 'keepsFish'), report);
      break;
    case 'drain':
      stage(action.stage, { code: 'drained', kinds: DRAINED }, (part) => DRAINED.includes(part.kind));
      break;
    case 'rinse':
      stage(action.stage, { code: 'rinsed', kinds: RINSED }, canBeRinsed);
      break;
    case 'backwash':
      stage(action.stage, { code: 'backwashed', kinds: BACKWASHED }, (part) => BACKWASHED.includes(part.kind));
      break;
    case 'setting':
      stage(action.stage, { code: 'lit', kinds: LIT }, (part) => LIT.includes(part.kind));
      break;
    case 'plant':
    case 'harvest':
      stage(action.stage, { code: 'bed', kinds: GROWS }, (part) => GROWS.includes(part.kind));
      break;
    case 'air':
    case 'salt':
    case 'iron':
    case 'exchange':
    case 'topUp':
    case 'singleDose':
      stage(action.stage, { code: 'holdsWater' }, (part) => !HOLDS_NO_WATER.includes(part.kind));
      break;
    case 'pump':
    case 'flow':
      if (!plan.loop.some((part) => can(part.kind, 'pumps'))) report(`${path}.do`, action.do, { code: 'pumpToActOn' });
      break;
    case 'base':
      if (!plan.side.some(doses)) report(`${path}.do`, action.do, { code: 'dosingToActOn' });
      break;
    case 'heater':
      if (action.stage !== undefined) stage(action.stage, { code: 'holdsWater' }, (part) => !HOLDS_NO_WATER.includes(part.kind));
      break;
    case 'light':
      if (action.stage !== undefined) stage(action.stage, { code: 'bed', kinds: GROWS }, (part) => GROWS.includes(part.kind));
      break;
    case 'power':
      break;
  }
}
