// What is done to a loop and when, in words: one line for each action of a plan. Pure.
import type { Action, BaseKind, Deed, Lesson, Plan } from '../../state/common/contract';
import { isWord, say, type WordKey } from '../../../words/say';
import { stageName } from '../../../words/stageNames';
import { figure, massOf, momentOf, withUnit } from '../../../words/units';
import { doses } from '../../state/common/kinds';

const BASES: Readonly<Record<BaseKind, WordKey>> = {
  'Ca(OH)2': 'control.lime',
  KOH: 'control.causticPotash',
  CaCO3: 'control.limestone',
  K2CO3: 'control.potash',
  NaHCO3: 'control.bakingSoda',
  KHCO3: 'control.bicarbonate',
};

const named = (key: string, otherwise: string): string => (isWord(key) ? say(key) : otherwise);

/** A deed without its time. */
export function deedWords(plan: Plan, deed: Deed): string {
  const at = (id: string): string => stageName([...plan.loop, ...plan.side], id);
  switch (deed.do) {
    case 'feed':
      return say('deed.feed', { amount: withUnit('feed_g_d', deed.g_d), stage: at(deed.tank) });
    case 'air':
      return say('deed.air', { amount: withUnit('air_L_min', deed.L_min), stage: at(deed.stage) });
    case 'pump':
      return say(deed.on ? 'deed.pumpOn' : 'deed.pumpOff');
    case 'flow':
      return say('deed.flow', { amount: withUnit('waterPerHour_L_h', 1000 * deed.flow_m3_h) });
    case 'drain':
    case 'rinse':
    case 'backwash':
    case 'harvest':
      return say(`deed.${deed.do}`, { stage: at(deed.stage) });
    case 'base':
      return deed.base === undefined || deed.targetPH === undefined
        ? say('deed.baseOnly', { amount: withUnit('dose_g_d', deed.g_d) })
        : say('deed.base', { base: say(BASES[deed.base]), amount: withUnit('dose_g_d', deed.g_d), pH: withUnit('pH', deed.targetPH) });
    case 'singleDose':
      return say('deed.singleDose', { amount: massOf(deed.g), base: say(BASES[deed.base]), stage: at(deed.stage) });
    case 'salt':
    case 'iron':
      return say(`deed.${deed.do}`, { amount: massOf(deed.g), stage: at(deed.stage) });
    case 'exchange':
      return say('deed.exchange', { percent: figure(100 * deed.fraction, 0), stage: at(deed.stage) });
    case 'topUp':
      return say('deed.topUp', { amount: withUnit('water_L', deed.L), stage: at(deed.stage) });
    case 'heater':
      return say('deed.heater', { power: withUnit('power_W', deed.power_W), temperature: withUnit('T_C', deed.target_C) });
    case 'light':
      return say('deed.light', { amount: withUnit('light_mol_m2_d', deed.mol_m2_d) });
    case 'setting':
      return say('deed.setting', { amount: withUnit('power_W', deed.lamp_W), stage: at(deed.stage) });
    case 'stock':
      return say('deed.stock', {
        n: deed.number,
        species: named(`stock.${deed.species}`, deed.species),
        mass: massOf(deed.mass_g),
        stage: at(deed.tank),
      });
    case 'takeFish':
      return say('deed.takeFish', { n: deed.number, stage: at(deed.tank) });
    case 'plant':
      return say('deed.plant', {
        crop: named(`crop.${deed.crop}`, deed.crop),
        density: withUnit('plants_m2', deed.plants_m2),
        stage: at(deed.stage),
      });
    case 'power':
      return say(deed.on ? 'deed.powerOn' : 'deed.powerOff');
  }
}

/** The first hour at which an action is done. */
function firstHour(action: Action): number {
  return 24 * (action.every_d === undefined ? (action.day ?? action.from ?? 0) : (action.from ?? action.day ?? 0)) + (action.hour ?? 0);
}

/** When an action is done. */
export function whenWords(action: Action): string {
  const first = firstHour(action);
  const { day, clock } = momentOf(first);
  if (action.every_d === undefined) return first === 0 ? say('deed.start') : say('deed.once', { day, hour: clock });
  const { every_d: n, to } = action;
  if (n === 1) return to === undefined ? say('deed.daily', { day }) : say('deed.dailyUntil', { day, to });
  return to === undefined ? say('deed.every', { n, day }) : say('deed.everyUntil', { n, day, to });
}

export interface DeedLine {
  when: string;
  what: string;
}

/** Actions of a plan in the order in which they begin, as far as they were lived. */
export function deedLines(plan: Plan, actions: readonly Action[], lived_h: number): DeedLine[] {
  return [...actions]
    .filter((action) => firstHour(action) <= lived_h)
    .sort((a, b) => firstHour(a) - firstHour(b))
    .map((action) => ({ when: whenWords(action), what: deedWords(plan, action) }));
}

/** The dosing tank's own setting, which no action tells. */
export function doserLine(plan: Plan): DeedLine | null {
  const doser = plan.side.find(doses);
  return doser === undefined || doser.g_d === 0
    ? null
    : { when: say('deed.start'), what: deedWords(plan, { do: 'base', base: doser.base, g_d: doser.g_d, targetPH: doser.targetPH }) };
}

/** Actions of a plan that a person put there, and those that came with the lesson. */
export function ownActions(plan: Plan, lesson: Lesson): { own: Action[]; given: Action[] } {
  const told = lesson.plan.actions.map((action) => JSON.stringify(action));
  return {
    own: plan.actions.filter((action) => !told.includes(JSON.stringify(action))),
    given: plan.actions.filter((action) => told.includes(JSON.stringify(action))),
  };
}
