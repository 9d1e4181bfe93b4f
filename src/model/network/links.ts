// What water carries along the links of a loop.
import { addStretch, emptyStretch, exchangeStretch } from '../../numerics/vectors';
import { CF, FLOWING, STATES } from '../components';
import type { LoopData, Link } from './loopData';

/** What links carry, as the slope's first part: nothing need stand in `out`. */
export function carryAll(data: LoopData, y: Float64Array, out: Float64Array, outRate: Float64Array): void {
  const { cells, outflow, inflow, inlets, outlets } = data;
  for (let c = 0; c < cells.length; c++) {
    const into = data.into[c];
    const o = c * STATES;
    const off = outflow[c];
    const first = into.length > 0 ? into[0] : null;
    const rate = first ? first.rate : 0;
    const a = first ? first.from * STATES : o;
    exchangeStretch(out, y, o, a, rate, off, FLOWING);
    emptyStretch(out, o + FLOWING, o + STATES);
    for (let l = 1; l < into.length; l++) {
      addStretch(out, o, y, into[l].from * STATES, into[l].rate, FLOWING);
    }
    for (let l = 0; l < into.length; l++) if (into[l].shear > 0) breakCoarse(into[l], into[l].rate, y, into[l].from * STATES, out, o);
  }
  for (let l = 0; l < inlets.length; l++) {
    const o = inlets[l].to * STATES;
    for (let i = 0; i < FLOWING; i++) out[o + i] += inlets[l].flow * inflow[i];
  }
  outRate.fill(0);
  for (let l = 0; l < outlets.length; l++) {
    const from = outlets[l].from * STATES;
    for (let i = 0; i < FLOWING; i++) outRate[i] += outlets[l].rate * y[from + i];
  }
}

/** A pump's share of coarse solids arrives as fine and superfine. */
export function breakCoarse(link: Link, rate: number, source: Float64Array, a: number, target: Float64Array, b: number): void {
  for (let part = 0; part < 3; part++) {
    const broken = rate * source[a + CF + part] * link.shear;
    target[b + CF + part] -= broken;
    target[b + CF + 3 + part] += broken * (1 - link.superfine);
    target[b + CF + 6 + part] += broken * link.superfine;
  }
}
