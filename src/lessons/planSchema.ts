// The one schema of a plan: its shape, limits and defaults. What ties its parts together is checked in planChecks.ts.
import { z } from 'zod';
import { MODEL_REVISION, PLAN_FORMAT } from '../season/plan';
import { actionSchema, stockingSchema } from './actionSchema';
import { compositionSchema } from './compositionSchema';
import { editorHint, errorOf, exactly, listOf, numberFrom, oneOf, strict, textField, wholeFrom } from './fields';
import { sideSchema, stageSchema } from './stageSchema';

export const STAGES_MAX = 24;
export const ACTIONS_MAX = 2000;

const airTemperature = strict({
  mean: numberFrom(-30, 50, '°C').default(22),
  daySwing: numberFrom(0, 40, '°C').default(6),
  yearSwing: numberFrom(0, 40, '°C').default(0),
  dayOfYear: wholeFrom(0, 366, '').default(120),
});

const spellSchema = strict({
  day: wholeFrom(0, 1000, ''),
  days: wholeFrom(1, 1000, 'days'),
  air_C: numberFrom(-40, 40, '°C').optional(),
  light: numberFrom(0, 5, '×').optional(),
  from_h: wholeFrom(0, 23, '').optional(),
  to_h: wholeFrom(1, 24, '').optional(),
});

const climateSchema = strict({
  air_C: airTemperature.prefault({}),
  light_mol_m2_d: numberFrom(0, 80, 'mol/m²/d').default(17),
  dayLength_h: numberFrom(0, 24, 'h').default(14),
  weather: numberFrom(0, 1, '').default(0.3),
  water_C: numberFrom(0.5, 42, '°C').optional(),
  spells: listOf(spellSchema, 0, 50, 'spells').optional(),
});

const startSchema = strict({
  water: z.union([exactly('source'), compositionSchema], { error: errorOf({ code: 'sourceOrComposition' }) }).default('source'),
  biofilm: oneOf(['bare', 'seeded', 'mature']).default('bare'),
});

const rigSchema = strict({
  inflow: compositionSchema,
  flow_m3_d: numberFrom(0, 100000, 'm³/d'),
  hold: strict({
    T_C: numberFrom(0.5, 42, '°C').optional(),
    pH: numberFrom(3, 11, '').optional(),
    O2_mg_L: numberFrom(0, 60, 'mg/L').optional(),
  }).optional(),
});

export const planSchema = strict({
  $schema: editorHint(),
  format: exactly(PLAN_FORMAT),
  model: textField(1, 16).default(MODEL_REVISION),
  title: textField(0, 200).default(''),
  seed: textField(0, 64).default('loop'),
  days: wholeFrom(1, 1000, 'days').default(60),
  climate: climateSchema.prefault({}),
  source: compositionSchema.prefault({}),
  start: startSchema.prefault({}),
  loop: listOf(stageSchema, 1, STAGES_MAX, 'stages'),
  side: listOf(sideSchema, 0, 8, 'sideStages').default([]),
  fish: listOf(stockingSchema, 0, 50, 'stockings').default([]),
  actions: listOf(actionSchema, 0, ACTIONS_MAX, 'actions').default([]),
  backupAir_h: wholeFrom(0, 72, 'hours').optional(),
  rig: rigSchema.nullable().default(null),
});

/** A plan as a person may write it: what has a default may be left out. */
export type PlanInput = z.input<typeof planSchema>;

/** A plan with its defaults written out; complete() in readPlan.ts makes it a Plan, and there the compiler holds the one to the other. */
export type PlanRead = z.output<typeof planSchema>;
