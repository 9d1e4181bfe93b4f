// What a water's composition may hold when it comes from outside: keys named like the output columns, with their limits.
import type { z } from 'zod';
import { numberFrom, strict } from './fields';

const mg = (max: number) => numberFrom(0, max, 'mg/L').optional();

/**
 * Limits are physical (oxygen under pure oxygen, brine for the salts), so that a slipped decimal point is caught and an experiment is not.
 */
export const compositionSchema = strict({
  pH: numberFrom(2, 13, '').optional(),
  alkalinity_meq_L: numberFrom(-20, 500, 'meq/L').optional(),
  DIC_mmol_L: numberFrom(0, 500, 'mmol/L').optional(),
  CO2_mg_L: mg(2000),
  O2_mg_L: mg(60),
  TAN_mgN_L: mg(10000),
  NH3_mgN_L: mg(10000),
  NO2_mgN_L: mg(10000),
  NO3_mgN_L: mg(10000),
  PO4_mgP_L: mg(5000),
  K_mg_L: mg(50000),
  Ca_mg_L: mg(50000),
  Mg_mg_L: mg(50000),
  Na_mg_L: mg(50000),
  Cl_mg_L: mg(100000),
  SO4_mgS_L: mg(20000),
  Fe_mg_L: mg(1000),
  sulfide_mgS_L: mg(5000),
  H2S_ug_L: numberFrom(0, 1000000, 'µg/L').optional(),
  CH4_mg_L: mg(100),
  CH4_mgCOD_L: mg(400),
  organics_mgCOD_L: mg(100000),
  solidsCoarse_mg_L: mg(100000),
  solidsFine_mg_L: mg(100000),
  solidsSuperfine_mg_L: mg(100000),
});

/** A composition as it may be written; measured.ts brings it to what the model starts from. */
export type CompositionRead = z.output<typeof compositionSchema>;
