// What a line of water may hold: each field with its unit and range, and the reading of one line against them.
// Ranges are those the constants hold over, or wide enough for any water a loop could see.
import { listText } from '../words/language';
import { say } from '../words/say';

interface Field {
  low: number;
  high: number;
  unit: string;
}

export const FIELDS = {
  T_C: { low: 0, high: 40, unit: '°C' },
  pH: { low: 0, high: 14, unit: 'pH' },
  alkalinity_meq_L: { low: -100, high: 500, unit: 'meq/L' },
  DIC_mmol_L: { low: 0, high: 1000, unit: 'mmol/L' },
  TAN_mgN_L: { low: 0, high: 5000, unit: 'mg N/L' },
  sulfide_mgS_L: { low: 0, high: 5000, unit: 'mg S/L' },
  phosphate_mgP_L: { low: 0, high: 5000, unit: 'mg P/L' },
  nitrate_mgN_L: { low: 0, high: 5000, unit: 'mg N/L' },
  calcium_mmol_L: { low: 0, high: 150, unit: 'mmol/L' },
  chloride_mmol_L: { low: 0, high: 500, unit: 'mmol/L' },
  salinity_g_kg: { low: 0, high: 40, unit: 'g/kg' },
  pressure_atm: { low: 0.3, high: 2, unit: 'atm' },
  ionicStrength_mol_L: { low: 0, high: 0.5, unit: 'mol/L' },
} satisfies Record<string, Field>;

export type Key = keyof typeof FIELDS;
export type WaterLine = { T_C: number } & Partial<Record<Key, number>>;

const isKey = (key: string): key is Key => Object.hasOwn(FIELDS, key);

const shown = (value: unknown): string => {
  const text = typeof value === 'number' ? String(value) : JSON.stringify(value);
  return text.length > 60 ? `${text.slice(0, 60)}…` : text;
};

export const complaint = (key: string, found: string, expected: string): string => say('waterLine.fault', { key, found, expected });

/** The water a line holds, or what is wrong with it: every fault, each with key, found and expected. */
export function readWater(text: string): { water: WaterLine } | { error: string } {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return { error: complaint(say('waterLine.line'), shown(text.trim()), say('waterLine.object')) };
  }
  if (typeof data !== 'object' || data === null || Array.isArray(data)) {
    return { error: complaint(say('waterLine.line'), shown(data), say('waterLine.object')) };
  }
  const faults: string[] = [];
  const values: Partial<Record<Key, number>> = {};
  for (const [key, value] of Object.entries(data)) {
    if (!isKey(key)) faults.push(complaint(shown(key), shown(value), say('waterLine.otherKeys', { keys: Object.keys(FIELDS) })));
    else if (fits(FIELDS[key], value)) values[key] = value;
    else faults.push(complaint(key, shown(value), rangeWords(FIELDS[key])));
  }
  if (!Object.hasOwn(data, 'T_C')) faults.push(complaint('T_C', say('waterLine.nothing'), rangeWords(FIELDS.T_C)));
  faults.push(...disagreements(new Set(Object.keys(data))));
  if (faults.length > 0 || values.T_C === undefined) return { error: faults.join('; ') };
  return { water: { ...values, T_C: values.T_C } };
}

const rangeWords = ({ low, high, unit }: Field): string => say('waterLine.range', { low: String(low), high: String(high), unit });

function fits(field: Field, value: unknown): value is number {
  return typeof value === 'number' && value >= field.low && value <= field.high;
}

/** Two of alkalinity, DIC and pH fix a water; three may contradict each other, alkalinity or DIC alone says too little. */
function disagreements(keys: ReadonlySet<string>): string[] {
  const alkalinity = keys.has('alkalinity_meq_L');
  const carbon = keys.has('DIC_mmol_L');
  const pH = keys.has('pH');
  if (alkalinity && carbon && pH)
    return [complaint(listText(['alkalinity_meq_L', 'DIC_mmol_L', 'pH']), say('waterLine.allThree'), say('waterLine.twoOfThem'))];
  if (alkalinity && !carbon && !pH) return [complaint('alkalinity_meq_L', say('waterLine.alone'), say('waterLine.besideAlkalinity'))];
  if (carbon && !alkalinity && !pH) return [complaint('DIC_mmol_L', say('waterLine.alone'), say('waterLine.besideCarbon'))];
  return [];
}
