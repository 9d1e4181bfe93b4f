// Headline rows of the published checks that are lived through: films, sludge, fish, crops, the commercial raft system.
import { FISH, O2, TAN } from '../../src/model/components';
import { RECORDED, valuesWith } from '../../src/catalogue/values';
import { designOf } from '../../src/season/design';
import { keptPlan } from '../season/plans';
import { standingAt } from './bench';
import { perKilogram } from './feedCases';
import { fallWith, filmRate, fit, perDegree, withOrganics } from './filmCases';
import {
  afterAirFailure,
  alive,
  comfortable,
  eatenAt,
  gainInAmmonia,
  gainInNitrate,
  growthCoefficient,
  grownTo,
  troutRation,
} from './fishCases';
import { loads } from './loadCases';
import { lettuceByLight, lettuceGrown, uptake } from './plantCases';
import { liveRafts, PUBLISHED_FEED, RAFT_AREA } from './raftSystem';
import { jar, kept, week } from './settlerCases';
import { ripening } from './startCases';
import type { Check } from './tableChemistry';

const shareLeft = (release: readonly number[]): number => 100 * (1 - release[0] / release[6]);

export function films(): Check[] {
  const start = ripening('bare', 25);
  const cool = ripening('bare', 20);
  return [
    { source: 'Zhu & Chen 1999', quantity: 'film at 2 mg/L TAN, 27.2 °C, g N/m²/d', expected: fit(2), ours: filmRate(2), share: 0.15 },
    {
      source: 'Zhu & Chen 2002',
      quantity: 'rise with warmth, ammonia scarce, %/°C',
      expected: 4.275,
      ours: 100 * perDegree(2.5, () => 8),
      share: 0.25,
    },
    {
      source: 'Zhu & Chen 2002',
      quantity: 'rise with warmth, oxygen scarce, %/°C',
      expected: 1.108,
      ours: 100 * perDegree(10.6, () => 2),
      share: 0.25,
    },
    {
      source: 'Ling & Chen 2005',
      quantity: 'loss at COD/N 3 given, %',
      expected: 65,
      ours: 100 * fallWith(withOrganics(0), 3).fall,
      within: 11,
    },
    {
      source: 'FAO 589 App. 4',
      quantity: 'film at 1 mg/L TAN, 25 °C, g NH3/m²/d',
      expected: 0.57,
      ours: (filmRate(1, 25) * 17) / 14,
      share: 0.35,
    },
    { source: 'Start-up, FAO 589', quantity: 'ripe at 25 °C, d', expected: 32.5, ours: start.ripe, within: 7.5 },
    { source: 'Start-up, SRAC 452', quantity: 'ammonia peak at 25 °C, d', expected: 13, ours: start.ammonia, share: 1 / 3 },
    {
      source: 'Start-up, SRAC 452',
      quantity: 'nitrite peak, mean of 20 and 25 °C, d',
      expected: 28,
      ours: (start.nitrite + cool.nitrite) / 2,
      share: 1 / 3,
    },
  ];
}

export function sludge(): Check[] {
  const released = week(20);
  const [with40, without] = [jar(40), jar(0)];
  return [
    {
      source: 'Davidson & Summerfelt 2005',
      quantity: 'radial-flow settler keeps, %',
      expected: 77.9,
      ours: 100 * kept('radialFlowSettler'),
      within: 5,
    },
    {
      source: 'Davidson & Summerfelt 2005',
      quantity: 'swirl separator keeps, %',
      expected: 37.1,
      ours: 100 * kept('swirlSeparator'),
      within: 5,
    },
    {
      source: 'Stewart et al. 2006',
      quantity: 'P kept back by daily cleaning, %',
      expected: 66,
      ours: shareLeft(released.phosphorus),
      within: 8,
    },
    { source: 'Stewart et al. 2006', quantity: 'TAN kept back, %', expected: 39, ours: shareLeft(released.ammonia), within: 8 },
    {
      source: 'Stewart et al. 2006',
      quantity: 'organics kept back (in the water), %',
      expected: 51,
      ours: shareLeft(released.organics),
      within: 8,
    },
    {
      source: 'Fish farm notes 2022–23',
      quantity: 'sulfide while nitrate lasts, share of without',
      expected: 0,
      ours: with40[4].sulfide / without[4].sulfide,
      within: 1 / 3,
    },
  ];
}

