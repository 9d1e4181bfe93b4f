// A species' own rates at one water temperature, ready for the inner loop.
import { pow } from '../../../numerics/elementary';
import type { Values } from '../../parameters/values';

export interface FishAt {
  /** 1/d of the gut's feed digested; 1/d of body burnt; g O2/m³ at which metabolism is halved; share of feed in the growth column */
  digestion: number;
  basal: number;
  respirationO2: number;
  growing: number;
}

/** Digestion is recorded at 28 °C, basal loss at 25 °C. @param T_C water temperature, °C */
export function fishAt(values: Values, species: string, T_C: number): FishAt {
  const f = values.fish[species];
  return {
    digestion: f.digestion * pow(f.warmthTheta, T_C - 28),
    basal: f.basal * pow(f.warmthTheta, T_C - 25),
    respirationO2: f.respirationO2,
    growing: Math.min(1, f.gain / values.matter.fishGainFull),
  };
}
