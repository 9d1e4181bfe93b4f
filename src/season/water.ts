// A measured composition as concentrations of the flowing components: g/m³, mol C/m³, eq/m³. Sodium or chloride closes the charge.
import {
  ALK,
  ATOM,
  CA,
  CF,
  CH4,
  CI,
  CL,
  CS,
  FE,
  FF,
  FI,
  FLOWING,
  FS,
  IC,
  K,
  MG,
  N2,
  NA,
  NO2,
  NO3,
  O2,
  OP,
  P,
  S2,
  SO4,
  SS,
  TAN,
  UF,
  UI,
  US,
} from '../model/components';
import { equilibrate } from '../model/equilibrium/equilibrate';
import { addIon } from '../model/equilibrium/ionicStrength';
import type { Values } from '../model/parameters/values';
import type { Saturation } from '../model/processes/saturation';
import type { Composition } from './plan';

/** Free bacteria of fresh source water, index. */
const CLEAN_WATER = 0.3;
/** Parts of suspended solids where only their dry mass is given: fast, slow, inert shares of COD. */
const PARTS = [0.13, 0.45, 0.42];

/**
 * @param composition what was measured; alkalinity with pH or DIC (pH alone: alkalinity 2 meq/L is assumed; neither: pH 7.5)
 * @returns FLOWING concentrations; gases not given are at saturation with air
 */
export function concentrationsOf(composition: Composition, T_C: number, saturation: Saturation, values: Values): Float64Array {
  const out = new Float64Array(FLOWING);
  out[O2] = composition.O2_mg_L ?? saturation.O2;
  out[N2] = saturation.N2;
  out[TAN] = composition.TAN_mgN_L ?? 0;
  out[NO2] = composition.NO2_mgN_L ?? 0;
  out[NO3] = composition.NO3_mgN_L ?? 0;
  out[S2] = composition.sulfide_mgS_L ?? 0;
  out[SO4] = composition.SO4_mgS_L ?? 0;
  out[P] = composition.PO4_mgP_L ?? 0;
  out[K] = composition.K_mg_L ?? 0;
  out[CA] = composition.Ca_mg_L ?? 0;
  out[MG] = composition.Mg_mg_L ?? 0;
  out[NA] = composition.Na_mg_L ?? 0;
  out[OP] = CLEAN_WATER;
  out[CL] = composition.Cl_mg_L ?? 0;
  out[FE] = composition.Fe_mg_L ?? 0;
  out[SS] = composition.organics_mgCOD_L ?? 0;
  out[CH4] = composition.CH4_mgCOD_L ?? 0;
  const rows = [
    [CF, CS, CI],
    [FF, FS, FI],
    [UF, US, UI],
  ];
  const dryPerCOD = (PARTS[0] + PARTS[1]) * values.matter.organicDry + PARTS[2] * values.matter.inertDry;
  [composition.solidsCoarse_mg_L, composition.solidsFine_mg_L, composition.solidsSuperfine_mg_L].forEach((dry, size) => {
    rows[size].forEach((row, part) => {
      out[row] = ((dry ?? 0) / dryPerCOD) * PARTS[part];
    });
  });

  const alkalinity = composition.alkalinity_meq_L ?? 2;
  const strong = { charge: 0, squares: 0 };
  addIon(strong, -1, (out[NO3] + out[NO2]) / ATOM.N);
  addIon(strong, -2, out[SO4] / ATOM.S);
  addIon(strong, -1, out[CL] / ATOM.Cl);
  addIon(strong, 1, out[K] / ATOM.K);
  addIon(strong, 2, out[CA] / ATOM.Ca);
  addIon(strong, 2, out[MG] / ATOM.Mg);
  const known =
    composition.DIC_mmol_L !== undefined ? { alkalinity, carbon: composition.DIC_mmol_L } : { alkalinity, pH: composition.pH ?? 7.5 };
  const solved = equilibrate({ T_C, known, ammonia: out[TAN] / ATOM.N, sulfide: out[S2] / ATOM.S, phosphate: out[P] / ATOM.P, strong });
  out[ALK] = alkalinity;
  // A pH above what the alkalinity bears would need carbon below none: the water then holds none.
  out[IC] = Math.max(0, solved.carbon);
  closeCharge(out);
  return out;
}

/** ALK = Σ cations − Σ anions at the alkalinity end point: more sodium makes up what is missing, else chloride. */
export function closeCharge(c: Float64Array): void {
  const cations = c[TAN] / ATOM.N + c[K] / ATOM.K + (2 * c[CA]) / ATOM.Ca + (2 * c[MG]) / ATOM.Mg + c[NA] / ATOM.Na;
  const anions = (c[NO2] + c[NO3]) / ATOM.N + c[P] / ATOM.P + (2 * c[SO4]) / ATOM.S + c[CL] / ATOM.Cl;
  const missing = c[ALK] - cations + anions;
  if (missing >= 0) c[NA] += missing * ATOM.Na;
  else c[CL] += -missing * ATOM.Cl;
}
