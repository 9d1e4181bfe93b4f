// How water runs through pipes, over lips and through the pump: water's density and viscosity, roughness, fittings, pump shape.
import type { Correlation, ParameterGroup } from './parameter';

const FITTINGS = 'tables of minor losses in civil-engineering references';

/** Density of air-free water at 1 atm, kg/m³, t in °C. */
export const waterDensity: Correlation<readonly [number, number, number, number, number]> = {
  coefficients: [999.97495, -3.983035, 301.797, 522528.9, 69.34881],
  formula: 'ρ = a (1 − (t + b)² (t + c) / (d (t + e)))', unit: 'kg/m³', from_C: 0, to_C: 40,
  source: 'Tanaka et al. 2001, Metrologia 38:301–309, from memory; within 0.01 % of the table of the International Critical Tables 1928', flag: 'memory',
};

/** Dynamic viscosity of water, Pa·s, T in kelvin. */
export const waterViscosity: Correlation<readonly [number, number, number]> = {
  coefficients: [2.414e-5, 247.8, 140],
  formula: 'µ = a · 10^(b/(T − c))', unit: 'Pa·s', from_C: 0, to_C: 100,
  source: 'Vogel form in common use, from memory; within 1.5 % of the International Critical Tables 1928', flag: 'memory',
};

/** Friction factor of turbulent flow, Swamee & Jain. */
export const swameeJain: Correlation<readonly [number, number, number, number]> = {
  coefficients: [0.25, 3.7, 5.74, 0.9],
  formula: 'f = a / log²(ε/(b D) + c/Re^d), Re 5000 to 10⁸', unit: '–', from_C: 0, to_C: 100,
  source: 'Swamee & Jain 1976, J. Hydraul. Div. ASCE 102:657–664, from memory', flag: 'memory',
};

export const hydraulics = {
  gravity: { value: 9.80665, unit: 'm/s²', low: 9.78, high: 9.83, source: 'standard gravity; poles to equator', flag: 'published' },
  laminar: { value: 64, unit: 'f · Re', low: 64, high: 64, source: 'Hagen–Poiseuille, exact for a round pipe', flag: 'derived', fixed: 'it follows from the equations of flow' },
  laminarTo: { value: 2000, unit: 'Re', low: 1800, high: 2300, source: 'textbook limit of laminar flow, from memory', flag: 'memory' },
  turbulentFrom: { value: 4000, unit: 'Re', low: 3000, high: 5000, source: 'textbook begin of turbulent flow, from memory', flag: 'memory' },
  roughness: { value: 1.5e-6, unit: 'm', low: 1e-6, high: 7e-6, source: 'drawn and plastic pipe 1.5 µm (table of surface roughness)', flag: 'published' },
  entranceLoss: { value: 0.5, unit: 'velocity heads', low: 0.4, high: 0.9, source: `sharp, flush inlet 0.5, projecting 0.5–0.9 (${FITTINGS})`, flag: 'published' },
  elbowLoss: { value: 0.9, unit: 'velocity heads', low: 0.3, high: 1.5, source: `short 90° bend 0.9, threaded elbow to 1.5 (${FITTINGS})`, flag: 'published' },
  exitLoss: { value: 1, unit: 'velocity heads', low: 1, high: 1, source: 'all velocity is lost in the tank', flag: 'derived', fixed: 'it is a definition: all velocity is lost in the tank' },
  lipCoefficient: { value: 1.84, unit: 'm^0.5/s', low: 1.6, high: 2.1, source: 'Francis: Q = 1.84 b h^1.5 over a sharp crest, from memory; taken for the rim of a standpipe', flag: 'memory', fixed: 'it cancels: a lip is as long as its usual head asks for' },
  linkLength: { value: 1.2, unit: 'm', low: 0.5, high: 3, source: 'pipe between neighbouring tanks', flag: 'assumption' },
  linkDiameter: { value: 0.0779, unit: 'm', low: 0.05, high: 0.11, source: 'usual drain pipe of a small loop, inner diameter', flag: 'assumption' },
  riserDiameter: { value: 0.032, unit: 'm', low: 0.025, high: 0.05, source: 'usual pressure pipe of a small pump, inner diameter', flag: 'assumption' },
  riserSpeed: { value: 1.2, unit: 'm/s', low: 0.7, high: 1.5, source: 'speed for which a pressure pipe is chosen; 0.7–1.0 keeps solids moving (KSU manual)', flag: 'assumption' },
  linkSpeed: { value: 0.35, unit: 'm/s', low: 0.2, high: 0.5, source: 'speed for which a drain pipe is chosen, so that 5 cm of fall carry the flow', flag: 'assumption' },
  riserRun: { value: 2, unit: 'm', low: 1, high: 6, source: 'length of the pressure pipe beside its rise', flag: 'assumption' },
  freeboard: { value: 0.05, unit: 'm', low: 0.03, high: 0.15, source: 'least rim over a tank’s lip', flag: 'assumption' },
  lipHead: { value: 0.02, unit: 'm', low: 0.01, high: 0.04, source: 'water over a usual overflow at the pump’s flow', flag: 'assumption' },
  floatRate: { value: 5.8, unit: 'm³/d', low: 3, high: 15, source: 'float valve, 4 L/min', flag: 'assumption' },
  dryRestart: { value: 0.5, unit: 'share of volume', low: 0.3, high: 0.8, source: 'water in its tank at which a pump that drew air is set going again', flag: 'assumption' },
  backupShare: { value: 0.5, unit: 'share', low: 0.3, high: 1, source: 'air that a battery keeps going', flag: 'assumption' },
  shutOffRatio: { value: 1.6, unit: 'times', low: 1.3, high: 2.5, source: 'shut-off head over head at duty; small centrifugal pumps work near 60 % of it', flag: 'assumption' },
  leastShutOff: { value: 0.5, unit: 'm', low: 0.3, high: 1, source: 'no pump on sale is weaker', flag: 'assumption' },
  pumpEfficiency: { value: 0.35, unit: 'share', low: 0.2, high: 0.6, source: 'small pumps, water out against mains in; from memory', flag: 'memory' },
  pumpLeast: { value: 0.15, unit: 'share of volume', low: 0.08, high: 0.3, source: 'water that covers the pump’s intake and keeps it from drawing a whirl of air', flag: 'assumption' },
} as const satisfies ParameterGroup;
