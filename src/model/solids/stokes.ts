// How fast a small sphere sinks in still water, by Stokes' law. For choosing and checking settling speeds of size classes.
import { density_kg_m3, viscosity_Pa_s } from '../hydraulics/pipe';
import type { HydraulicNumbers } from '../parameters/values';

const SECONDS_PER_DAY = 86400;

/** m/s by Stokes' law, with no regard to its range. */
function speed(diameter_m: number, particleDensity: number, T_C: number, h: HydraulicNumbers): number {
  return (h.gravity * (particleDensity - density_kg_m3(T_C)) * diameter_m * diameter_m) / (18 * viscosity_Pa_s(T_C));
}

/**
 * Settling speed of a sphere, m/d, which is also the overflow rate (m³/m²/d) that just keeps it: v = g (ρp − ρ) d²/(18 µ).
 * Holds for Reynolds numbers below about 1 (see stokesReynolds): faeces up to some 0.3 mm. Below 0 for what floats.
 * @param diameter_um diameter, µm, 0 and up
 * @param particleDensity of the wet particle, kg/m³; fish faeces 1050–1190 (Merino, World Aquaculture Society abstract)
 * @param T_C 0–40 °C
 */
export const stokesVelocity_m_d = (diameter_um: number, particleDensity: number, T_C: number, h: HydraulicNumbers): number =>
  speed(diameter_um * 1e-6, particleDensity, T_C, h) * SECONDS_PER_DAY;

/** Reynolds number of that sphere at that speed, –. Arguments as for stokesVelocity_m_d. */
export function stokesReynolds(diameter_um: number, particleDensity: number, T_C: number, h: HydraulicNumbers): number {
  const d = diameter_um * 1e-6;
  return (density_kg_m3(T_C) * Math.abs(speed(d, particleDensity, T_C, h)) * d) / viscosity_Pa_s(T_C);
}
