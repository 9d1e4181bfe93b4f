// The kinetic constants at one water temperature, ready for the rate functions. Made once per change of temperature.
import { LN10, exp, pow } from '../../numerics/elementary';
import type { Values } from '../parameters/values';

/**
 * @param values all numbers of the run
 * @param T_C water temperature, °C
 * @returns rates per day and half-saturation constants at that temperature; units as in the parameter records
 */
export function kineticsAt(values: Values, T_C: number) {
  const k = values.kinetics;
  const film = pow(k.nitrifierTheta, T_C - 27.2);
  const capacity = pow(k.filmTheta / k.nitrifierTheta, T_C - 27.2);
  const oxygenRoom = pow(k.oxygenFilmTheta / k.filmTheta, T_C - 27.2);
  const het = pow(k.hetTheta, T_C - 20);
  return {
    aobGrowth: k.aobGrowth * film,
    aobYield: k.aobYield,
    aobDecay: k.aobGrowth * k.aobDecayShare * film,
    aobCapacity: k.aobCapacity * capacity,
    aobTAN: k.aobTAN,
    aobO2: k.aobO2,
    nobGrowth: k.nobGrowth * film,
    nobYield: k.nobYield,
    nobDecay: k.nobGrowth * k.nobDecayShare * film,
    nobCapacity: k.nobCapacity * capacity,
    nobNO2: k.nobNO2,
    nobO2: k.nobO2,
    nobFreeAmmonia: k.nobFreeAmmonia,
    oxygenRoom,
    lowH: exp(LN10 * (3 - k.nitrifierLowPH)),
    highH: exp(LN10 * (3 - k.nitrifierHighPH)),
    alkalinity: k.nitrifierAlkalinity,
    nitrifierAtBest: k.nitrifierAtBest,
    nitrifierCarbon: k.nitrifierCarbon,
    hetGrowth: k.hetGrowth * het,
    hetYield: k.hetYield,
    hetDecay: k.hetDecay * het,
    hetSubstrate: k.hetSubstrate,
    hetO2: k.hetO2,
    hetNO3: k.hetNO3,
    hetAnoxic: k.hetAnoxic,
    hetTAN: k.hetTAN,
    hetCapacity: k.hetCapacity,
    hetShading: k.hetShading,
    filmTransfer: k.filmTransfer,
    smothering: k.smothering,
    sloughP: k.sloughP,
    sloughS: k.sloughS,
    sloughO2: k.sloughO2,
    oxidationO2: k.oxidationO2,
    sulfideFilm: k.sulfideFilm * het,
    sulfideWater: k.sulfideWater * het,
    methaneFilm: k.methaneFilm * het,
    hydrolysisFast: k.hydrolysisFast * het,
    hydrolysisSlow: k.hydrolysisSlow * het,
    hydrolysisAnaerobic: k.hydrolysisAnaerobic,
    clumpAnoxic: k.clumpAnoxic,
    clumpHalf: k.clumpHalf,
    hydrolysisO2: k.hydrolysisO2,
    clumpNO3: k.hetNO3 * k.clumpNO3,
    diffusion: k.sludgeDiffusion,
    demand: k.sludgeDemand * het,
    half: k.sludgeHalf,
    anoxic: k.sludgeAnoxic,
    sulfate: k.sludgeSulfate,
    sulfateHalf: k.sludgeSulfateHalf,
    sludgeO2: k.sludgeO2,
    sludgeNO3: k.sludgeNO3,
    gasMethane: k.gasMethane,
    skin: k.skin,
    sulfideSkin: k.sulfideSkin,
    bubbleHenry: k.bubbleHenry,
    poreUnionised: k.poreUnionised,
    methane: k.sludgeMethane,
    methaneGas: k.methaneBubbles,
    reaction: k.sulfideReaction,
    gasReaction: k.gasReaction,
    bubbleSulfide: k.bubbleSulfide,
    entrain: k.bubbleEntrain,
    rootHalf: k.rootHalf,
    rootRelax: 1 / k.rootRelax,
    rootO2: k.rootO2Half * k.rootO2Half * k.rootO2Half,
    rootSulfide: k.rootSulfide,
    storeShort: k.storeShort,
    unclog: values.stages.unclog,
    organicDry: values.matter.organicDry,
    inertDry: values.matter.inertDry,
    rootDisease: k.rootDisease,
    freeBacteriaTurnover: k.freeBacteriaTurnover * het,
    freeBacteriaOrganics: k.freeBacteriaOrganics,
    freeBacteriaFines: k.freeBacteriaFines,
    freeBacteriaMost: k.freeBacteriaMost,
    freeBacteriaFood: k.freeBacteriaFood,
    ironLoss: k.ironLoss,
    ironHighH: exp(LN10 * (3 - k.ironHighPH)),
    ironLoosest: k.ironLoosest,
  };
}

export type Kinetics = ReturnType<typeof kineticsAt>;
