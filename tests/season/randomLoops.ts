// Loops and deeds drawn at random: any stages, several of a kind, in any order, on both sides of the pump, with side tanks.
import fc from 'fast-check';
import type { Action, Plan, SideSpec, StageKind, StageSpec } from '../../src/season/plan';
import { referencePlan } from './plans';

const FREE: readonly StageKind[] = ['radialFlowSettler', 'fineFilter', 'degassingTank', 'raftBed'];

const size = fc.double({ min: 0.5, max: 2, noNaN: true });
const stage = fc.tuple(fc.constantFrom(...FREE), size, fc.integer({ min: 0, max: 60 })).map(([kind, times, air]): Omit<StageSpec, 'id'> => {
  switch (kind) {
    case 'radialFlowSettler': return { kind, volume_m3: 0.19 * times };
    case 'fineFilter': return { kind, volume_m3: 0.15 * times };
    case 'degassingTank': return { kind, volume_m3: 0.3 * times, media_m3: 0.1 * times, air_L_min: air };
    default: return { kind, area_m2: 3 * times, depth_m: 0.3, air_L_min: air, crop: { kind: 'lettuce', plants_m2: 24, plantedDay: 0, replant: true } };
  }
});

type Draw = { before: Omit<StageSpec, 'id'>[]; after: Omit<StageSpec, 'id'>[]; flow: number; fishAir: number; sumpFirst: boolean };
const loop = fc.record<Draw>({
  before: fc.array(stage, { maxLength: 4 }), after: fc.array(stage, { maxLength: 2 }),
  flow: fc.double({ min: 0.3, max: 3, noNaN: true }), fishAir: fc.integer({ min: 5, max: 60 }), sumpFirst: fc.boolean(),
}).map(({ before, after, flow, fishAir, sumpFirst }): StageSpec[] => {
  const named = (list: Omit<StageSpec, 'id'>[], side: string): StageSpec[] => list.map((spec, i) => ({ ...spec, id: `${side}${i}` }));
  const sump: StageSpec = { id: 'sump', kind: 'sump', volume_m3: 0.4 };
  const first = named(before, 'before');
  return [
    { id: 'fish', kind: 'fishTank', volume_m3: 1, outlet: 'bottomLift', air_L_min: fishAir },
    ...(sumpFirst ? [sump, ...first] : [...first, sump]), { id: 'pump', kind: 'returnPump', flow_m3_h: flow }, ...named(after, 'after'),
  ];
});

function sidesOf(stages: readonly StageSpec[], mineral: boolean, dosing: 'KHCO3' | 'Ca(OH)2' | null): SideSpec[] {
  const settlers = stages.filter(({ kind }) => kind === 'radialFlowSettler').map(({ id }) => id);
  return [
    ...(mineral && settlers.length > 0 ? [{ id: 'mineral', kind: 'mineralisationTank' as const, volume_m3: 0.2, air_L_min: 20, takes: settlers, returnsTo: 'sump' }] : []),
    ...(dosing ? [{ id: 'base', kind: 'baseDosing' as const, into: 'sump', base: dosing, g_d: 15, targetPH: 7 }] : []),
  ];
}

const deed = (stages: readonly StageSpec[], days: number): fc.Arbitrary<Action> => {
  const when = fc.record({ day: fc.integer({ min: 0, max: days - 1 }), hour: fc.integer({ min: 0, max: 23 }) });
  const wet = stages.filter(({ kind }) => kind !== 'returnPump').map(({ id }) => id);
  const settlers = stages.filter(({ kind }) => kind === 'radialFlowSettler').map(({ id }) => id);
  const filters = stages.filter(({ kind }) => kind === 'fineFilter').map(({ id }) => id);
  const beds = stages.filter(({ kind }) => kind === 'raftBed').map(({ id }) => id);
  const some = (ids: string[]): fc.Arbitrary<string> => fc.constantFrom(...ids);
  return fc.oneof(
    fc.tuple(when, fc.integer({ min: 0, max: 200 })).map(([w, g_d]): Action => ({ ...w, do: 'feed', tank: 'fish', g_d })),
    fc.tuple(when, fc.boolean()).map(([w, on]): Action => ({ ...w, do: 'pump', on })),
    fc.tuple(when, fc.boolean()).map(([w, on]): Action => ({ ...w, do: 'power', on })),
    fc.tuple(when, some(wet), fc.integer({ min: 0, max: 80 })).map(([w, id, L_min]): Action => ({ ...w, do: 'air', stage: id, L_min })),
    fc.tuple(when, some(wet), fc.double({ min: 0, max: 1, noNaN: true })).map(([w, id, fraction]): Action => ({ ...w, do: 'exchange', stage: id, fraction })),
    fc.tuple(when, fc.integer({ min: 0, max: 40 })).map(([w, g_d]): Action => ({ ...w, do: 'base', g_d })),
    fc.tuple(when, some(wet)).map(([w, id]): Action => ({ ...w, do: 'salt', stage: id, g: 50 })),
    fc.tuple(when, fc.integer({ min: 1, max: 30 })).map(([w, number]): Action => ({ ...w, do: 'takeFish', tank: 'fish', number })),
    ...(settlers.length > 0 ? [fc.tuple(when, some(settlers)).map(([w, id]): Action => ({ ...w, do: 'drain', stage: id }))] : []),
    ...(filters.length > 0 ? [fc.tuple(when, some(filters)).map(([w, id]): Action => ({ ...w, do: 'rinse', stage: id }))] : []),
    ...(beds.length > 0 ? [fc.tuple(when, some(beds)).map(([w, id]): Action => ({ ...w, do: 'cut', stage: id }))] : []),
  );
};

/** A whole random season of so many days. */
export const randomPlan = (days: number): fc.Arbitrary<Plan> =>
  fc.tuple(loop, fc.boolean(), fc.constantFrom('KHCO3' as const, 'Ca(OH)2' as const, null), fc.constantFrom('bare' as const, 'seeded' as const, 'mature' as const), fc.integer({ min: 20, max: 120 }), fc.boolean(), fc.nat(9999))
    .chain(([stages, mineral, dosing, biofilm, feed, pinned, seed]) => fc.array(deed(stages, days), { maxLength: 8 }).map((deeds): Plan => {
      const base = referencePlan();
      const settlers = stages.filter(({ kind }) => kind === 'radialFlowSettler').map(({ id }) => id);
      return {
        ...base, days, seed: `random-${seed}`, loop: stages, side: sidesOf(stages, mineral, dosing), start: { water: 'source', biofilm },
        climate: { ...base.climate, water_C: pinned ? 24 : undefined },
        actions: [{ day: 0, do: 'feed', tank: 'fish', g_d: feed }, ...settlers.map((id): Action => ({ every_d: 2, from: 1, hour: 9, do: 'drain', stage: id })), ...deeds],
      };
    }));