/** Minutes from 6 to 2 mg/L at 20 kg/m³, by the first hour's rate at 5 kg/m³. @param fed share of body mass a day */
function minutesLeft(fed: number): number {
  const [before, after] = afterAirFailure(5, fed * 5000);
  return (60 * 4) / (((before - after) / 5) * 20);
}

export function fish(): Check[] {
  const gives = perKilogram('tilapia');
  const { matter } = valuesWith();
  const [none, little, half, all] = [0, 0.06, 0.73, 1.46].map((dose) => gainInAmmonia(dose).gain);
  const ammonia = { pH: 8, O2_mg_L: 7 };
  const midway = standingAt({ ...ammonia, TAN_mgN_L: 30 }, { T_C: comfortable('tilapia'), O2_mg_L: 7 }, (water) => water.NH3, 2.45);
  const load = loads(matter);
  return [
    {
      source: 'Timmons & Ebeling',
      quantity: 'TAN of a kg of feed, tilapia, g',
      expected: 1000 * (matter.feedN / 0.16) * 0.092,
      ours: gives(TAN),
      share: 0.35,
    },
    { source: 'Timmons & Ebeling', quantity: 'O2 of a kg of feed, fish alone, kg', expected: 0.25, ours: -gives(O2) / 1000, share: 0.5 },
    {
      source: 'Montanhini Neto & Ostrensky 2015',
      quantity: 'N retained, %',
      expected: 43.25,
      ours: (100 * gives(FISH) * matter.fishN) / (1000 * matter.feedN),
      share: 0.25,
    },
    {
      source: 'Montanhini Neto & Ostrensky 2015',
      quantity: 'P retained, %',
      expected: 34.07,
      ours: (100 * gives(FISH) * matter.fishP) / (1000 * matter.feedP),
      share: 0.5,
    },
    { source: 'Boyd & Queiroz', quantity: 'N let go per t of feed, kg', expected: 36.2, ours: load.N, share: 0.1 },
    { source: 'Boyd & Queiroz', quantity: 'P let go per t of feed, kg', expected: 5.4, ours: load.P, share: 0.1 },
    {
      source: 'Abdalla & McNabb 1998',
      quantity: 'growth lost at 0.06 mg/L NH3-N, %',
      expected: 0,
      ours: 100 * (1 - little / none),
      within: 2,
    },
    { source: 'Abdalla & McNabb 1998', quantity: 'growth lost at 0.73, %', expected: 50, ours: 100 * (1 - half / none), within: 15 },
    { source: 'Abdalla & McNabb 1998', quantity: 'growth lost at 1.46, %', expected: 100, ours: 100 * (1 - all / none), within: 5 },
    {
      source: 'Abdalla & McNabb 1998',
      quantity: 'alive after 96 h at 2.45 mg/L NH3-N, %',
      expected: 50,
      ours: 100 * alive('tilapia', { ...ammonia, TAN_mgN_L: midway }, 4),
      within: 5,
    },
    {
      source: 'Wang et al. 2006',
      quantity: 'alive after 96 h at 28.2 NO2-N, 35 Cl, %',
      expected: 50,
      ours: 100 * alive('tilapia', { pH: 7.5, O2_mg_L: 7, NO2_mgN_L: 28.18, Cl_mg_L: 35 }, 4),
      within: 5,
    },
    {
      source: 'Monsees et al. 2017',
      quantity: 'growth lost at 500 mg/L NO3-N, %',
      expected: 0,
      ours: 100 * (1 - gainInNitrate(500).gain / gainInNitrate(0).gain),
      within: 2,
    },
    {
      source: 'Torrans 2010',
      quantity: 'catfish eat less at 1.7 mg/L O2, %',
      expected: 45,
      ours: 100 * (1 - eatenAt('channelCatfish', 1.7) / eatenAt('channelCatfish', 8)),
      within: 5,
    },
    {
      source: 'Rakocy et al. 2004',
      quantity: 'tilapia growth coefficient ×1000',
      expected: 1.07,
      ours: 10 * growthCoefficient(79, grownTo({ species: 'tilapia', from_g: 79, T_C: 28, days: 168 }), 168 * 28),
      share: 0.15,
    },
    {
      source: 'Leitritz & Lewis 1980',
      quantity: 'trout of 76 g at 10 °C eat, % of mass a day',
      expected: 1.2,
      ours: troutRation(10, 76),
      share: 0.2,
    },
    {
      source: 'Feed maker, farms',
      quantity: 'trout growth coefficient at 11 °C',
      expected: 0.165,
      ours: growthCoefficient(10, grownTo({ species: 'rainbowTrout', from_g: 10, T_C: 11, days: 200 }), 2200),
      within: 0.035,
    },
    { source: 'Ali 1999', quantity: 'min from 6 to 2 mg/L O2, 20 kg/m³, fasting', expected: 53, ours: minutesLeft(0), share: 0.3 },
    { source: 'Ali 1999', quantity: 'the same, fed 1 %/d (27–41)', expected: 34, ours: minutesLeft(0.01), within: 7 },
    { source: 'Ali 1999', quantity: 'the same, fed 2 %/d (27–41)', expected: 34, ours: minutesLeft(0.02), within: 7 },
  ];
}

