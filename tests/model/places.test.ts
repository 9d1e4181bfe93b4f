// The numbers written out in network/places.ts against what they stand for.
import { describe, expect, it } from 'vitest';
import { ALK, IC, NO2, NO3, O2, S2, SS, STATES, TAN } from '../../src/model/components';
import { ORDER, placeInBlock } from '../../src/model/network/fastBlock';
import * as places from '../../src/model/network/places';
import { ID, SLOTS } from '../../src/model/processes/catalogue';
import type { ProcessName } from '../../src/model/processes/catalogue';
import { DEFINITIONS } from '../../src/model/processes/definitions';

const COLUMNS: Readonly<Partial<Record<keyof typeof places, ProcessName>>> = {
  A: 'nitritation', N: 'nitriteOxidation', H: 'heterotrophsAerobic', D: 'heterotrophsAnoxic', G: 'sloughHeterotrophs', L: 'lysisHeterotrophs', S: 'sulfideOxidation', M: 'methaneOxidation',
  QUICK: 'hydrolysisCoarseFast', TOUGH: 'hydrolysisCoarseSlow', CAUGHT_QUICK: 'hydrolysisCaughtFast', CAUGHT_TOUGH: 'hydrolysisCaughtSlow', BED_QUICK: 'hydrolysisSludgeFast', BED_TOUGH: 'hydrolysisSludgeSlow',
  BA_O: 'sludgeAerobic', BA_N: 'sludgeAnoxic', BA_S: 'sludgeSulfate', BA_M: 'sludgeMethane', BA_G: 'sludgeMethaneGas', PS_O: 'poreSulfideByOxygen', PS_N: 'poreSulfideByNitrate', NH3: 'ammoniaTransfer', EAT: 'fishGrowth', SPEND: 'fishExpenditure', BURN: 'fishBasal',
  UN: 'uptakeNitrate', UT: 'uptakeAmmonium', UP: 'uptakePhosphate', UK: 'uptakePotassium', UC: 'uptakeCalcium', GROW: 'leafGrowth', CLUMP_QUICK: 'clumpDenitrificationFast', CLUMP_TOUGH: 'clumpDenitrificationSlow',
};

/** A process and the component that its derivative is to. */
const DERIVATIVES: Readonly<Partial<Record<keyof typeof places, readonly [ProcessName, number]>>> = {
  A_TAN: ['nitritation', TAN], A_O2: ['nitritation', O2], N_NO2: ['nitriteOxidation', NO2], N_O2: ['nitriteOxidation', O2],
  H_SS: ['heterotrophsAerobic', SS], H_O2: ['heterotrophsAerobic', O2], H_TAN: ['heterotrophsAerobic', TAN],
  D_SS: ['heterotrophsAnoxic', SS], D_NO3: ['heterotrophsAnoxic', NO3], D_TAN: ['heterotrophsAnoxic', TAN], S_S2: ['sulfideOxidation', S2], S_O2: ['sulfideOxidation', O2],
  AIR_O2: ['oxygenTransfer', O2], AIR_IC: ['carbonDioxideTransfer', IC], AIR_ALK: ['carbonDioxideTransfer', ALK], AIR_S2: ['hydrogenSulfideTransfer', S2], AIR_TAN: ['ammoniaTransfer', TAN],
  UN_NO3: ['uptakeNitrate', NO3], UT_TAN: ['uptakeAmmonium', TAN],
};

