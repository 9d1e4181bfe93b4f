// Deeds drawn at random: everything a person can do to a loop, on stages that can have it done to them.
import fc from 'fast-check';
import { BASES } from '../../src/model/processes/dosing';
import { stageType } from '../../src/catalogue/stageTypes';
import type { StageType } from '../../src/model/stages/stageType';
import type { Action, CropKind, Deed, SideSpec, SpeciesKind, StageSpec, When } from '../../src/season/plan';

/** To three decimals: sizes and settings as a person writes them, and no amounts near 1e-300. */
const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: Math.round(min * 1000), max: Math.round(max * 1000) }).map((thousandths) => thousandths / 1000);
const whole = (min: number, max: number): fc.Arbitrary<number> => fc.integer({ min, max });

const idsOf = (stages: readonly StageSpec[], able: (type: StageType) => boolean): string[] =>
  stages.filter(({ kind }) => able(stageType(kind))).map(({ id }) => id);

/** One deed at any time, or one repeated. */
export function randomDeed(
  stages: readonly StageSpec[],
  sides: readonly SideSpec[],
  days: number,
  crops: readonly CropKind[],
  species: readonly SpeciesKind[],
): fc.Arbitrary<Action> {
  const wet = [
    ...idsOf(stages, ({ cells }) => cells > 0),
    ...sides.filter(({ kind }) => kind === 'mineralisationTank').map(({ id }) => id),
  ];
  const inLoop = idsOf(stages, ({ cells }) => cells > 0);
  const at = (ids: string[]): fc.Arbitrary<string> => fc.constantFrom(...ids);
  const tank = 'fish';
  const deeds: fc.Arbitrary<Deed>[] = [
    fc.record({
      do: fc.constant('feed' as const),
      tank: fc.constant(tank),
      g_d: whole(0, 600),
      meals_h: fc.uniqueArray(whole(0, 23), { minLength: 1, maxLength: 4 }),
    }),
    fc.record({ do: fc.constant('air' as const), stage: at(wet), L_min: whole(0, 80) }),
    fc.record({ do: fc.constant('pump' as const), on: fc.boolean() }),
    fc.record({ do: fc.constant('power' as const), on: fc.boolean() }),
    fc.record({ do: fc.constant('flow' as const), flow_m3_h: between(0, 5) }),
    fc.record({ do: fc.constant('singleDose' as const), stage: at(wet), base: fc.constantFrom(...BASES), g: whole(0, 60) }),
    fc.record({ do: fc.constant('salt' as const), stage: at(wet), g: whole(0, 500) }),
    fc.record({ do: fc.constant('iron' as const), stage: at(wet), g: between(0, 5) }),
    fc.record({ do: fc.constant('exchange' as const), stage: at(wet), fraction: between(0, 1) }),
    fc.record({ do: fc.constant('topUp' as const), stage: at(inLoop), L: whole(0, 200) }),
    fc.record({ do: fc.constant('heater' as const), power_W: whole(0, 2000), target_C: whole(10, 32) }),
    fc.record({ do: fc.constant('light' as const), mol_m2_d: between(0, 40) }),
    fc.record({
      do: fc.constant('stock' as const),
      tank: fc.constant(tank),
      species: fc.constantFrom(...species),
      number: whole(1, 40),
      mass_g: whole(5, 300),
    }),
    fc.record({ do: fc.constant('takeFish' as const), tank: fc.constant(tank), number: whole(1, 60) }),
  ];
  if (sides.some(({ kind }) => kind === 'baseDosing'))
    deeds.push(
      fc.record({ do: fc.constant('base' as const), g_d: whole(0, 60), base: fc.constantFrom(...BASES), targetPH: between(6, 8.5) }),
    );
  const some = (ids: string[], make: (stage: fc.Arbitrary<string>) => fc.Arbitrary<Deed>): void => {
    if (ids.length > 0) deeds.push(make(at(ids)));
  };
  some([...idsOf(stages, ({ drains }) => drains === true), ...wet.filter((id) => id === 'mineral')], (stage) =>
    fc.record({ do: fc.constant('drain' as const), stage }),
  );
  some(
    idsOf(stages, ({ cleanedBy }) => cleanedBy?.deed === 'rinse'),
    (stage) => fc.record({ do: fc.constant('rinse' as const), stage }),
  );
  some(
    idsOf(stages, ({ cleanedBy }) => cleanedBy?.deed === 'backwash'),
    (stage) => fc.record({ do: fc.constant('backwash' as const), stage }),
  );
  some(
    idsOf(stages, ({ controls }) => controls.includes('lamp')),
    (stage) => fc.record({ do: fc.constant('setting' as const), stage, lamp_W: whole(0, 120) }),
  );
  some(
    idsOf(stages, ({ grows }) => grows === true),
    (stage) => fc.record({ do: fc.constant('harvest' as const), stage }),
  );
  some(
    idsOf(stages, ({ grows }) => grows === true),
    (stage) =>
      fc.record({
        do: fc.constant('plant' as const),
        stage,
        crop: fc.constantFrom(...crops),
        plants_m2: whole(4, 60),
        replant: fc.boolean(),
      }),
  );
  return fc.tuple(whenIn(days), fc.oneof(...deeds)).map(([when, deed]): Action => ({ ...when, ...deed }));
}

const whenIn = (days: number): fc.Arbitrary<When> => {
  const once = fc.record({ day: whole(0, days - 1), hour: whole(0, 23) });
  const again = fc.record({ every_d: whole(2, 30), from: whole(0, days - 1), hour: whole(0, 23) });
  return fc.oneof({ weight: 4, arbitrary: once }, { weight: 1, arbitrary: again });
};

/** The usual chores: cones drained every other day, filters cleaned every third. */
export const upkeep = (stages: readonly StageSpec[]): Action[] =>
  stages.flatMap(({ id, kind }): Action[] => {
    const { drains, cleanedBy } = stageType(kind);
    return [
      ...(drains ? [{ every_d: 2, from: 1, hour: 9, do: 'drain' as const, stage: id }] : []),
      ...(cleanedBy && !cleanedBy.byItself ? [{ every_d: 3, from: 3, hour: 9, do: cleanedBy.deed, stage: id }] : []),
    ];
  });
