// The one list of components: what flows and what resides, what a unit of each holds, and how closely each is followed.
// Everything else that is known of a component derives from here: `npm run kernels` writes components.ts, with the places they stand in.
// A cell's state is MASS: g, but mol C for inorganic carbon, eq for alkalinity, g COD for organics, solids, films and methane.
import { ATOM } from './elements';
import type { Element } from './elements';
import type { Values } from './parameters/values';

/**
 * fast: dissolved and solved together in one dense block; dissolved; index: flowing without mass; solid: flowing;
 * resident: stays in its cell; outside: a reservoir outside the water, booked, not simulated.
 */
export type ComponentKind = 'fast' | 'dissolved' | 'index' | 'solid' | 'resident' | 'outside';

/** Below this a component's error does not matter: an amount per m³ of water, per m² of film, or in the cell. */
export interface Tolerance {
  amount: number;
  per: 'water' | 'film' | 'cell';
}

export interface ComponentEntry {
  name: string;
  kind: ComponentKind;
  /** g of each element in a unit of the component (charge in eq); without it: none */
  content?: (matter: Values['matter']) => Partial<Record<Element, number>>;
  /** g dry per unit, where it is solid or living */
  dry?: 'organicDry' | 'inertDry';
  /** lists of components.ts that it belongs to, in the order of this list; solids of one size are one list */
  among?: 'COARSE' | 'FINE' | 'SUPERFINE' | 'SLUDGE' | 'CAUGHT' | 'STORES';
  /** it lasts on its way round the loop: it is neither a fast reactant nor a solid that settles */
  lasts?: true;
  tolerance: Tolerance;
}

type Content = NonNullable<ComponentEntry['content']>;

const inWater = (amount: number): Tolerance => ({ amount, per: 'water' });
const onFilm = (amount: number): Tolerance => ({ amount, per: 'film' });
const inCell = (amount: number): Tolerance => ({ amount, per: 'cell' });

/** Oxygen in nitrogen's oxides, g per g N. COD reference: NH3, CO2, sulfate = 0; per mole NO3 4 O, NO2 3 O, N2 1.5 O, sulfide 4 O. */
const oxygenOf = (atoms: number): number => (atoms * ATOM.O) / ATOM.N;
const nitrogenGas: Content = () => ({ N: 1, COD: -oxygenOf(1.5) });
const sulfide: Content = () => ({ S: 1, COD: (4 * ATOM.O) / ATOM.S });
const methane: Content = () => ({ COD: 1, C: ATOM.C / (4 * ATOM.O) });
const organics: Content = (m) => ({ COD: 1, C: m.organicC });
const fast: Content = (m) => ({ COD: 1, C: m.organicC, N: m.fastN, P: m.fastP, S: m.fastS });
const slow: Content = (m) => ({ COD: 1, C: m.organicC, N: m.slowN, P: m.slowP, S: m.slowS });
const inert: Content = (m) => ({
  COD: 1,
  C: m.organicC,
  N: m.inertN,
  P: m.inertP,
  S: m.inertS,
  Ca: m.inertCa,
  Mg: m.inertMg,
  Fe: m.inertFe,
});
/** Films are booked without P and S (under 2 %): those join when film becomes solids. */
const film: Content = (m) => ({ COD: 1, C: m.filmC, N: m.filmN });

/** Solids of one size, or at rest in one place: fast-degradable, slow-degradable, inert. */
const solids = (
  names: readonly [string, string, string],
  kind: ComponentKind,
  among: ComponentEntry['among'],
  tolerance: Tolerance,
): ComponentEntry[] => [
  { name: names[0], kind, content: fast, dry: 'organicDry', among, tolerance },
  { name: names[1], kind, content: slow, dry: 'organicDry', among, tolerance },
  { name: names[2], kind, content: inert, dry: 'inertDry', among, tolerance },
];

