// Constants of dissolved gases, acids and ions in fresh water.
// Infinite dilution, molal scale, 1 atm; T in kelvin, t in °C, log is decimal. Activities are added in model/equilibrium.
import type { Correlation, Parameter, ParameterGroup } from './parameter';

const PB82 = 'Plummer & Busenberg 1982, Geochim. Cosmochim. Acta 46:1011–1040';
const GOLDBERG = 'Goldberg, Kishore & Lennen 2002, J. Phys. Chem. Ref. Data 31:231–370';
const SANDER = 'Sander 2015, Atmos. Chem. Phys. 15:4399–4981';
const BK84 = 'Benson & Krause 1984, Limnol. Oceanogr. 29:620–632';
const IUPAC = 'IUPAC standard atomic weights 2021';

type Five = readonly [number, number, number, number, number];
type Three = readonly [number, number, number];
const LOG_FORMULA = 'log K = a + b T + c/T + d log T + e/T²';
const pb82 = (coefficients: Five, unit: string): Correlation<Five> =>
  ({ coefficients, formula: LOG_FORMULA, unit, from_C: 0, to_C: 90, source: PB82, flag: 'published' });

/** CO2(g) = CO2(aq), where CO2(aq) stands for all undissociated CO2. */
export const carbonDioxideSolubility = pb82([108.3865, 0.01985076, -6919.53, -40.45154, 669365], 'log mol/kg/atm');
/** CO2(aq) + H2O = HCO3⁻ + H⁺ */
export const carbonicAcid = pb82([-356.3094, -0.06091964, 21834.37, 126.8339, -1684915], 'log mol/kg');
/** HCO3⁻ = CO3²⁻ + H⁺ */
export const bicarbonate = pb82([-107.8871, -0.03252849, 5151.79, 38.92561, -563713.9], 'log mol/kg');

/** CaCO3 (calcite) = Ca²⁺ + CO3²⁻ */
export const calciteProduct: Correlation<readonly [number, number, number, number]> = {
  coefficients: [-171.9065, -0.077993, 2839.319, 71.595], formula: 'log Ksp = a + b T + c/T + d log T', unit: 'log (mol/kg)²', from_C: 0, to_C: 90, source: PB82, flag: 'published',
};

/** H2O = H⁺ + OH⁻ */
export const waterIonProduct: Correlation<Five> = {
  coefficients: [293.29227, 0.1360833, -10576.913, -123.73158, -6.996455e-5],
  formula: 'log Kw = a + b T + c/T + d log T + e T²', unit: 'log (mol/kg)²', from_C: 0, to_C: 100,
  source: 'phreeqc.dat, USGS; within 0.003 of pKw = 4471/T + 0.01706 T − 6.0875 (Harned & Owen)', flag: 'published',
};

/**
 * NH4⁺ = NH3 + H⁺. Some copies print 2727.92 for the slope: a slip of the pen that raises NH3 by 1.5 %.
 * The formula is for zero ionic strength; the model adds the activity of NH4⁺ where the composition is known.
 */
export const ammonium: Correlation<readonly [number, number]> = {
  coefficients: [0.09018, 2729.92], formula: 'pKa = a + b/T', unit: 'log mol/kg', from_C: 0, to_C: 50,
  source: 'Emerson, Russo, Lund & Thurston 1975, J. Fish. Res. Board Can. 32:2379–2383', flag: 'published',
};

/**
 * H2S = HS⁻ + H⁺. Published values at 25 °C run from 6.94 to 7.01. This one (6.98) lies between, and is the only
 * formula here that stays within both tables of percentages the model is tested against; at zero salinity.
 */
export const hydrogenSulfide: Correlation<Three> = {
  coefficients: [225.838, -13275.3, -34.6435], formula: 'ln K = a + b/T + c ln T', unit: 'ln mol/kg', from_C: 5, to_C: 40,
  source: 'Millero, Plese & Fernandez 1988, Limnol. Oceanogr. 33:269–274, at S = 0', flag: 'published',
};

const PHOSPHATE_FORMULA = 'ln K = −a ln 10 + b/R (1/298.15 − 1/T) + c/R (298.15/T − 1 + ln(T/298.15)); a = pKa, b = ΔH J/mol, c = ΔCp J/mol/K';
const phosphate = (coefficients: Three): Correlation<Three> =>
  ({ coefficients, formula: PHOSPHATE_FORMULA, unit: 'ln mol/kg', from_C: 0, to_C: 50, source: GOLDBERG, flag: 'memory' });

/** H3PO4 = H2PO4⁻ + H⁺ */
export const phosphoricAcid = phosphate([2.148, -8000, -141]);
/** H2PO4⁻ = HPO4²⁻ + H⁺ */
export const dihydrogenPhosphate = phosphate([7.198, 3600, -230]);
/** HPO4²⁻ = PO4³⁻ + H⁺ */
export const hydrogenPhosphate = phosphate([12.35, 16000, -242]);

