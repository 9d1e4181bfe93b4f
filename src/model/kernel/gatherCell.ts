// A cell's part of W, gathered from the kept derivatives: whole columns times derivatives.
// Written by `npm run kernels` from the tables of components and processes: never edited, stale copies fail a test.
import type { Cell } from '../cell';
import { KEPT, TABLE } from '../processes/catalogue';

/**
 * Writes what stands on the diagonals of components solved alone to `own` from `oo`, entries of the dense block to `w` from `wo`.
 * @param v 1/volume @param outflow 1/d that water carries off
 * @param m the matrix's table @param g kept derivatives, the cell's from `go`
 */
export function gatherCell(cell: Cell, v: number, outflow: number, m: Float64Array, g: Float64Array, go: number, own: Float64Array,
  oo: number, w: Float64Array, wo: number): void {
  // CH4
  own[oo + 0] = outflow + g[go + KEPT.methaneOxidation_CH4] + g[go + KEPT.methaneTransfer_CH4];
  // N2
  own[oo + 1] = outflow + g[go + KEPT.nitrogenTransfer_N2];
  // P
  own[oo + 2] = outflow - m[TABLE.sloughAmmoniaOxidisers_P] * (g[go + KEPT.sloughAmmoniaOxidisers_P]
    + g[go + KEPT.sloughNitriteOxidisers_P] + g[go + KEPT.sloughHeterotrophs_P]);
  if (cell.bed) own[oo + 2] += g[go + KEPT.uptakePhosphate_P];
  // K
  own[oo + 3] = outflow;
  if (cell.bed) own[oo + 3] += g[go + KEPT.uptakePotassium_K];
  // CA
  own[oo + 4] = outflow;
  if (cell.bed) own[oo + 4] += g[go + KEPT.uptakeCalcium_CA];
  // FE
  own[oo + 5] = outflow;
  if (cell.bed) own[oo + 5] += g[go + KEPT.uptakeIron_FE];
  // OP
  own[oo + 6] = outflow + g[go + KEPT.freeBacteriaDecay_OP];
  if (cell.kill > 0) own[oo + 6] += g[go + KEPT.freeBacteriaKill_OP];
  // CF, CS, CI
  own[oo + 7] = outflow + cell.settle0 * v + cell.catch0 * v + cell.shear;
  // FF, FS, FI
  own[oo + 8] = outflow + cell.settle1 * v + cell.catch1 * v;
  // UF, US, UI
  own[oo + 9] = outflow + cell.settle2 * v + cell.catch2 * v;
  // PO
  own[oo + 10] = 0;
  if (cell.bedThickness > 0) own[oo + 10] += g[go + KEPT.sludgeAerobic_PO] + g[go + KEPT.sludgeAnoxic_PO] + g[go + KEPT.sludgeSulfate_PO]
    + g[go + KEPT.sludgeMethane_PO] + g[go + KEPT.sludgeMethaneGas_PO] + g[go + KEPT.sludgeLeak_PO];
  // PS
  own[oo + 11] = 0;
  if (cell.bedThickness > 0) own[oo + 11] += g[go + KEPT.poreSulfideDiffusion_PS] + g[go + KEPT.poreSulfideByOxygen_PS]
    + g[go + KEPT.poreSulfideByNitrate_PS] + g[go + KEPT.poreSulfideGas_PS] + g[go + KEPT.poreSulfideGasOut_PS];
  // GUT
  own[oo + 12] = 0;
  if (cell.fish) own[oo + 12] += g[go + KEPT.fishGrowth_GUT] + g[go + KEPT.fishExpenditure_GUT];
  // What is followed, with what follows it.
  const sloughAmmoniaOxidisers_share = g[go + KEPT.sloughAmmoniaOxidisers_share],
    lysisAmmoniaOxidisers_share = g[go + KEPT.lysisAmmoniaOxidisers_share],
    sloughNitriteOxidisers_share = g[go + KEPT.sloughNitriteOxidisers_share],
    lysisNitriteOxidisers_share = g[go + KEPT.lysisNitriteOxidisers_share],
    sloughHeterotrophs_share = g[go + KEPT.sloughHeterotrophs_share], lysisHeterotrophs_share = g[go + KEPT.lysisHeterotrophs_share];
  const nitritation_TAN = m[TABLE.nitritation_TAN] + m[TABLE.sloughAmmoniaOxidisers_TAN] * sloughAmmoniaOxidisers_share
    + m[TABLE.lysisAmmoniaOxidisers_TAN] * lysisAmmoniaOxidisers_share;
  const nitritation_IC = m[TABLE.nitritation_IC] + m[TABLE.sloughAmmoniaOxidisers_IC] * sloughAmmoniaOxidisers_share
    + m[TABLE.lysisAmmoniaOxidisers_IC] * lysisAmmoniaOxidisers_share;
  const nitritation_ALK = m[TABLE.nitritation_ALK] + m[TABLE.sloughAmmoniaOxidisers_ALK] * sloughAmmoniaOxidisers_share
    + m[TABLE.lysisAmmoniaOxidisers_ALK] * lysisAmmoniaOxidisers_share;
  const nitriteOxidation_TAN = m[TABLE.sloughAmmoniaOxidisers_TAN] * sloughNitriteOxidisers_share
    + m[TABLE.lysisAmmoniaOxidisers_TAN] * lysisNitriteOxidisers_share;
  const nitriteOxidation_IC = m[TABLE.nitriteOxidation_IC] + m[TABLE.sloughAmmoniaOxidisers_IC] * sloughNitriteOxidisers_share
    + m[TABLE.lysisAmmoniaOxidisers_IC] * lysisNitriteOxidisers_share;
  const nitriteOxidation_ALK = m[TABLE.nitriteOxidation_ALK] + m[TABLE.sloughAmmoniaOxidisers_ALK] * sloughNitriteOxidisers_share
    + m[TABLE.lysisAmmoniaOxidisers_ALK] * lysisNitriteOxidisers_share;
  const sloughHeterotrophs_TAN = m[TABLE.sloughAmmoniaOxidisers_TAN] * sloughHeterotrophs_share
    + m[TABLE.lysisAmmoniaOxidisers_TAN] * lysisHeterotrophs_share;
  const heterotrophsAerobic_TAN = m[TABLE.heterotrophsAerobic_TAN] + sloughHeterotrophs_TAN;
  const sloughHeterotrophs_IC = m[TABLE.sloughAmmoniaOxidisers_IC] * sloughHeterotrophs_share
    + m[TABLE.lysisAmmoniaOxidisers_IC] * lysisHeterotrophs_share;
  const heterotrophsAerobic_IC = m[TABLE.heterotrophsAerobic_IC] + sloughHeterotrophs_IC;
  const sloughHeterotrophs_ALK = m[TABLE.sloughAmmoniaOxidisers_ALK] * sloughHeterotrophs_share
    + m[TABLE.lysisAmmoniaOxidisers_ALK] * lysisHeterotrophs_share;
  const heterotrophsAerobic_ALK = m[TABLE.heterotrophsAerobic_ALK] + sloughHeterotrophs_ALK;
  const heterotrophsAerobic_SS = lysisHeterotrophs_share - 1;
  const heterotrophsAnoxic_TAN = m[TABLE.heterotrophsAnoxic_TAN] + sloughHeterotrophs_TAN;
  const heterotrophsAnoxic_IC = m[TABLE.heterotrophsAnoxic_IC] + sloughHeterotrophs_IC;
  const heterotrophsAnoxic_ALK = m[TABLE.heterotrophsAnoxic_ALK] + sloughHeterotrophs_ALK;
  // answers to O2
  {
    const nitritation = g[go + KEPT.nitritation_O2], nitriteOxidation = g[go + KEPT.nitriteOxidation_O2],
      heterotrophsAerobic = g[go + KEPT.heterotrophsAerobic_O2], sloughAmmoniaOxidisers = g[go + KEPT.sloughAmmoniaOxidisers_O2],
      sloughNitriteOxidisers = g[go + KEPT.sloughNitriteOxidisers_O2], sloughHeterotrophs = g[go + KEPT.sloughHeterotrophs_O2],
      sulfideOxidation = g[go + KEPT.sulfideOxidation_O2], oxygenTransfer = g[go + KEPT.oxygenTransfer_O2];
    const sloughAll = sloughAmmoniaOxidisers + sloughNitriteOxidisers + sloughHeterotrophs;
    w[wo + 0] = m[TABLE.nitritation_O2] * nitritation + m[TABLE.nitriteOxidation_O2] * nitriteOxidation
      + m[TABLE.heterotrophsAerobic_O2] * heterotrophsAerobic + oxygenTransfer - 1.9961322520274485 * sulfideOxidation;
    w[wo + 5] = nitritation_TAN * nitritation + nitriteOxidation_TAN * nitriteOxidation + heterotrophsAerobic_TAN * heterotrophsAerobic
      + m[TABLE.sloughAmmoniaOxidisers_TAN] * sloughAll - m[TABLE.lysisAmmoniaOxidisers_TAN] * sloughAll;
    w[wo + 10] = nitritation + m[TABLE.nitriteOxidation_NO2] * nitriteOxidation;
    w[wo + 13] = nitriteOxidation;
    w[wo + 18] = nitritation_IC * nitritation + nitriteOxidation_IC * nitriteOxidation + heterotrophsAerobic_IC * heterotrophsAerobic
      + m[TABLE.sloughAmmoniaOxidisers_IC] * sloughAll - m[TABLE.lysisAmmoniaOxidisers_IC] * sloughAll;
    w[wo + 25] = nitritation_ALK * nitritation + nitriteOxidation_ALK * nitriteOxidation + heterotrophsAerobic_ALK * heterotrophsAerobic
      + m[TABLE.sloughAmmoniaOxidisers_ALK] * sloughAll - m[TABLE.lysisAmmoniaOxidisers_ALK] * sloughAll
      - 0.06238303181534622 * sulfideOxidation;
    w[wo + 32] = -sulfideOxidation;
    w[wo + 34] = lysisAmmoniaOxidisers_share * nitritation + lysisNitriteOxidisers_share * nitriteOxidation
      + heterotrophsAerobic_SS * heterotrophsAerobic - sloughAmmoniaOxidisers - sloughNitriteOxidisers - sloughHeterotrophs;
  }
  // answers to TAN
  {
    const nitritation = g[go + KEPT.nitritation_TAN], heterotrophsAerobic = g[go + KEPT.heterotrophsAerobic_TAN],
      heterotrophsAnoxic = g[go + KEPT.heterotrophsAnoxic_TAN], ammoniaTransfer = g[go + KEPT.ammoniaTransfer_TAN];
    w[wo + 1] = m[TABLE.nitritation_O2] * nitritation + m[TABLE.heterotrophsAerobic_O2] * heterotrophsAerobic;
    w[wo + 6] = nitritation_TAN * nitritation + heterotrophsAerobic_TAN * heterotrophsAerobic + heterotrophsAnoxic_TAN * heterotrophsAnoxic
      - ammoniaTransfer;
    w[wo + 11] = nitritation;
    w[wo + 14] = m[TABLE.heterotrophsAnoxic_NO3] * heterotrophsAnoxic;
    w[wo + 19] = nitritation_IC * nitritation + heterotrophsAerobic_IC * heterotrophsAerobic + heterotrophsAnoxic_IC * heterotrophsAnoxic;
    w[wo + 26] = nitritation_ALK * nitritation + heterotrophsAerobic_ALK * heterotrophsAerobic + heterotrophsAnoxic_ALK * heterotrophsAnoxic
      - 0.0713928749910759 * ammoniaTransfer;
    w[wo + 35] = lysisAmmoniaOxidisers_share * nitritation + heterotrophsAerobic_SS * (heterotrophsAerobic + heterotrophsAnoxic);
  }
  // answers to NO2
  {
    const nitriteOxidation = g[go + KEPT.nitriteOxidation_NO2];
    w[wo + 2] = m[TABLE.nitriteOxidation_O2] * nitriteOxidation;
    w[wo + 7] = nitriteOxidation_TAN * nitriteOxidation;
    w[wo + 12] = m[TABLE.nitriteOxidation_NO2] * nitriteOxidation;
    w[wo + 15] = nitriteOxidation;
    w[wo + 20] = nitriteOxidation_IC * nitriteOxidation;
    w[wo + 27] = nitriteOxidation_ALK * nitriteOxidation;
    w[wo + 36] = lysisNitriteOxidisers_share * nitriteOxidation;
  }
  // answers to NO3
  {
    const heterotrophsAnoxic = g[go + KEPT.heterotrophsAnoxic_NO3];
    w[wo + 8] = heterotrophsAnoxic_TAN * heterotrophsAnoxic;
    w[wo + 16] = m[TABLE.heterotrophsAnoxic_NO3] * heterotrophsAnoxic;
    w[wo + 21] = heterotrophsAnoxic_IC * heterotrophsAnoxic;
    w[wo + 28] = heterotrophsAnoxic_ALK * heterotrophsAnoxic;
    w[wo + 37] = heterotrophsAerobic_SS * heterotrophsAnoxic;
  }
  // answers to IC
  {
    const carbonDioxideTransfer = g[go + KEPT.carbonDioxideTransfer_IC];
    w[wo + 22] = -carbonDioxideTransfer;
  }
  // answers to ALK
  {
    const carbonDioxideTransfer = g[go + KEPT.carbonDioxideTransfer_ALK];
    w[wo + 23] = -carbonDioxideTransfer;
    w[wo + 29] = 0;
  }
  // answers to S2
  {
    const sulfideOxidation = g[go + KEPT.sulfideOxidation_S2], hydrogenSulfideTransfer = g[go + KEPT.hydrogenSulfideTransfer_S2];
    w[wo + 3] = -1.9961322520274485 * sulfideOxidation;
    w[wo + 30] = -0.06238303181534622 * sulfideOxidation;
    w[wo + 33] = -sulfideOxidation - hydrogenSulfideTransfer;
  }
  // answers to SS
  {
    const heterotrophsAerobic = g[go + KEPT.heterotrophsAerobic_SS], heterotrophsAnoxic = g[go + KEPT.heterotrophsAnoxic_SS];
    w[wo + 4] = m[TABLE.heterotrophsAerobic_O2] * heterotrophsAerobic;
    w[wo + 9] = heterotrophsAerobic_TAN * heterotrophsAerobic + heterotrophsAnoxic_TAN * heterotrophsAnoxic;
    w[wo + 17] = m[TABLE.heterotrophsAnoxic_NO3] * heterotrophsAnoxic;
    w[wo + 24] = heterotrophsAerobic_IC * heterotrophsAerobic + heterotrophsAnoxic_IC * heterotrophsAnoxic;
    w[wo + 31] = heterotrophsAerobic_ALK * heterotrophsAerobic + heterotrophsAnoxic_ALK * heterotrophsAnoxic;
    w[wo + 38] = heterotrophsAerobic_SS * (heterotrophsAerobic + heterotrophsAnoxic);
  }
  // --- crop
  if (cell.bed) {
    // answers to O2
    {
      const rootRespiration = g[go + KEPT.rootRespiration_O2], coatRespirationFast = g[go + KEPT.coatRespirationFast_O2],
        coatRespirationSlow = g[go + KEPT.coatRespirationSlow_O2];
      w[wo + 0] -= rootRespiration + coatRespirationFast + coatRespirationSlow;
      w[wo + 5] += m[TABLE.hydrolysisCoarseFast_TAN] * coatRespirationFast + m[TABLE.hydrolysisCoarseSlow_TAN] * coatRespirationSlow;
      w[wo + 18] += 0.03125195324707794 * rootRespiration + m[TABLE.sludgeAerobic_IC] * (coatRespirationFast + coatRespirationSlow);
      w[wo + 25] += m[TABLE.hydrolysisCoarseFast_ALK] * coatRespirationFast + m[TABLE.hydrolysisCoarseSlow_ALK] * coatRespirationSlow;
    }
    // answers to TAN
    {
      const uptakeAmmonium = g[go + KEPT.uptakeAmmonium_TAN];
      w[wo + 6] -= uptakeAmmonium;
      w[wo + 26] -= 0.0713928749910759 * uptakeAmmonium;
    }
    // answers to NO3
    {
      const uptakeNitrate = g[go + KEPT.uptakeNitrate_NO3];
      w[wo + 16] -= uptakeNitrate;
      w[wo + 28] += 0.0713928749910759 * uptakeNitrate;
    }
  }
}
