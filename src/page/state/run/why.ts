// Why the water of a stage is as it is: of all that happened there in the last whole day, what moved the loop most, with its numbers. Pure.
import { can } from '../common/kinds';
import type { Limit, ProcessFacts, WaterQuantity } from '../../../worker/messages';
import type { CropKind, Plan } from '../../../season/plan';
import { daySums, heldBackBy, lastWholeDay, type DaySums } from './daySums';
import type { TintId, SeasonView } from '../common/state';

export type WhyTopic =
  | 'nitrifiers'
  | 'fish'
  | 'hungryFish'
  | 'airIn'
  | 'airOut'
  | 'airInOnly'
  | 'airOutOnly'
  | 'oxygenLost'
  | 'heterotrophs'
  | 'denitrified'
  | 'rotted'
  | 'sulfideMade'
  | 'sulfideGone'
  | 'settled'
  | 'caught'
  | 'caughtByRoots'
  | 'stirred'
  | 'broken'
  | 'plants'
  | 'gas'
  | 'dosed'
  | 'lamp';

/** One thing that happened. Amounts are g unless the topic says otherwise; weight ranks it among the others. */
export interface Why {
  topic: WhyTopic;
  weight: number;
  amounts: Readonly<Record<string, number>>;
  heldBack: { by: Limit['by'] | 'roots'; variable: string; reading: number } | null;
}

const FISH = ['fishGrowth', 'fishExpenditure', 'fishBasal'];
const PARTS = ['Fast', 'Slow', 'Inert'];
const SIZES = ['Coarse', 'Fine', 'Superfine'];
const settle = SIZES.flatMap((size) => PARTS.map((part) => `settle${size}${part}`));
const catches = SIZES.flatMap((size) => PARTS.map((part) => `catch${size}${part}`));
const movedUp = PARTS.flatMap((part) => [`stir${part}`, `release${part}`]);
const shears = PARTS.map((part) => `shear${part}`);
const rots = [...SIZES, 'Caught', 'Sludge']
  .flatMap((where) => [`hydrolysis${where}Fast`, `hydrolysis${where}Slow`])
  .concat('clumpDenitrificationFast', 'clumpDenitrificationSlow');
const SULFIDE_IN = [
  'poreSulfideDiffusion',
  'poreSulfideGas',
  'hydrolysisCaughtFast',
  'hydrolysisCaughtSlow',
  'clumpDenitrificationFast',
  'clumpDenitrificationSlow',
];
const ANOXIC = ['heterotrophsAnoxic', 'sludgeAnoxic', 'poreSulfideByNitrate', 'clumpDenitrificationFast', 'clumpDenitrificationSlow'];
const DOSES = [
  'doseCalciumHydroxide',
  'dosePotassiumHydroxide',
  'doseCalciumCarbonate',
  'dosePotassiumCarbonate',
  'doseSodiumBicarbonate',
  'dosePotassiumBicarbonate',
];
/** How much of a quantity, spread over all water of the loop, is worth a sentence: mg/L in a day (meq/L for alkalinity). */
const NOTABLE: Readonly<Record<WaterQuantity, number>> = {
  ammonia: 0.1,
  nitrite: 0.1,
  nitrate: 0.5,
  oxygen: 2,
  carbonDioxide: 4,
  sulfide: 0.002,
  alkalinity: 0.05,
  organics: 3,
  solids: 2,
  coarse: 2,
  fine: 2,
};
/**
 * g of dry leaf grown in a day for each m³ of the loop's water that is worth a sentence; half of it where something holds the plants back
 */
const NOTABLE_LEAF = 1;
/** The quantity that a person looks at counts for more. */
const LOOKED_AT = 2;
const OF_TINT: Readonly<Record<TintId, readonly WaterQuantity[]>> = {
  ammonia: ['ammonia'],
  nitrite: ['nitrite'],
  nitrate: ['nitrate'],
  oxygen: ['oxygen'],
  carbonDioxide: ['carbonDioxide'],
  hydrogenSulfide: ['sulfide'],
  solids: ['solids', 'coarse', 'fine'],
  pH: ['alkalinity', 'carbonDioxide'],
};
/** Below this weight nothing happened that is worth telling. */
const LEAST = 0.3;
const MOST_TOLD = 3;