/** Relative permittivity of water. */
export const permittivity: Correlation<readonly [number, number, number, number]> = {
  coefficients: [87.74, -0.40008, 9.398e-4, -1.41e-6], formula: 'ε = a + b t + c t² + d t³', unit: '1', from_C: 0, to_C: 100,
  source: 'Malmberg & Maryott 1956, J. Res. Natl. Bur. Stand. 56:1–8', flag: 'published',
};

/** Davies activity of an ion of charge z, below an ionic strength of 0.5 mol/kg. */
export const davies: Correlation<readonly [number, number]> = {
  coefficients: [1.82e6, 0.3], formula: 'log γ = −A z² (√I/(1 + √I) − b I), A = a (ε T)^−1.5', unit: '1', from_C: 0, to_C: 100,
  source: 'Davies 1962, Ion Association; Stumm & Morgan 1996, Aquatic Chemistry', flag: 'memory',
};
/** Ionic strength up to which the Davies equation is used. */
export const daviesLimit: Parameter = {
  value: 0.5, unit: 'mol/kg', low: 0.1, high: 0.5, source: 'Stumm & Morgan 1996, Aquatic Chemistry', flag: 'memory',
  fixed: 'it is the range of a formula',
};
/** Ionic strength of sea salt at salinity S g/kg. */
export const seaSaltIonicStrength: Correlation<Three> = {
  coefficients: [19.924, 1000, -1.005], formula: 'I = a S/(b + c S)', unit: 'mol/kg', from_C: 0, to_C: 40,
  source: 'Millero 1982, as in the DOE handbook of CO2 in sea water 1994', flag: 'memory',
};

/** Oxygen in fresh water under water-saturated air at 1 atm. */
export const oxygenSaturation: Correlation<Five> = {
  coefficients: [-139.34411, 1.575701e5, -6.642308e7, 1.2438e10, -8.621949e11],
  formula: 'ln C = a + b/T + c/T² + d/T³ + e/T⁴', unit: 'ln mg/L', from_C: 0, to_C: 40, source: BK84, flag: 'published',
};
/** What salt takes from it, per g/kg of salinity, 0–40 g/kg. */
export const oxygenSalting: Correlation<Three> = {
  coefficients: [1.7674e-2, -10.754, 2140.7], formula: '−Δ ln C = S (a + b/T + c/T²)', unit: 'ln mg/L per g/kg',
  from_C: 0, to_C: 40, source: BK84, flag: 'published',
};
/** Second pressure coefficient of oxygen. One public copy prints a = 9.672e-3, ten times too much. */
export const oxygenPressure: Correlation<Three> = {
  coefficients: [0.000975, -1.426e-5, 6.436e-8], formula: 'θ = a + b t + c t²', unit: '1/atm', from_C: 0, to_C: 40,
  source: `${BK84}; APHA 4500-O`, flag: 'published',
};
export const waterVapour: Correlation<Three> = {
  coefficients: [11.8571, -3840.7, -216961], formula: 'ln p = a + b/T + c/T²', unit: 'ln atm', from_C: 0, to_C: 40,
  source: `${BK84}; APHA 4500-O`, flag: 'published',
};

type Flagged = Correlation['flag'];
const henry = (at25: number, slope_K: number, flag: Flagged): Correlation<readonly [number, number]> => ({
  coefficients: [at25, slope_K], formula: 'H = a exp(b (1/T − 1/298.15))', unit: 'mol/m³/Pa', from_C: 0, to_C: 40, source: SANDER, flag,
});
/**
 * Solubility of gases in water, dissolved over partial pressure. Oxygen and carbon dioxide are not here: theirs follow from
 * the saturation and the solubility above, so that each has one value everywhere.
 */
export const henrySolubility = {
  H2S: henry(1.0e-3, 2100, 'published'),
  // phreeqc.dat is 11 % higher at 25 °C; its fit is stated for 25–100 °C only
  CH4: henry(1.4e-5, 1600, 'published'),
  NH3: henry(5.9e-1, 4200, 'memory'),
  N2: henry(6.4e-6, 1300, 'memory'),
};

/** Share of oxygen in dry air. */
export const oxygenInAir: Parameter = {
  value: 0.20946, unit: '1', low: 0.2094, high: 0.2095, source: 'US Standard Atmosphere 1976: 0.20946 by volume', flag: 'published',
  fixed: 'air is the same for every loop',
};

export const gasConstant: Parameter = {
  value: 8.314462618, unit: 'J/mol/K', low: 8.314462618, high: 8.314462618, source: 'SI 2019, exact', flag: 'published',
  fixed: 'it is a definition',
};
export const atmosphere: Parameter = {
  value: 101325, unit: 'Pa/atm', low: 101325, high: 101325, source: 'definition', flag: 'published', fixed: 'it is a definition',
};

const weight = (value: number): Parameter => ({ value, unit: 'g/mol', low: value, high: value, source: IUPAC, flag: 'published', fixed: 'the weight of atoms is the same in every loop' });
export const molarMass = {
  C: weight(12.011), N: weight(14.007), P: weight(30.974), S: weight(32.06), O2: weight(31.998), CO2: weight(44.009), CaCO3: weight(100.086),
} satisfies ParameterGroup;
