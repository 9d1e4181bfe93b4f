// The season's ledger: boundary amounts from deeds and from extents, against what the water holds.
import { AIR_O2, ALL, ELEMENTS, O2, STATES } from '../model/components';
import { chargeScale, close, contentOf, held } from '../model/ledger';
import { yieldOf } from '../model/network/matrix';
import { DEFINITIONS } from '../model/processes/definitions';
import type { RunState } from './runState';
import type { Runtime } from './runtime';
import type { LedgerLine } from './trajectory';

const SHOWN = ['N', 'P', 'C', 'S', 'COD', 'charge'] as const;

/** @param start the state that the season began with */
export function audit(runtime: Runtime, start: RunState, state: RunState): LedgerLine[] {
  const { content, matrix, data } = runtime;
  // What processes put into the air, and what those that bring matter from outside put into the water.
  const air = yieldOf(matrix, state.extents, 0).fill(0, 0, STATES);
  const brought = new Float64Array(ALL);
  DEFINITIONS.forEach((definition, p) => {
    if (!definition.fromOutside) return;
    matrix.columns[p].rows.forEach((row, i) => {
      brought[row] += matrix.columns[p].coefficients[i] * state.extents[p];
    });
  });
  const heldO2 = new Float64Array(ALL);
  heldO2[O2] = state.held;
  const lines = SHOWN.map((element): LedgerLine => {
    const e = ELEMENTS.indexOf(element);
    const begin = held(content, start.y, e);
    const end = held(content, state.y, e);
    const put =
      contentOf(content, state.put, e)
      + contentOf(content, brought, e)
      + contentOf(content, data.received, e)
      + contentOf(content, heldO2, e)
      + contentOf(content, state.clipped, e);
    const gone = contentOf(content, state.taken, e) + contentOf(content, data.released, e);
    const airborne = contentOf(content, air, e);
    const inflow = put + Math.max(0, -airborne);
    const outflow = gone + Math.max(0, airborne);
    const scale =
      element === 'charge'
        ? chargeScale(content, state.y) + chargeScale(content, start.y)
        : Math.abs(begin) + Math.abs(inflow) + Math.abs(outflow) + Math.abs(end) + Math.abs(air[AIR_O2] * (element === 'COD' ? 1 : 0));
    return { element, ...close(begin, inflow, outflow, end, scale) };
  });
  const total = (volumes: Float64Array): number => volumes.reduce((sum, volume) => sum + volume, 0);
  const [begin, end] = [total(start.volumes), total(state.volumes)];
  const through = runtime.plan.rig ? runtime.plan.rig.flow_m3_d * state.day : 0;
  lines.push({
    element: 'water',
    ...close(begin, state.water.put + through, state.water.taken + through, end, begin + state.water.put + through),
  });
  return lines;
}

/** Mass added by clipping at zero, against the season's throughput of nitrogen and oxygen demand. */
export function clippedShare(runtime: Runtime, state: RunState): number {
  const { content } = runtime;
  let throughput = 1;
  for (let i = 0; i < state.put.length; i++) throughput += (Math.abs(content[i][0]) + Math.abs(content[i][1])) * Math.abs(state.put[i]);
  let sum = 0;
  for (let i = 0; i < STATES; i++)
    sum += Math.abs(runtime.content[i][0] * state.clipped[i]) + Math.abs(runtime.content[i][1] * state.clipped[i]);
  return sum / throughput;
}
