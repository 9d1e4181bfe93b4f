// The sludge bed in layers: oxygen, then nitrate, then sulfate reach depths given by zero-order diffusion, z = √(z0² + 2 D c / r).
// Sulfate is reduced only below the nitrate layer; sulfide is oxidised crossing the upper layers or carried out by gas.
import { AIR_CH4, AIR_H2S, ALK, CH4, IC, N2, NO3, O2, PO, PS, S2, SO4, SS } from '../components';
import { ID, KEPT } from './catalogue';
import type { Definition } from './definition';
import type { RateNumbers, Workspace } from './workspace';

export const sludgeDefinitions: readonly Definition[] = [
  {
    id: 'sludgeAerobic',
    unit: 'g COD',
    fixed: () => [[PO, -1]],
    unknowns: [O2, IC],
    alone: PO,
    where: 'sludge',
    undone: [
      [O2, 2],
      [PO, 2],
    ],
  },
  {
    id: 'sludgeAnoxic',
    unit: 'g COD',
    fixed: () => [[PO, -1]],
    unknowns: [NO3, N2, IC, ALK],
    alone: PO,
    where: 'sludge',
    undone: [[NO3, 2]],
  },
  { id: 'sludgeSulfate', unit: 'g COD', fixed: () => [[PO, -1]], unknowns: [SO4, PS, IC, ALK], alone: PO, where: 'sludge' },
  { id: 'sludgeMethane', unit: 'g COD', fixed: () => [[PO, -1]], unknowns: [CH4, IC], alone: PO, where: 'sludge' },
  { id: 'sludgeMethaneGas', unit: 'g COD', fixed: () => [[PO, -1]], unknowns: [AIR_CH4, IC], alone: PO, where: 'sludge' },
  {
    id: 'sludgeLeak',
    unit: 'g COD',
    fixed: () => [
      [PO, -1],
      [SS, 1],
    ],
    unknowns: [],
    alone: PO,
    where: 'sludge',
    undone: [[PO, 1]],
  },
  {
    id: 'poreSulfideDiffusion',
    unit: 'g S',
    fixed: () => [
      [PS, -1],
      [S2, 1],
    ],
    unknowns: [],
    alone: PS,
    where: 'sludge',
    undone: [[PS, 1]],
  },
  { id: 'poreSulfideByOxygen', unit: 'g S', fixed: () => [[PS, -1]], unknowns: [SO4, O2, ALK], alone: PS, where: 'sludge' },
  { id: 'poreSulfideByNitrate', unit: 'g S', fixed: () => [[PS, -1]], unknowns: [SO4, NO3, N2, ALK], alone: PS, where: 'sludge' },
  {
    id: 'poreSulfideGas',
    unit: 'g S',
    fixed: () => [
      [PS, -1],
      [S2, 1],
    ],
    unknowns: [],
    alone: PS,
    where: 'sludge',
  },
  { id: 'poreSulfideGasOut', unit: 'g S', fixed: () => [[PS, -1]], unknowns: [AIR_H2S], alone: PS, where: 'sludge' },
];

/** g N of nitrate and g S of sulfate that burn a g COD, by their electrons: 1/2.857, 1/1.996 */
const NITROGEN_PER_COD = 0.35,
  SULFUR_PER_COD = 0.501;