/** All that happened, unranked. @param per weight of so many g (eq) of a quantity @param perWater an amount for each m³ of the loop */
function topicsOf(
  sums: DaySums,
  facts: ProcessFacts,
  crop: CropKind | null,
  per: (quantity: WaterQuantity, amount: number) => number,
  perWater: (amount: number) => number,
): Why[] {
  const all: Why[] = [];
  const tell = (topic: WhyTopic, weights: readonly number[], amounts: Why['amounts'], heldBack: Why['heldBack'] = null): void => {
    all.push({ topic, weight: Math.max(...weights), amounts, heldBack });
  };
  const { extent, effect } = sums;

  const oxidised = extent(['nitritation']);
  const further = extent(['nitriteOxidation']);
  const alkalinity = -effect(['nitritation', 'nitriteOxidation'], 'alkalinity');
  tell(
    'nitrifiers',
    [per('ammonia', oxidised), per('nitrite', Math.abs(oxidised - further)), per('alkalinity', alkalinity)],
    { ammonia: oxidised, nitrite: further, oxygen: -effect(['nitritation', 'nitriteOxidation'], 'oxygen'), alkalinity },
    heldBackBy(sums, facts.limits['nitritation']),
  );

  const digested = extent(['fishGrowth', 'fishExpenditure']);
  const burned = extent(['fishBasal']);
  const [fishAmmonia, fishOxygen] = [effect(FISH, 'ammonia'), -effect(FISH, 'oxygen')];
  tell(digested >= burned ? 'fish' : 'hungryFish', [per('ammonia', fishAmmonia), per('oxygen', fishOxygen)], {
    feed: digested,
    flesh: burned,
    ammonia: fishAmmonia,
    oxygen: fishOxygen,
  });

  const oxygen = effect(['oxygenTransfer'], 'oxygen');
  const dioxide = -effect(['carbonDioxideTransfer'], 'carbonDioxide');
  const worth = (weight: number): boolean => weight >= LEAST;
  const [byOxygen, byDioxide] = [per('oxygen', Math.abs(oxygen)), per('carbonDioxide', dioxide)];
  if (oxygen < 0) tell(worth(byDioxide) ? 'airOut' : 'oxygenLost', [byOxygen, byDioxide], { oxygen: -oxygen, carbonDioxide: dioxide });
  else if (worth(byOxygen) && worth(byDioxide)) tell('airIn', [byOxygen, byDioxide], { oxygen, carbonDioxide: dioxide });
  else tell(worth(byOxygen) ? 'airInOnly' : 'airOutOnly', [byOxygen, byDioxide], { oxygen, carbonDioxide: dioxide });

  const others = ['heterotrophsAerobic', 'sludgeAerobic'];
  const breathed = -effect(others, 'oxygen');
  tell(
    'heterotrophs',
    [per('oxygen', breathed)],
    { organics: extent(others), oxygen: breathed },
    heldBackBy(
      sums,
      facts.limits['heterotrophsAerobic']?.filter(({ by }) => by === 'oxygen'),
    ),
  );
  const gone = -effect(ANOXIC, 'nitrate');
  tell('denitrified', [per('nitrate', gone)], { nitrate: gone });
  const rotted = effect(rots, 'ammonia');
  tell('rotted', [per('ammonia', rotted)], { ammonia: rotted });

  const sulfide = effect(SULFIDE_IN, 'sulfide');
  tell('sulfideMade', [per('sulfide', sulfide)], { sulfide });
  const [burnt, aired] = [extent(['sulfideOxidation']), extent(['hydrogenSulfideTransfer'])];
  tell('sulfideGone', [per('sulfide', burnt + aired)], { oxidised: burnt, aired });

  const settled = -effect(settle, 'solids');
  tell('settled', [per('solids', settled)], { solids: settled });
  const caught = -effect(catches, 'solids');
  tell(can(sums.kind, 'grows') ? 'caughtByRoots' : 'caught', [per('solids', caught)], { solids: caught });
  const stirred = effect(movedUp, 'solids');
  tell('stirred', [per('solids', stirred)], { solids: stirred });
  const broken = -effect(shears, 'coarse');
  tell('broken', [per('coarse', broken)], { solids: broken });

  if (can(sums.kind, 'grows')) {
    const nitrogen = extent(['uptakeNitrate', 'uptakeAmmonium']);
    const leaf = extent(['leafGrowth']);
    const heldBack = plantsHeldBack(sums, facts, crop);
    tell(
      'plants',
      [per('nitrate', nitrogen), perWater(leaf) / (heldBack === null ? NOTABLE_LEAF : NOTABLE_LEAF / 2)],
      { nitrogen, leaf },
      heldBack,
    );
  }
  const gas = sums.mean('gas_L_d');
  tell('gas', [gas], { gas });
  const dosed = extent(DOSES);
  tell('dosed', [per('alkalinity', effect(DOSES, 'alkalinity'))], { base: dosed, alkalinity: effect(DOSES, 'alkalinity') });
  const killed = extent(['freeBacteriaKill']);
  const passed = killed + sums.mean('freeBacteria') * sums.mean('flow_m3_d');
  const share = passed > 0 ? killed / passed : 0;
  tell('lamp', [4 * share], { share });
  return all;
}

/** Sick roots first; then the nutrient that is nearest to running out, where a store of the crop runs low. */
function plantsHeldBack(sums: DaySums, facts: ProcessFacts, crop: CropKind | null): Why['heldBack'] {
  const health = sums.mean('rootHealth');
  const store = sums.mean('leafStore');
  if (health < 0.8 && health <= store + 0.5) return { by: 'roots', variable: 'rootHealth', reading: health };
  return store < 0.3 ? heldBackBy(sums, crop === null ? undefined : facts.crops[crop]) : null;
}

/**
 * The two or three things that moved the water most, largest first; none where nothing happened.
 * @param tint the quantity a person looks at
 */
export function whyAt(view: SeasonView, facts: ProcessFacts, plan: Plan, stageId: string, now_h: number, tint: TintId): Why[] {
  const sums = daySums(view, facts, stageId, lastWholeDay(now_h));
  if (sums === null) return [];
  const water_m3 = view.stages.reduce((sum, stage) => sum + stage.volume_m3, 0);
  const per = (quantity: WaterQuantity, amount: number): number =>
    ((OF_TINT[tint].includes(quantity) ? LOOKED_AT : 1) * amount) / (NOTABLE[quantity] * water_m3);
  const crop = plan.loop.find((stage) => stage.id === stageId)?.crop?.kind ?? null;
  return topicsOf(sums, facts, crop, per, (amount) => amount / water_m3)
    .filter((why) => why.weight >= LEAST)
    .sort((a, b) => b.weight - a.weight)
    .slice(0, MOST_TOLD);
}
