// What water holds when it stands level with the air.

/** Saturation with air at the water's temperature: O2 g/m³, CO2 mol/m³, N2 g N/m³. */
export interface Saturation {
  O2: number;
  CO2: number;
  N2: number;
}
