// What an action may hold when it comes from outside, deed by deed. Hours are whole; an hour left out is midnight.
import { z } from 'zod';
import { CROPS } from '../catalogue/kinds';
import { SPECIES } from '../catalogue/kinds';
import { BASES } from '../model/processes/dosing';
import { choiceError, exactly, idField, listOf, namesOf, numberFrom, oneOf, strict, wholeFrom, yesNo } from './fields';

/** Meals are given at these hours unless the plan says otherwise. */
export const USUAL_MEALS_H = [8, 12, 16];

const DEEDS = [
  'feed',
  'air',
  'pump',
  'flow',
  'drain',
  'rinse',
  'backwash',
  'base',
  'singleDose',
  'salt',
  'iron',
  'exchange',
  'topUp',
  'heater',
  'light',
  'setting',
  'stock',
  'takeFish',
  'plant',
  'harvest',
  'power',
] as const;

const when = {
  day: wholeFrom(0, 1000, '').optional(),
  every_d: wholeFrom(1, 1000, 'days').optional(),
  from: wholeFrom(0, 1000, '').optional(),
  to: wholeFrom(0, 1000, '').optional(),
  hour: wholeFrom(0, 23, '').default(0),
};
/** Which of a stage's identical units is meant, from 1; left out: all alike. */
const unit = () => wholeFrom(1, 64, '').optional();
const grams = () => numberFrom(0, 100000, 'g');
const gramsADay = () => numberFrom(0, 1000000, 'g/d');
const species = () => oneOf(namesOf(SPECIES));
const base = () => oneOf(BASES);

export const stockingSchema = strict({
  tank: idField(),
  species: species(),
  number: wholeFrom(1, 100000, 'fish'),
  mass_g: numberFrom(0.1, 5000, 'g'),
  day: wholeFrom(0, 1000, '').default(0),
  unit: unit(),
});

export const actionSchema = z.discriminatedUnion(
  'do',
  [
    strict({
      ...when,
      do: exactly('feed'),
      tank: idField(),
      g_d: gramsADay(),
      meals_h: listOf(wholeFrom(0, 23, ''), 1, 24, 'hours').default(USUAL_MEALS_H),
    }),
    strict({ ...when, do: exactly('air'), stage: idField(), L_min: numberFrom(0, 10000, 'L/min') }),
    strict({ ...when, do: exactly('pump'), on: yesNo() }),
    strict({ ...when, do: exactly('flow'), flow_m3_h: numberFrom(0, 1000, 'm³/h') }),
    strict({ ...when, do: exactly('drain'), stage: idField() }),
    strict({ ...when, do: exactly('rinse'), stage: idField() }),
    strict({ ...when, do: exactly('backwash'), stage: idField() }),
    strict({ ...when, do: exactly('base'), g_d: gramsADay(), targetPH: numberFrom(4, 10, '').optional(), base: base().optional() }),
    strict({ ...when, do: exactly('singleDose'), stage: idField(), base: base(), g: grams() }),
    strict({ ...when, do: exactly('salt'), stage: idField(), g: grams() }),
    strict({ ...when, do: exactly('iron'), stage: idField(), g: grams() }),
    strict({ ...when, do: exactly('exchange'), stage: idField(), fraction: numberFrom(0, 1, '') }),
    strict({ ...when, do: exactly('topUp'), stage: idField(), L: numberFrom(0, 1000000, 'L') }),
    strict({
      ...when,
      do: exactly('heater'),
      stage: idField().optional(),
      power_W: numberFrom(0, 1000000, 'W'),
      target_C: numberFrom(0, 40, '°C'),
    }),
    strict({ ...when, do: exactly('light'), stage: idField().optional(), mol_m2_d: numberFrom(0, 80, 'mol/m²/d') }),
    strict({ ...when, do: exactly('setting'), stage: idField(), lamp_W: numberFrom(0, 10000, 'W') }),
    strict({
      ...when,
      do: exactly('stock'),
      tank: idField(),
      species: species(),
      number: wholeFrom(1, 100000, 'fish'),
      mass_g: numberFrom(0.1, 5000, 'g'),
      unit: unit(),
    }),
    strict({ ...when, do: exactly('takeFish'), tank: idField(), number: wholeFrom(1, 100000, 'fish'), unit: unit() }),
    strict({
      ...when,
      do: exactly('plant'),
      stage: idField(),
      crop: oneOf(namesOf(CROPS)),
      plants_m2: numberFrom(0.1, 400, 'plants/m²').default(24),
      replant: yesNo().default(true),
    }),
    strict({ ...when, do: exactly('harvest'), stage: idField() }),
    strict({ ...when, do: exactly('power'), on: yesNo() }),
  ],
  { error: choiceError('do', DEEDS) },
);
