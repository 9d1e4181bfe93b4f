// Everything the inner loop of a season works on: cells, links, matrix, and flat work arrays. Allocated once a season.
import type { Cell } from '../cell';
import { FLOWING, STATES } from '../components';
import { CONDITIONAL_LENGTH } from '../equilibrium/conditional';
import { BLOCK, DERIVATIVES, DIAGONALS, FACTORS, PROCESSES } from '../kernel/sizes';
import type { Saturation } from '../processes/saturation';
import type { Kinetics } from '../processes/kineticsAt';
import type { Matrix } from './matrix';

/** Water from one cell to another, m³/d; −1 stands for outside (a rig's inflow or outlet). */
export interface Link {
  from: number;
  to: number;
  flow: number;
  /** share of coarse solids broken on the way (a pump), and of that the superfine share */
  shear: number;
  superfine: number;
  /** 1/d: its flow against the volume it comes from; fixed between cuts (blockSolve.ts) */
  rate: number;
}

export interface LoopData {
  cells: readonly Cell[];
  links: Link[];
  /** the links that come to each cell from one before it; those that run back; those from outside and to it */
  forward: readonly (readonly Link[])[];
  back: readonly Link[];
  inlets: readonly Link[];
  outlets: readonly Link[];
  /**
   * all links that come to each cell from another; 1/d that all links carry off each cell, fixed between cuts; shares that the return's
   * echo makes up in each (closeLoop.ts)
   */
  into: readonly (readonly Link[])[];
  outflow: Float64Array;
  echo: Float64Array;
  /** the array of links that these were sorted from */
  sorted: readonly Link[];
  matrix: Matrix;
  kinetics: Kinetics;
  saturation: Saturation;
  /** conditional constants, CONDITIONAL_LENGTH a cell */
  constants: Float64Array;
  /** h of each cell at the beginning of a step, and the latest found, which is where the next search starts */
  h: Float64Array;
  h1: Float64Array;
  /** outside inflow concentrations, FLOWING, g/m³ */
  inflow: Float64Array;
  /** held oxygen g/m³ (< 0: free) and held h (0: free) of a rig */
  holdO2: number;
  holdH: number;
  /** light now against its daily mean, given t in days */
  light: (t: number) => number;
  /** rates at the two stages; kept derivatives; corrections W·u by process, both stages together */
  r0: Float64Array;
  r1: Float64Array;
  g: Float64Array;
  gScratch: Float64Array;
  delta: Float64Array;
  /** W of each cell: entries of its dense block, and what stands on the diagonals of components solved alone; and its factors */
  w: Float64Array;
  own: Float64Array;
  lu: Float64Array;
  /** extents since they were last emptied; [cells][processes], and what a hold added, g O2 a cell */
  extents: Float64Array;
  held: Float64Array;
  holdRate0: Float64Array;
  holdRate1: Float64Array;
  holdDelta: Float64Array;
  /** water moved by each link, and outside inflow and outflow of every flowing component since last emptied */
  received: Float64Array;
  released: Float64Array;
  outRate0: Float64Array;
  outRate1: Float64Array;
  outDelta: Float64Array;
  /** absolute tolerances per state and cell; what clipping at zero added, per component */
  tolerance: Float64Array;
  clipped: Float64Array;
}

export function makeLoopData(cells: readonly Cell[], links: Link[], matrix: Matrix, kinetics: Kinetics, saturation: Saturation): LoopData {
  const n = cells.length;
  const array = (length: number): Float64Array => new Float64Array(length);
  return {
    cells,
    links,
    forward: [],
    back: [],
    inlets: [],
    outlets: [],
    into: [],
    outflow: array(n),
    echo: array(n),
    sorted: [],
    matrix,
    kinetics,
    saturation,
    constants: array(n * CONDITIONAL_LENGTH),
    h: array(n).fill(1e-4),
    h1: array(n).fill(1e-4),
    inflow: array(FLOWING),
    holdO2: -1,
    holdH: 0,
    light: () => 0,
    r0: array(n * PROCESSES),
    r1: array(n * PROCESSES),
    g: array(n * DERIVATIVES),
    gScratch: array(DERIVATIVES),
    delta: array(n * PROCESSES),
    w: array(n * BLOCK),
    own: array(n * DIAGONALS),
    lu: array(n * FACTORS),
    extents: array(n * PROCESSES),
    held: array(n),
    holdRate0: array(n),
    holdRate1: array(n),
    holdDelta: array(n),
    received: array(FLOWING),
    released: array(FLOWING),
    outRate0: array(FLOWING),
    outRate1: array(FLOWING),
    outDelta: array(FLOWING),
    tolerance: array(n * STATES),
    clipped: array(STATES),
  };
}

/** Sorts the links by where they lead, where they are not those last sorted. */
export function sortLinks(data: LoopData): void {
  const { cells, links } = data;
  if (data.sorted === links) return;
  data.sorted = links;
  data.forward = cells.map((_, c) => links.filter(({ from, to }) => to === c && from >= 0 && from < c));
  data.into = cells.map((_, c) => links.filter(({ from, to }) => to === c && from >= 0));
  data.back = links.filter(({ from, to }) => to >= 0 && from >= to);
  data.inlets = links.filter(({ from }) => from < 0);
  data.outlets = links.filter(({ from, to }) => from >= 0 && to < 0);
}