/** Processes solved alone, and the slots of what films let go. */
const SLOTTED: Readonly<Partial<Record<keyof typeof places, readonly [ProcessName, number]>>> = {
  A_SCARCE: ['sloughAmmoniaOxidisers', 0], A_SLOUGH: ['sloughAmmoniaOxidisers', 1], A_STIFLED: ['sloughAmmoniaOxidisers', 2], A_LYSIS: ['lysisAmmoniaOxidisers', 1],
  N_SCARCE: ['sloughNitriteOxidisers', 0], N_SLOUGH: ['sloughNitriteOxidisers', 1], N_STIFLED: ['sloughNitriteOxidisers', 2], N_LYSIS: ['lysisNitriteOxidisers', 1],
  H_SCARCE: ['sloughHeterotrophs', 0], H_SLOUGH: ['sloughHeterotrophs', 1], H_STIFLED: ['sloughHeterotrophs', 2], H_LYSIS: ['lysisHeterotrophs', 1],
  BURNT_CH4: ['methaneOxidation', 0], AIR_CH4: ['methaneTransfer', 0], AIR_N2: ['nitrogenTransfer', 0], DECAY_OP: ['freeBacteriaDecay', 0], KILL_OP: ['freeBacteriaKill', 0],
  GUT_EAT: ['fishGrowth', 0], GUT_SPEND: ['fishExpenditure', 0],
  UP_P: ['uptakePhosphate', 0], UK_K: ['uptakePotassium', 0], UC_CA: ['uptakeCalcium', 0], UF_FE: ['uptakeIron', 0],
  BED_O: ['sludgeAerobic', 0], BED_N: ['sludgeAnoxic', 0], BED_S: ['sludgeSulfate', 0], BED_M: ['sludgeMethane', 0], BED_G: ['sludgeMethaneGas', 0], BED_LEAK: ['sludgeLeak', 0],
  PS_UP: ['poreSulfideDiffusion', 0], PS_BY_O: ['poreSulfideByOxygen', 0], PS_BY_N: ['poreSulfideByNitrate', 0], PS_GAS: ['poreSulfideGas', 0], PS_OUT: ['poreSulfideGasOut', 0],
};

const ROWS: Readonly<Partial<Record<keyof typeof places, number>>> = { oxygen: O2, ammonia: TAN, nitrite: NO2, nitrate: NO3, sulfide: S2, organics: SS, alkalinity: ALK, carbon: IC };
const WIDTHS = ['WIDTH', 'BLOCK', 'CORE', 'ALK_ROW', 'IC_ROW', 'FACTORS', 'ALK_INVERSE', 'IC_INVERSE'];

describe('places written out', () => {
  it('are where the columns of the table begin', () => {
    for (const [name, process] of Object.entries(COLUMNS)) expect(places[name as keyof typeof places], name).toBe(ID[process] * STATES);
  });

  it('are where kept derivatives stand', () => {
    for (const [name, [process, component]] of Object.entries(DERIVATIVES)) {
      const slot = (DEFINITIONS[ID[process]].fast ?? []).indexOf(component);
      expect(slot, name).toBeGreaterThanOrEqual(0);
      expect(places[name as keyof typeof places], name).toBe(ID[process] * SLOTS + slot);
    }
    for (const [name, [process, slot]] of Object.entries(SLOTTED)) expect(places[name as keyof typeof places], name).toBe(ID[process] * SLOTS + slot);
  });

  it('are the rows and the widths of a dense block', () => {
    for (const [name, component] of Object.entries(ROWS)) expect(places[name as keyof typeof places], name).toBe(component === ALK || component === IC ? ORDER.indexOf(component) * places.WIDTH : placeInBlock(component, O2));
    expect(places.WIDTH).toBe(ORDER.length);
    expect(places.BLOCK).toBe(ORDER.length ** 2);
    expect([places.ALK_ROW, places.IC_ROW]).toEqual([places.alkalinity, places.carbon]);
    expect(places.CORE).toBe(ORDER.indexOf(ALK));
    expect([places.ALK_INVERSE, places.IC_INVERSE, places.FACTORS]).toEqual([0, 1, 2].map((beyond) => places.CORE ** 2 + beyond));
  });

  it('are all checked here', () => {
    const checked = new Set([...Object.keys(COLUMNS), ...Object.keys(DERIVATIVES), ...Object.keys(SLOTTED), ...Object.keys(ROWS), ...WIDTHS]);
    expect(Object.keys(places).filter((name) => !checked.has(name))).toEqual([]);
  });
});