export const COMPONENTS: readonly ComponentEntry[] = [
  // --- dissolved; the fast ones are solved together
  { name: 'O2', kind: 'fast', content: () => ({ COD: -1 }), tolerance: inWater(0.015) },
  { name: 'TAN', kind: 'fast', lasts: true, content: () => ({ N: 1, charge: 1 / ATOM.N }), tolerance: inWater(0.01) },
  { name: 'NO2', kind: 'fast', lasts: true, content: () => ({ N: 1, COD: -oxygenOf(3), charge: -1 / ATOM.N }), tolerance: inWater(0.003) },
  { name: 'NO3', kind: 'fast', lasts: true, content: () => ({ N: 1, COD: -oxygenOf(4), charge: -1 / ATOM.N }), tolerance: inWater(0.03) },
  { name: 'IC', kind: 'fast', lasts: true, content: () => ({ C: ATOM.C }), tolerance: inWater(0.004) },
  { name: 'ALK', kind: 'fast', lasts: true, content: () => ({ charge: -1 }), tolerance: inWater(0.004) },
  { name: 'S2', kind: 'fast', content: sulfide, tolerance: inWater(0.0002) },
  { name: 'SS', kind: 'fast', content: organics, tolerance: inWater(0.1) },
  { name: 'CH4', kind: 'dissolved', content: methane, tolerance: inWater(0.02) },
  { name: 'N2', kind: 'dissolved', lasts: true, content: nitrogenGas, tolerance: inWater(0.1) },
  { name: 'SO4', kind: 'dissolved', lasts: true, content: () => ({ S: 1, charge: -2 / ATOM.S }), tolerance: inWater(0.01) },
  { name: 'P', kind: 'dissolved', lasts: true, content: () => ({ P: 1, charge: -1 / ATOM.P }), tolerance: inWater(0.01) },
  { name: 'K', kind: 'dissolved', lasts: true, content: () => ({ K: 1, charge: 1 / ATOM.K }), tolerance: inWater(0.01) },
  { name: 'CA', kind: 'dissolved', lasts: true, content: () => ({ Ca: 1, charge: 2 / ATOM.Ca }), tolerance: inWater(0.01) },
  { name: 'MG', kind: 'dissolved', lasts: true, content: () => ({ Mg: 1, charge: 2 / ATOM.Mg }), tolerance: inWater(0.01) },
  { name: 'NA', kind: 'dissolved', lasts: true, content: () => ({ Na: 1, charge: 1 / ATOM.Na }), tolerance: inWater(0.01) },
  { name: 'CL', kind: 'dissolved', lasts: true, content: () => ({ Cl: 1, charge: -1 / ATOM.Cl }), tolerance: inWater(0.01) },
  // chelated: its charge is booked at zero
  { name: 'FE', kind: 'dissolved', lasts: true, content: () => ({ Fe: 1 }), tolerance: inWater(0.002) },
  // --- free-floating bacteria, index × m³
  { name: 'OP', kind: 'index', lasts: true, tolerance: inWater(0.05) },
  // --- flowing solids: coarse, fine, superfine
  ...solids(['CF', 'CS', 'CI'], 'solid', 'COARSE', inWater(0.06)),
  ...solids(['FF', 'FS', 'FI'], 'solid', 'FINE', inWater(0.06)),
  ...solids(['UF', 'US', 'UI'], 'solid', 'SUPERFINE', inWater(0.06)),
  // --- sludge on the floor or in the cone; solids caught in mats, media or roots
  ...solids(['SF', 'SL', 'SI'], 'resident', 'SLUDGE', inCell(0.05)),
  ...solids(['MF', 'MS', 'MI'], 'resident', 'CAUGHT', inCell(0.05)),
  // --- films of ammonia oxidisers, nitrite oxidisers, heterotrophs; a seeded film is tiny and must still be followed,
  // or start-up lags are noise
  { name: 'BA', kind: 'resident', content: film, dry: 'organicDry', tolerance: onFilm(1e-7) },
  { name: 'BN', kind: 'resident', content: film, dry: 'organicDry', tolerance: onFilm(1e-7) },
  { name: 'BH', kind: 'resident', content: film, dry: 'organicDry', tolerance: onFilm(1e-4) },
  // --- in the sludge's pore water: organics, sulfide
  { name: 'PO', kind: 'resident', content: organics, tolerance: inCell(0.05) },
  { name: 'PS', kind: 'resident', content: sulfide, tolerance: inCell(3e-4) },
  // --- organisms: feed in the gut (g feed), fish (g wet), leaf (g dry) and its stores of N, P, K, Ca, Fe (g)
  {
    name: 'GUT',
    kind: 'resident',
    tolerance: inCell(0.15),
    content: (m) => ({
      COD: m.feedCOD,
      N: m.feedN,
      C: m.feedC,
      P: m.feedP,
      K: m.feedK,
      Ca: m.feedCa,
      Mg: m.feedMg,
      S: m.feedS,
      Fe: m.feedFe,
    }),
  },
  {
    name: 'FISH',
    kind: 'resident',
    tolerance: inCell(1),
    content: (m) => ({ COD: m.fishCOD, N: m.fishN, C: m.fishC, P: m.fishP, K: m.fishK, Ca: m.fishCa, Mg: m.fishMg, S: m.fishS }),
  },
  {
    name: 'LEAF',
    kind: 'resident',
    tolerance: inCell(0.05),
    content: (m) => ({
      COD: m.leafCOD,
      N: m.leafN,
      C: m.leafC,
      P: m.leafP,
      K: m.leafK,
      Ca: m.leafCa,
      Mg: m.leafMg,
      S: m.leafS,
      Fe: m.leafFe,
    }),
  },
  // What a plant holds in store is booked as taken, reduced and uncharged: charge and oxygen were settled when it was taken up.
  { name: 'QN', kind: 'resident', among: 'STORES', content: () => ({ N: 1 }), tolerance: inCell(0.01) },
  { name: 'QP', kind: 'resident', among: 'STORES', content: () => ({ P: 1 }), tolerance: inCell(0.003) },
  { name: 'QK', kind: 'resident', among: 'STORES', content: () => ({ K: 1 }), tolerance: inCell(0.02) },
  { name: 'QCA', kind: 'resident', among: 'STORES', content: () => ({ Ca: 1 }), tolerance: inCell(0.005) },
  { name: 'QFE', kind: 'resident', among: 'STORES', content: () => ({ Fe: 1 }), tolerance: inCell(0.0002) },
  // --- indices without mass: root health, root rot, filter blockage
  { name: 'ROOT', kind: 'resident', tolerance: inCell(0.003) },
  { name: 'ROT', kind: 'resident', tolerance: inCell(0.003) },
  { name: 'CLOG', kind: 'resident', tolerance: inCell(0.1) },
  // --- outside the water: the air, and iron that fell out
  { name: 'AIR_O2', kind: 'outside', content: () => ({ COD: -1 }), tolerance: inCell(0) },
  { name: 'AIR_CO2', kind: 'outside', content: () => ({ C: ATOM.C }), tolerance: inCell(0) },
  { name: 'AIR_N2', kind: 'outside', content: nitrogenGas, tolerance: inCell(0) },
  { name: 'AIR_H2S', kind: 'outside', content: sulfide, tolerance: inCell(0) },
  { name: 'AIR_CH4', kind: 'outside', content: methane, tolerance: inCell(0) },
  // leaves as NH3: the charge stays behind as lost alkalinity
  { name: 'AIR_NH3', kind: 'outside', content: () => ({ N: 1 }), tolerance: inCell(0) },
  { name: 'RUST', kind: 'outside', content: () => ({ Fe: 1 }), tolerance: inCell(0) },
];