/** Rates of the bed under a cell's water; nothing where no sludge lies. */
export function sludgeRates(w: Workspace, { kinetics: k }: RateNumbers): void {
  const { y, o, r, ro, g, go, cell, perVolume: v } = w;
  const volume = cell.bedVolume;
  const thickness = cell.bedThickness;
  const c = y[o + PO] > 0 ? y[o + PO] / volume : 0;
  const demand = (k.demand * c) / (k.half + c) + 1e-9; // g COD/m³/d
  const o2 = y[o + O2] > 0 ? y[o + O2] * v : 0;
  const no3 = y[o + NO3] > 0 ? y[o + NO3] * v : 0;
  const so4 = y[o + SO4] > 0 ? y[o + SO4] * v : 0;
  const d2 = 2 * k.diffusion;

  // Effective concentrations fall faster than linear near zero, so that a flux never outlives its reactant.
  const o2Keeps = o2 / (o2 + k.sludgeO2);
  const no3Keeps = no3 / (no3 + k.sludgeNO3);
  const zo2 = (d2 * o2 * o2Keeps) / demand;
  const zO = Math.sqrt(zo2);
  const anoxicDemand = demand * k.anoxic * NITROGEN_PER_COD; // g N/m³/d
  const zn2 = zo2 + (d2 * no3 * no3Keeps) / anoxicDemand;
  const zN = Math.sqrt(zn2);
  const sulfateDemand = demand * k.sulfate * SULFUR_PER_COD; // g S/m³/d
  const zS = Math.sqrt(zn2 + (d2 * so4 * (so4 / (k.sulfateHalf + so4))) / sulfateDemand);

  // Depths within the bed, smoothly.
  const l2 = thickness * thickness;
  const inO = (zO * thickness) / Math.sqrt(zo2 + l2);
  const inN = (zN * thickness) / Math.sqrt(zn2 + l2);
  const inS = (zS * thickness) / Math.sqrt(zS * zS + l2);
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
  const exchange = (k.diffusion * cell.bedArea) / (0.5 * thickness + k.skin); // m³/d between the bed's middle and the water

  // Pore sulfide on its way up: past zN of oxidised sludge, a share 1/(1 + zN/reaction) gets through.
  const pore = y[o + PS] > 0 ? y[o + PS] / volume : 0;
  const rise = (k.diffusion * cell.bedArea) / (inN + 0.25 * thickness + k.sulfideSkin); // m³/d of pore water's worth
  const gas = ((deep * k.methaneGas) / k.gasMethane) * 0.001; // m³/d
  const entrained = gas * k.entrain;
  const upward = rise * pore;
  const oxidised = k.reaction + inN;
  const through = k.gasReaction / (k.gasReaction + inN);
  const held = entrained * (1 - through);
  const perN = inN > 0 ? 1 / inN : 0;
  r[ro + ID.poreSulfideDiffusion] = (upward * k.reaction) / oxidised;
  r[ro + ID.poreSulfideByOxygen] = ((upward * inO) / oxidised + held * pore * inO * perN) * o2Keeps;
  r[ro + ID.poreSulfideByNitrate] = (upward / oxidised + held * pore * perN) * (inN - inO) * no3Keeps;
  r[ro + ID.sludgeLeak] = (exchange + entrained) * c;
  const carried = gas * k.bubbleHenry * k.poreUnionised; // m³/d of pore water stripped
  // Pore water that gas draws along is oxidised on its way up too, but it passes fast.
  const risen = carried * k.bubbleSulfide + entrained * through;
  r[ro + ID.poreSulfideGas] = risen * pore;
  r[ro + ID.poreSulfideGasOut] = carried * (1 - k.bubbleSulfide) * pore;

  if (!w.keeps) return;
  // The bed's pull on the oxygen above it, which no column of its own keeps (see gas.ts).
  if (o2 > 1e-9) w.pull = ((((aerobic * 0.5 * (1 + k.sludgeO2 / (o2 + k.sludgeO2))) / o2) * l2) / (zo2 + l2)) * v;

  // Kept derivatives to the pore organics: every depth falls with the root of the demand.
  const perDemand = c > 0 ? k.half / ((k.half + c) * c * volume) : k.half / ((k.half + 1e-9) * 1e-9 * volume); // d ln(demand)/d(PO)
  const stepO = (-0.5 * inO * l2) / (zo2 + l2);
  const stepN = (-0.5 * inN * l2) / (zn2 + l2);
  const stepS = (-0.5 * inS * l2) / (zS * zS + l2);
  const scale = total * perThickness * perDemand;
  const deeper = k.methane * scale * (thickness - inN - stepN);
  g[go + KEPT.sludgeAerobic_PO] = scale * (inO + stepO);
  g[go + KEPT.sludgeAnoxic_PO] = k.anoxic * scale * (inN - inO + stepN - stepO);
  g[go + KEPT.sludgeSulfate_PO] = k.sulfate * scale * (inS - inN + stepS - stepN);
  g[go + KEPT.sludgeMethane_PO] = deeper * (1 - k.methaneGas);
  g[go + KEPT.sludgeMethaneGas_PO] = deeper * k.methaneGas;
  g[go + KEPT.sludgeLeak_PO] = (exchange + entrained) / volume + ((deeper * k.methaneGas) / k.gasMethane) * 0.001 * k.entrain * c;
  const perVolume = 1 / volume;
  g[go + KEPT.poreSulfideDiffusion_PS] = ((rise * k.reaction) / oxidised) * perVolume;
  g[go + KEPT.poreSulfideByOxygen_PS] = (rise / oxidised + held * perN) * inO * o2Keeps * perVolume;
  g[go + KEPT.poreSulfideByNitrate_PS] = (rise / oxidised + held * perN) * (inN - inO) * no3Keeps * perVolume;
  g[go + KEPT.poreSulfideGas_PS] = risen * perVolume;
  g[go + KEPT.poreSulfideGasOut_PS] = carried * (1 - k.bubbleSulfide) * perVolume;
}
