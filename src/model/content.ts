// What one unit of each component holds of each element, and how solids weigh: the table that continuity sums over.
import * as c from './components';
import type { Values } from './parameters/values';

const { ATOM } = c;
type Row = Partial<Record<c.Element, number>>;

/**
 * Content of every component (and outside reservoir) in every element.
 * @returns [ALL][ELEMENTS], g per unit of the component (charge in eq).
 */
export function contentTable(values: Values): Float64Array[] {
  const m = values.matter;
  const rows: Row[] = Array.from({ length: c.ALL }, () => ({}));
  const oxygenOf = (n: number): number => (n * ATOM.O) / ATOM.N; // per g N
  // COD reference: NH3, CO2, sulfate = 0. Oxygen per mole: NO3 4 O, NO2 3 O, N2 1.5 O, sulfide 4 O.
  rows[c.O2] = { COD: -1 };
  rows[c.TAN] = { N: 1, charge: 1 / ATOM.N };
  rows[c.NO2] = { N: 1, COD: -oxygenOf(3), charge: -1 / ATOM.N };
  rows[c.NO3] = { N: 1, COD: -oxygenOf(4), charge: -1 / ATOM.N };
  rows[c.N2] = { N: 1, COD: -oxygenOf(1.5) };
  rows[c.IC] = { C: ATOM.C };
  rows[c.ALK] = { charge: -1 };
  rows[c.S2] = { S: 1, COD: (4 * ATOM.O) / ATOM.S };
  rows[c.SO4] = { S: 1, charge: -2 / ATOM.S };
  rows[c.CH4] = { COD: 1, C: ATOM.C / (4 * ATOM.O) };
  rows[c.SS] = { COD: 1, C: m.organicC };
  rows[c.PO] = { COD: 1, C: m.organicC };
  rows[c.PS] = { S: 1, COD: (4 * ATOM.O) / ATOM.S };
  rows[c.P] = { P: 1, charge: -1 / ATOM.P };
  rows[c.K] = { K: 1, charge: 1 / ATOM.K };
  rows[c.CA] = { Ca: 1, charge: 2 / ATOM.Ca };
  rows[c.MG] = { Mg: 1, charge: 2 / ATOM.Mg };
  rows[c.NA] = { Na: 1, charge: 1 / ATOM.Na };
  rows[c.CL] = { Cl: 1, charge: -1 / ATOM.Cl };
  rows[c.FE] = { Fe: 1 }; // chelated: its charge is booked at zero
  const fast: Row = { COD: 1, C: m.organicC, N: m.fastN, P: m.fastP, S: m.fastS };
  const slow: Row = { COD: 1, C: m.organicC, N: m.slowN, P: m.slowP, S: m.slowS };
  const inert: Row = { COD: 1, C: m.organicC, N: m.inertN, P: m.inertP, S: m.inertS, Ca: m.inertCa, Mg: m.inertMg, Fe: m.inertFe };
  for (const sizes of [...c.SOLIDS, c.SLUDGE, c.CAUGHT]) {
    rows[sizes[0]] = fast;
    rows[sizes[1]] = slow;
    rows[sizes[2]] = inert;
  }
  // Films are booked without P and S (under 2 %): those join when film becomes solids.
  for (const film of [c.BA, c.BN, c.BH]) rows[film] = { COD: 1, C: m.filmC, N: m.filmN };
  rows[c.GUT] = { COD: m.feedCOD, N: m.feedN, C: m.feedC, P: m.feedP, K: m.feedK, Ca: m.feedCa, Mg: m.feedMg, S: m.feedS, Fe: m.feedFe };
  rows[c.FISH] = { COD: m.fishCOD, N: m.fishN, C: m.fishC, P: m.fishP, K: m.fishK, Ca: m.fishCa, Mg: m.fishMg, S: m.fishS };
  rows[c.LEAF] = { COD: m.leafCOD, N: m.leafN, C: m.leafC, P: m.leafP, K: m.leafK, Ca: m.leafCa, Mg: m.leafMg, S: m.leafS, Fe: m.leafFe };
  // What a plant holds in store is booked as taken, reduced and uncharged: charge and oxygen were settled when it was taken up.
  rows[c.QN] = { N: 1 };
  rows[c.QP] = { P: 1 };
  rows[c.QK] = { K: 1 };
  rows[c.QCA] = { Ca: 1 };
  rows[c.QFE] = { Fe: 1 };
  rows[c.AIR_O2] = { COD: -1 };
  rows[c.AIR_CO2] = { C: ATOM.C };
  rows[c.AIR_N2] = { N: 1, COD: -oxygenOf(1.5) };
  rows[c.AIR_H2S] = { S: 1, COD: (4 * ATOM.O) / ATOM.S };
  rows[c.AIR_CH4] = { COD: 1, C: ATOM.C / (4 * ATOM.O) };
  rows[c.RUST] = { Fe: 1 };
  rows[c.AIR_NH3] = { N: 1 }; // leaves as NH3: the charge stays behind as lost alkalinity
  return rows.map((row) => Float64Array.from(c.ELEMENTS, (element) => row[element] ?? 0));
}

/** Dry mass per unit of each component that is solid or living, g dry per unit. */
export function dryMass(values: Values): Float64Array {
  const dry = new Float64Array(c.STATES);
  const m = values.matter;
  for (const sizes of [...c.SOLIDS, c.SLUDGE, c.CAUGHT]) {
    dry[sizes[0]] = m.organicDry;
    dry[sizes[1]] = m.organicDry;
    dry[sizes[2]] = m.inertDry;
  }
  for (const film of [c.BA, c.BN, c.BH]) dry[film] = m.organicDry;
  return dry;
}
