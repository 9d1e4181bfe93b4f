// The sludge bed in layers: oxygen, then nitrate, then sulfate reach depths given by zero-order diffusion, z = √(z0² + 2 D c / r).
// Sulfate is reduced only below the nitrate layer; sulfide is oxidised crossing the upper layers or carried out by gas.
import { AIR_CH4, AIR_H2S, ALK, CH4, IC, N2, NO3, O2, PO, PS, S2, SO4, SS } from '../components';
import { ID, SLOTS } from './catalogue';
import type { Definition } from './definition';
import type { Kinetics } from './kineticsAt';
import type { Workspace } from './workspace';

export const sludgeDefinitions: readonly Definition[] = [
  { id: 'sludgeAerobic', unit: 'g COD', fixed: () => [[PO, -1]], unknowns: [O2, IC], fast: [O2] },
  { id: 'sludgeAnoxic', unit: 'g COD', fixed: () => [[PO, -1]], unknowns: [NO3, N2, IC, ALK], fast: [NO3] },
  { id: 'sludgeSulfate', unit: 'g COD', fixed: () => [[PO, -1]], unknowns: [SO4, PS, IC, ALK] },
  { id: 'sludgeMethane', unit: 'g COD', fixed: () => [[PO, -1]], unknowns: [CH4, IC] },
  { id: 'sludgeMethaneGas', unit: 'g COD', fixed: () => [[PO, -1]], unknowns: [AIR_CH4, IC] },
  { id: 'sludgeLeak', unit: 'g COD', fixed: () => [[PO, -1], [SS, 1]], unknowns: [] },
  { id: 'poreSulfideDiffusion', unit: 'g S', fixed: () => [[PS, -1], [S2, 1]], unknowns: [] },
  { id: 'poreSulfideByOxygen', unit: 'g S', fixed: () => [[PS, -1]], unknowns: [SO4, O2, ALK] },
  { id: 'poreSulfideByNitrate', unit: 'g S', fixed: () => [[PS, -1]], unknowns: [SO4, NO3, N2, ALK] },
  { id: 'poreSulfideGas', unit: 'g S', fixed: () => [[PS, -1], [S2, 1]], unknowns: [] },
  { id: 'poreSulfideGasOut', unit: 'g S', fixed: () => [[PS, -1]], unknowns: [AIR_H2S] },
];

/** g COD of methane per L of gas at 25 °C, with about a third of the gas not methane: 64/24.5 × 0.67. */
export const METHANE_COD_PER_L = 1.75;

/** Rates of the bed under a cell's water; nothing where no sludge lies. */
export function sludgeRates(w: Workspace, k: Kinetics): void {
  const { y, o, r, ro, g, go, cell, perVolume: v } = w;
  const volume = cell.bedVolume;
  const thickness = cell.bedThickness;
  const c = y[o + PO] > 0 ? y[o + PO] / volume : 0;
  const demand = k.demand * c / (k.half + c) + 1e-9; // g COD/m³/d
  const o2 = y[o + O2] > 0 ? y[o + O2] * v : 0;
  const no3 = y[o + NO3] > 0 ? y[o + NO3] * v : 0;
  const so4 = y[o + SO4] > 0 ? y[o + SO4] * v : 0;
  const d2 = 2 * k.diffusion;

  // Effective concentrations fall faster than linear near zero, so that a flux never outlives its reactant.
  const o2Keeps = o2 / (o2 + 0.1);
  const no3Keeps = no3 / (no3 + 0.3);
  const zo2 = d2 * o2 * o2Keeps / demand;
  const zO = Math.sqrt(zo2);
  const anoxicDemand = demand * k.anoxic * 0.35; // g N/m³/d: 1/2.857
  const zn2 = zo2 + d2 * no3 * no3Keeps / anoxicDemand;
  const zN = Math.sqrt(zn2);
  const sulfateDemand = demand * k.sulfate * 0.501; // g S/m³/d: 1/1.996
  const zS = Math.sqrt(zn2 + d2 * so4 * (so4 / (k.sulfateHalf + so4)) / sulfateDemand);

  // Depths within the bed, smoothly.
  const l2 = thickness * thickness;
  const inO = zO * thickness / Math.sqrt(zo2 + l2);
  const inN = zN * thickness / Math.sqrt(zn2 + l2);
  const inS = zS * thickness / Math.sqrt(zS * zS + l2);
  const perThickness = 1 / thickness;
  const total = demand * volume;
  const aerobic = total * inO * perThickness;
  r[ro + ID.sludgeAerobic] = aerobic;
  const anoxic = total * k.anoxic * (inN - inO) * perThickness;
  r[ro + ID.sludgeAnoxic] = anoxic;
  r[ro + ID.sludgeSulfate] = total * k.sulfate * (inS - inN) * perThickness;
  const deep = total * k.methane * (thickness - inN) * perThickness;
  r[ro + ID.sludgeMethane] = deep * (1 - k.methaneGas);
  r[ro + ID.sludgeMethaneGas] = deep * k.methaneGas;
  const exchange = k.diffusion * cell.bedArea / (0.5 * thickness + 0.002); // m³/d between the bed's middle and the water

  // Pore sulfide on its way up: past zN of oxidised sludge, a share 1/(1 + zN/reaction) gets through.
  const pore = y[o + PS] > 0 ? y[o + PS] / volume : 0;
  const upward = k.diffusion * cell.bedArea / (inN + 0.25 * thickness + 0.001) * pore;
  const oxidised = k.reaction + inN;
  r[ro + ID.poreSulfideDiffusion] = upward * k.reaction / oxidised;
  r[ro + ID.poreSulfideByOxygen] = upward * inO / oxidised * o2Keeps;
  r[ro + ID.poreSulfideByNitrate] = upward * (inN - inO) / oxidised * no3Keeps;
  const gas = deep * k.methaneGas / METHANE_COD_PER_L * 0.001; // m³/d
  const carried = gas * 0.4 * pore * 0.5; // Henry 0.4 (Cg/Cw), half of pore sulfide un-ionised
  const entrained = gas * k.entrain;
  r[ro + ID.sludgeLeak] = (exchange + entrained) * c;
  r[ro + ID.poreSulfideGas] = carried * k.bubbleSulfide + entrained * pore;
  r[ro + ID.poreSulfideGasOut] = carried * (1 - k.bubbleSulfide);

  // Kept derivatives: the aerobic and anoxic fluxes to their own acceptor.
  const dO = o2 > 1e-9 ? aerobic * l2 / (zo2 + l2) * 0.5 * (1 / o2 + 0.1 / (o2 * (o2 + 0.1))) * v : 0;
  g[go + ID.sludgeAerobic * SLOTS] = dO;
  g[go + ID.sludgeAnoxic * SLOTS] = no3 > 1e-9 ? total * k.anoxic * perThickness * inN * l2 / (zn2 + l2) * 0.5 * ((zn2 - zo2) / (zn2 + 1e-30)) * (1 / no3 + 0.3 / (no3 * (no3 + 0.3))) * v : 0;
}
