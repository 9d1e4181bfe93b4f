// Water in pipes and over lips: density, viscosity, friction and the head that a flow costs.
// Darcy–Weisbach with Swamee & Jain's friction factor; laminar and turbulent flow joined smoothly.
import { exp10, log10, pow } from '../../numerics/elementary';
import { swameeJain, waterDensity, waterViscosity } from '../parameters/hydraulics';
import type { HydraulicNumbers } from '../parameters/values';

/** 0 °C in kelvin. */
const ZERO_C = 273.15;
const SECONDS_PER_DAY = 86400;
/** π/4: the area of a circle of diameter 1. */
const CIRCLE = Math.PI / 4;

export interface Pipe {
  length_m: number;
  /** inner diameter */
  diameter_m: number;
  /** sum of the fittings' loss coefficients, in velocity heads; see entranceLoss, elbowLoss, exitLoss */
  fittings: number;
}

/** Density of water, kg/m³, from 0 to 40 °C. Source: waterDensity. */
export function density_kg_m3(T_C: number): number {
  const [a, b, c, d, e] = waterDensity.coefficients;
  return a * (1 - ((T_C + b) * (T_C + b) * (T_C + c)) / (d * (T_C + e)));
}

/** Dynamic viscosity of water, Pa·s, from 0 to 100 °C. Source: waterViscosity. */
export function viscosity_Pa_s(T_C: number): number {
  const [a, b, c] = waterViscosity.coefficients;
  return a * exp10(b / (T_C + ZERO_C - c));
}

/** Mean speed in a full round pipe, m/s. */
export const speed_m_s = (flow_m3_d: number, diameter_m: number): number =>
  flow_m3_d / SECONDS_PER_DAY / (CIRCLE * diameter_m * diameter_m);

/** Reynolds number of a full round pipe, –. */
export const reynolds = (flow_m3_d: number, diameter_m: number, T_C: number): number =>
  (density_kg_m3(T_C) * speed_m_s(flow_m3_d, diameter_m) * diameter_m) / viscosity_Pa_s(T_C);

function turbulent(Re: number, roughnessRatio: number): number {
  const [a, b, c, d] = swameeJain.coefficients;
  const log = log10(roughnessRatio / b + c / pow(Re, d));
  return a / (log * log);
}

/**
 * Darcy's friction factor, –. Laminar below Re 2000, Swamee & Jain above 4000, a smooth step between.
 * @param Re above 0
 * @param roughnessRatio roughness over diameter, 0 to 0.05
 */
export function frictionFactor(Re: number, roughnessRatio: number, h: HydraulicNumbers): number {
  const from = h.laminarTo;
  const to = h.turbulentFrom;
  if (Re <= from) return h.laminar / Re;
  if (Re >= to) return turbulent(Re, roughnessRatio);
  const x = (Re - from) / (to - from);
  const share = x * x * (3 - 2 * x);
  return (1 - share) * (h.laminar / Re) + share * turbulent(Re, roughnessRatio);
}

/**
 * Head a flow costs in a full pipe, m, as a function of the flow in m³/d: 0 for no flow or one below 0, rises with flow without a step.
 * What hangs on the pipe and the water's warmth alone is worked out once.
 */
export function lossOf(pipe: Pipe, T_C: number, h: HydraulicNumbers): (flow_m3_d: number) => number {
  const perFlow = reynolds(1, pipe.diameter_m, T_C);
  const speedPerFlow = speed_m_s(1, pipe.diameter_m);
  const ratio = h.roughness / pipe.diameter_m;
  const lengths = pipe.length_m / pipe.diameter_m;
  const perSquare = 1 / (2 * h.gravity);
  return (flow_m3_d) => {
    const Re = perFlow * flow_m3_d;
    if (!(Re > 0)) return 0;
    const speed = speedPerFlow * flow_m3_d;
    return (frictionFactor(Re, ratio, h) * lengths + pipe.fittings) * speed * speed * perSquare;
  };
}

/** Head one flow costs in a full pipe, m; see lossOf. */
export const headLoss_m = (flow_m3_d: number, pipe: Pipe, T_C: number, h: HydraulicNumbers): number => lossOf(pipe, T_C, h)(flow_m3_d);

/** Water a full pipe holds, m³. */
export const pipeVolume_m3 = (pipe: Pipe): number => CIRCLE * pipe.diameter_m * pipe.diameter_m * pipe.length_m;

/**
 * How high water stands over an overflow's lip, m; 0 for no flow. Francis' weir, Q = C b h^1.5.
 * @param lip_m length of the lip: π × diameter for a standpipe
 */
export function headOverLip_m(flow_m3_d: number, lip_m: number, h: HydraulicNumbers): number {
  if (!(flow_m3_d > 0)) return 0;
  return pow(flow_m3_d / SECONDS_PER_DAY / (h.lipCoefficient * lip_m), 2 / 3);
}

/** A pipe as it usually runs between neighbouring tanks: inlet, two bends, outlet. */
export const usualLink = (h: HydraulicNumbers, diameter_m: number = h.linkDiameter, length_m: number = h.linkLength): Pipe => ({
  length_m,
  diameter_m,
  fittings: h.entranceLoss + 2 * h.elbowLoss + h.exitLoss,
});