export function crops(): Check[] {
  const tomato = uptake({ kind: 'tomato', plants_m2: 4, days: 150, pH: 6.5, O2_mg_L: 7, T_C: 23, light_mol_m2_d: 20 }, 60);
  const leaf = (change: Parameters<typeof lettuceGrown>[0]): number => lettuceGrown(change).leaf;
  return [
    {
      source: 'Goto et al. 1996',
      quantity: 'lettuce at 2.1 against 8.4 mg/L O2',
      expected: 1,
      ours: leaf({ O2_mg_L: 2.1 }) / leaf({ O2_mg_L: 8.4 }),
      share: 0.05,
    },
    {
      source: 'Yoshida et al. 1997',
      quantity: 'lettuce at 3.2 against 6.4 mg/L O2, 7 d',
      expected: 1,
      ours: leaf({ O2_mg_L: 3.2, days: 7 }) / leaf({ O2_mg_L: 6.4, days: 7 }),
      share: 0.02,
    },
    {
      source: 'van Henten 1994',
      quantity: 'lettuce after 35 d at 17 mol/m²/d, g dry/m²',
      expected: 335,
      ours: lettuceByLight(17),
      share: 0.1,
    },
    {
      source: 'Cornell handbook',
      quantity: 'a head then, 38 plants/m², g fresh',
      expected: 150,
      ours: lettuceByLight(17) / 38 / valuesWith().crops.lettuce.dryShare,
      share: 0.1,
    },
    {
      source: 'Anderson et al. 2017',
      quantity: 'lettuce lost at pH 7.0, 35 d, % dry',
      expected: 18,
      ours: 100 * (1 - leaf({ pH: 7, days: 35, T_C: 22 }) / leaf({ pH: 5.8, days: 35, T_C: 22 })),
      within: 5,
    },
    { source: 'Graber & Junge 2009', quantity: 'tomato N, whole plant, g/m²/d', expected: 0.43 / 0.69, ours: tomato.N, factor: 2 },
    { source: 'Graber & Junge 2009', quantity: 'tomato P/N (0.163–0.212)', expected: 0.187, ours: tomato.P / tomato.N, within: 0.0245 },
    { source: 'Graber & Junge 2009', quantity: 'tomato K/N (0.93–1.54)', expected: 1.235, ours: tomato.K / tomato.N, within: 0.305 },
  ];
}

