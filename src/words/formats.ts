// The unit and the decimals that every quantity deserves: metric, and US customary where people there would measure otherwise.
// Concentrations stay in mg/L everywhere: that is what test kits say.

export interface Format {
  unit: string;
  decimals: number;
  us?: UsFormat;
}
/** shown = offset + factor × metric */
export interface UsFormat {
  unit: string;
  decimals: number;
  factor: number;
  offset?: number;
}

/** Exact by definition (international yard and pound, US gallon). */
const L_PER_GAL = 3.785411784;
const G_PER_OZ = 28.349523125;
const KG_PER_LB = 0.45359237;
const M_PER_FT = 0.3048;
const L_PER_FT3 = 28.316846592;
const FT2_PER_M2 = 1 / (M_PER_FT * M_PER_FT);

const ounces = (decimals: number): UsFormat => ({ unit: 'oz', decimals, factor: 1 / G_PER_OZ });
const ouncesPerDay = (decimals: number): UsFormat => ({ unit: 'oz/d', decimals, factor: 1 / G_PER_OZ });
const ouncesPerArea = (decimals: number): UsFormat => ({ unit: 'oz/ft²', decimals, factor: 1 / G_PER_OZ / FT2_PER_M2 });
const gallonsPerDay: UsFormat = { unit: 'gal/d', decimals: 0, factor: 1000 / L_PER_GAL };
const pounds: UsFormat = { unit: 'lb', decimals: 1, factor: 1 / KG_PER_LB };
const inches: UsFormat = { unit: 'in', decimals: 1, factor: 1 / 2.54 };

/** By the variable's name; the metric unit also stands in that name. Sulfide is shown in µg/L. */
export const FORMATS: Readonly<Record<string, Format>> = {
  TAN_mgN_L: { unit: 'mg N/L', decimals: 2 },
  NO2_mgN_L: { unit: 'mg N/L', decimals: 2 },
  NO3_mgN_L: { unit: 'mg N/L', decimals: 1 },
  NH3_mgN_L: { unit: 'mg N/L', decimals: 3 },
  O2_mg_L: { unit: 'mg/L', decimals: 1 },
  CO2_mg_L: { unit: 'mg/L', decimals: 1 },
  pH: { unit: '', decimals: 2 },
  alkalinity_meq_L: { unit: 'meq/L', decimals: 2 },
  H2S_ug_L: { unit: 'µg/L', decimals: 1 },
  CH4_mg_L: { unit: 'mg/L', decimals: 2 },
  organics_mgCOD_L: { unit: 'mg COD/L', decimals: 1 },
  solids: { unit: 'mg/L', decimals: 0 },
  solids_mg_L: { unit: 'mg/L', decimals: 1 },
  solidsCoarse_mg_L: { unit: 'mg/L', decimals: 1 },
  solidsFine_mg_L: { unit: 'mg/L', decimals: 1 },
  PO4_mgP_L: { unit: 'mg P/L', decimals: 1 },
  K_mg_L: { unit: 'mg/L', decimals: 1 },
  Ca_mg_L: { unit: 'mg/L', decimals: 1 },
  Mg_mg_L: { unit: 'mg/L', decimals: 1 },
  Fe_mg_L: { unit: 'mg/L', decimals: 2 },
  freeBacteria: { unit: '', decimals: 1 },
  sludge_g: { unit: 'g', decimals: 0, us: ounces(1) },
  T_C: { unit: '°C', decimals: 1, us: { unit: '°F', decimals: 0, factor: 1.8, offset: 32 } },
  flow_m3_d: { unit: 'm³/d', decimals: 1, us: gallonsPerDay },
  spill_m3_d: { unit: 'm³/d', decimals: 2, us: gallonsPerDay },
  level_m: { unit: 'm', decimals: 2, us: { unit: 'ft', decimals: 2, factor: 1 / M_PER_FT } },
  mass_g: { unit: 'g', decimals: 0, us: ounces(1) },
  number: { unit: '', decimals: 0 },
  eaten_g_d: { unit: 'g/d', decimals: 0, us: ouncesPerDay(1) },
  leafDry_g_m2: { unit: 'g/m²', decimals: 0, us: ouncesPerArea(2) },
  rootO2_mg_L: { unit: 'mg/L', decimals: 1 },
  rootMat_g_m2: { unit: 'g/m²', decimals: 1, us: ouncesPerArea(3) },
  caught_g: { unit: 'g', decimals: 0, us: ounces(1) },
  gas_L_d: { unit: 'L/d', decimals: 1, us: { unit: 'ft³/d', decimals: 2, factor: 1 / L_PER_FT3 } },
  dose_g_d: { unit: 'g/d', decimals: 1, us: ouncesPerDay(2) },
  air_L_min: { unit: 'L/min', decimals: 1, us: { unit: 'ft³/min', decimals: 2, factor: 1 / L_PER_FT3 } },
  cut_kg: { unit: 'kg', decimals: 1, us: pounds },
  // what panels show beside the season's own variables
  feed_g_d: { unit: 'g/d', decimals: 0, us: ouncesPerDay(2) },
  grams: { unit: 'g', decimals: 0, us: ounces(1) },
  kilograms: { unit: 'kg', decimals: 1, us: pounds },
  gas_L: { unit: 'L', decimals: 1, us: { unit: 'ft³', decimals: 2, factor: 1 / L_PER_FT3 } },
  volume_m3: { unit: 'm³', decimals: 2, us: { unit: 'gal', decimals: 0, factor: 1000 / L_PER_GAL } },
  media_L: { unit: 'L', decimals: 0, us: { unit: 'ft³', decimals: 2, factor: 1 / L_PER_FT3 } },
  area_m2: { unit: 'm²', decimals: 2, us: { unit: 'ft²', decimals: 1, factor: FT2_PER_M2 } },
  flow_m3_h: { unit: 'm³/h', decimals: 2, us: { unit: 'gal/min', decimals: 1, factor: 1000 / L_PER_GAL / 60 } },
  water_L: { unit: 'L', decimals: 0, us: { unit: 'gal', decimals: 0, factor: 1 / L_PER_GAL } },
  waterPerHour_L_h: { unit: 'L/h', decimals: 0, us: { unit: 'gal/min', decimals: 2, factor: 1 / L_PER_GAL / 60 } },
  height_cm: { unit: 'cm', decimals: 0, us: inches },
  lift_m: { unit: 'm', decimals: 2, us: { unit: 'ft', decimals: 1, factor: 1 / M_PER_FT } },
  plants_m2: { unit: 'plants/m²', decimals: 0, us: { unit: 'plants/ft²', decimals: 1, factor: 1 / FT2_PER_M2 } },
  light_mol_m2_d: { unit: 'mol/m²/d', decimals: 0 },
  power_W: { unit: 'W', decimals: 0 },
  energy_kWh: { unit: 'kWh', decimals: 0 },
  work_h: { unit: 'h', decimals: 1 },
};

/** Shares kept as 0–1 by the model and shown as per cent. */
export const SHARES: ReadonlySet<string> = new Set(['welfare', 'rootHealth', 'rootRot', 'sludgeFill', 'clog', 'leafStore']);

/** A mass too small for the scale of the rest: below this it is said in mg, which US laboratories use too. */
export const LEAST_GRAMS = 0.1;
export const GRAMS_PER_KILOGRAM = 1000;
