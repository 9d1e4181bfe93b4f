// Units and number formats of everything shown: how many decimals a quantity deserves and what stands behind it.

interface Format { unit: string; decimals: number }

/** By the variable's name; the unit also stands in that name. Sulfide is shown in µg/L, welfare and root health in %. */
const FORMATS: Readonly<Record<string, Format>> = {
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
  Fe_mg_L: { unit: 'mg/L', decimals: 2 },
  sludge_g: { unit: 'g', decimals: 0 },
  T_C: { unit: '°C', decimals: 1 },
  flow_m3_d: { unit: 'm³/d', decimals: 1 },
  level_m: { unit: 'm', decimals: 2 },
  mass_g: { unit: 'g', decimals: 0 },
  number: { unit: '', decimals: 0 },
  eaten_g_d: { unit: 'g/d', decimals: 0 },
  leafDry_g_m2: { unit: 'g/m²', decimals: 0 },
  rootMat_g_m2: { unit: 'g/m²', decimals: 1 },
  caught_g: { unit: 'g', decimals: 0 },
  gas_L_d: { unit: 'L/d', decimals: 1 },
  dose_g_d: { unit: 'g/d', decimals: 1 },
  air_L_min: { unit: 'L/min', decimals: 1 },
  cut_kg: { unit: 'kg', decimals: 1 },
};

/** Shares kept as 0–1 by the model and shown as per cent. */
const SHARES: ReadonlySet<string> = new Set(['welfare', 'rootHealth', 'sludgeFill', 'clog']);

/** A number with so many decimals, "<0.1" for a trace that would round to nothing, "–" when there is none. */
export function figure(value: number, decimals: number): string {
  if (!Number.isFinite(value)) return '–';
  const smallest = 10 ** -decimals;
  if (value > 0 && value < smallest / 2) return `<${smallest.toFixed(decimals)}`;
  const text = value.toFixed(decimals);
  return (Number(text) === 0 ? (0).toFixed(decimals) : text).replace('-', '−');
}

/** The nearest whole number: scores and heads are counted, not measured. */
export function whole(value: number): string {
  return figure(Number.isFinite(value) ? Math.round(value) : value, 0);
}

/** As figure, with fewer decimals the larger the number is: no more than one from 10 on, none from 100 on. */
export function measured(value: number, decimals: number): string {
  const size = Math.abs(value);
  return figure(value, size >= 99.95 ? 0 : size >= 9.995 ? Math.min(1, decimals) : decimals);
}

/** The unit shown behind a variable; empty for pH and counts. */
export function unitOf(variable: string): string {
  return SHARES.has(variable) ? '%' : FORMATS[variable]?.unit ?? '';
}

/** A variable's value as shown, without its unit. */
export function valueOf(variable: string, value: number): string {
  if (SHARES.has(variable)) return figure(100 * value, 0);
  if (variable === 'number') return whole(value);
  return measured(value, FORMATS[variable]?.decimals ?? 2);
}

/** A variable's value with its unit; the space between does not break. */
export function withUnit(variable: string, value: number): string {
  const unit = unitOf(variable);
  return unit === '' ? valueOf(variable, value) : `${valueOf(variable, value)}\u00a0${unit}`;
}

/** Day (the first is day 0, as in plans) and hour of a moment. */
export function momentOf(hours: number): { day: number; hour: number; clock: string } {
  const whole = Math.floor(hours + 1e-9);
  const hour = whole % 24;
  return { day: Math.floor(whole / 24), hour, clock: String(hour).padStart(2, '0') };
}
