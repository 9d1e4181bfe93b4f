// Numbers of the fluidised-sand biofilter: its sand, its vessel, what its film does.
import type { ParameterGroup } from '../../../model/parameters/parameter';

export const constants = {
  restDepth: { value: 0.5, unit: 'm', low: 0.3, high: 1, source: 'height of the sand at rest in a small unit; farms 0.9–2.5 (Summerfelt 2006, from memory)', flag: 'assumption' },
  vesselDepth: { value: 1.15, unit: 'm', low: 0.9, high: 2.2, source: 'sand at twice its height at rest, and room above it (common practice, no source)', flag: 'assumption' },
  restVoids: { value: 0.45, unit: '–', low: 0.4, high: 0.48, source: 'filter sand at rest (Summerfelt 2006, from memory)', flag: 'memory' },
  density: { value: 2.65, unit: '–', low: 2.6, high: 2.7, source: 'quartz against water', flag: 'memory' },
  terminal: { value: 3500, unit: 'm/d', low: 2200, high: 4800, source: '4.05 cm/s: quartz of 0.3 mm at 20 °C, drag of a sphere; 0.2 to 0.4 mm', flag: 'derived' },
  exponent: { value: 3.5, unit: '–', low: 3.2, high: 3.8, source: '4.45·Re^−0.1 at Re 12 (Richardson & Zaki 1954)', flag: 'derived' },
  sandArea: { value: 14000, unit: 'm²/m³ at rest', low: 9000, high: 18000, source: '6 (1 − voids)/(0.8 × 0.3 mm); 4000–20,000 (Timmons & Ebeling, from memory)', flag: 'derived' },
  filmShare: {
    value: 0.3, unit: 'share of the grains’ face', low: 0.15, high: 0.5, flag: 'calibrated',
    source: 'film on grains that rub is thin: about 1 kg TAN/m³ of sand at rest a day in warm water (Timmons & Ebeling, from memory) at the areal rate of a moving bed',
  },
  mixedFrom: { value: 0.2, unit: 'share of the height at rest', low: 0.1, high: 0.3, source: 'below it parts of the bed stand still and catch; units run at 0.2–1 (Summerfelt 2006, from memory)', flag: 'memory' },
  tornFrom: { value: 1, unit: 'share of the height at rest', low: 0.8, high: 1.5, source: 'above it grains with film leave at the top (Summerfelt 2006, from memory)', flag: 'memory' },
} as const satisfies ParameterGroup;