/** How many of N, P, K, Ca, Fe leave the basil's stores under half full after seven weeks at a feed, g/m²/d. */
const shortOf = (g_m2_d: number): number =>
  liveRafts((g_m2_d * RAFT_AREA) / 1000 / PUBLISHED_FEED, 49).stores.filter((store) => store < 0.5).length;

export function rafts(): Check[] {
  const retention = (id: string): number =>
    designOf(keptPlan('commercial-raft'), RECORDED).stages.find((stage) => stage.id === id)?.retention_min ?? NaN;
  const lived = liveRafts(0.9, 170);
  const source = 'UVI raft system';
  const at = `${source}, 17.4 kg/d`;
  return [
    { source, quantity: 'retention in the fish tanks, h', expected: 1.37, ours: retention('fish') / 60, share: 0.02 },
    { source, quantity: 'retention in the clarifiers, min', expected: 20, ours: retention('clarifiers'), share: 0.02 },
    { source, quantity: 'retention in the rafts, h', expected: 2.98, ours: retention('rafts') / 60, share: 0.02 },
    { source: at, quantity: 'harvest, kg/m³', expected: 61.5, ours: lived.kg_m3, share: 0.15 },
    { source: at, quantity: 'mass at harvest, g', expected: 813.8, ours: lived.mass_g, share: 0.15 },
    { source: at, quantity: 'survival, %', expected: 98.3, ours: 100 * lived.survival, within: 3 },
    { source: at, quantity: 'feed per gain', expected: 1.7, ours: lived.FCR, share: 0.15 },
    { source: at, quantity: 'TAN, mg/L', expected: 2.2, ours: lived.mean('fish', 'TAN_mgN_L'), factor: 2 },
    { source: at, quantity: 'NO2-N, mg/L', expected: 0.7, ours: lived.mean('fish', 'NO2_mgN_L'), factor: 2 },
    { source: at, quantity: 'NO3-N, mg/L', expected: 42, ours: lived.mean('fish', 'NO3_mgN_L'), factor: 2 },
    { source: at, quantity: 'PO4-P, mg/L', expected: 8.2, ours: lived.mean('fish', 'PO4_mgP_L'), factor: 2 },
    { source: at, quantity: 'K, mg/L', expected: 45, ours: lived.mean('fish', 'K_mg_L'), factor: 2 },
    { source: at, quantity: 'Mg, mg/L', expected: 6.5, ours: lived.mean('fish', 'Mg_mg_L'), factor: 2 },
    { source: at, quantity: 'Ca, mg/L', expected: 12, ours: lived.mean('fish', 'Ca_mg_L'), factor: 2 },
    { source: at, quantity: 'TAN taken by rafts, g/m²/d', expected: 0.56, ours: lived.removed.ammonia, factor: 2 },
    { source: at, quantity: 'dissolved N taken by rafts, g/m²/d', expected: 0.83, ours: lived.removed.nitrogen, factor: 2 },
    { source: at, quantity: 'P taken by rafts, g/m²/d', expected: 0.17, ours: lived.removed.phosphorus, factor: 2 },
    { source: at, quantity: 'water drawn, % of the system a day', expected: 1.5, ours: 100 * lived.drawn, share: 0.2 },
    { source: at, quantity: 'basil, kg/m² a year', expected: 25, ours: lived.crop_kg_m2_yr, share: 0.25 },
    {
      source: `${source}, all feed`,
      quantity: 'TAN, mean of days 42–63, mg/L',
      expected: 2.2,
      ours: liveRafts(1, 63).mean('fish', 'TAN_mgN_L'),
      factor: 2,
    },
    {
      source: 'UVI basil',
      quantity: 'nutrients short at 81.4 g/m²/d (stores under half), at least',
      expected: 1,
      ours: shortOf(81.4),
      within: 0,
    },
    { source: 'UVI basil', quantity: 'nutrients short at 99.6 g/m²/d', expected: 0, ours: shortOf(99.6), within: 0 },
  ];
}
