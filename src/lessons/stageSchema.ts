// What a stage of the loop or at its side may hold when it comes from outside, kind by kind.
// Sizes left out take those of the stage's file in model/stages; air left out is no air.
import { z } from 'zod';
import { stageType } from '../model/stages/catalogue';
import { choiceError, exactly, idField, listOf, numberFrom, oneOf, strict, wholeFrom, yesNo } from './fields';

/** Named by the plan format, computed by a later version of the model. */
export const LATER_KINDS = ['coneSettler', 'swirlSeparator', 'screenFilter', 'movingBed', 'tricklingFilter', 'filmChannel', 'mediaBed', 'tower', 'beadFilter', 'sandFilter', 'cartridgeFilter', 'uvUnit'] as const;

// 10 mL, a bench vessel, to a thousand cubic metres, a large hall.
const volume = (kind: string) => numberFrom(0.00001, 1000, 'm³').default(stageType(kind).defaults.volume_m3 ?? 1);
const air = () => numberFrom(0, 10000, 'L/min').default(0);
const common = { count: wholeFrom(1, 64, 'units').default(1) };
const tank = { air_L_min: air(), media_m3: numberFrom(0, 1000, 'm³').default(0) };

export const cropSchema = strict({
  kind: oneOf(['lettuce']),
  plants_m2: numberFrom(0.1, 400, 'plants/m²').default(24),
  plantedDay: wholeFrom(0, 1000, '').default(0),
  replant: yesNo().default(true),
});

const fishTank = strict({ id: idField(), kind: exactly('fishTank'), volume_m3: volume('fishTank'), outlet: oneOf(['bottomLift', 'surface']).default('bottomLift'), ...tank, ...common });
const radialFlowSettler = strict({ id: idField(), kind: exactly('radialFlowSettler'), volume_m3: volume('radialFlowSettler'), ...tank, ...common });
const fineFilter = strict({ id: idField(), kind: exactly('fineFilter'), volume_m3: volume('fineFilter'), ...tank, ...common });
const degassingTank = strict({ id: idField(), kind: exactly('degassingTank'), volume_m3: volume('degassingTank'), ...tank, ...common });
const sump = strict({ id: idField(), kind: exactly('sump'), volume_m3: volume('sump'), ...tank, ...common });
const bed = stageType('raftBed').defaults;
const raftBed = strict({
  id: idField(), kind: exactly('raftBed'),
  area_m2: numberFrom(0.001, 10000, 'm²').default(bed.area_m2 ?? 1), depth_m: numberFrom(0.01, 2, 'm').default(bed.depth_m ?? 0.3),
  crop: cropSchema.optional(), ...tank, ...common,
});
const returnPump = strict({ id: idField(), kind: exactly('returnPump'), flow_m3_h: numberFrom(0, 1000, 'm³/h').default(1), ...common });
const mineralisation = {
  id: idField(), kind: exactly('mineralisationTank'), volume_m3: volume('mineralisationTank'), air_L_min: air(),
};

/** On a bench (a rig) a mineralisation tank may stand in the flow; planChecks.ts keeps it out of a loop. */
const benchMineralisation = strict({ ...mineralisation, ...common });

const LOOP_KINDS = ['fishTank', 'radialFlowSettler', 'fineFilter', 'degassingTank', 'raftBed', 'sump', 'returnPump'] as const;
const SIDE_KINDS = ['mineralisationTank', 'baseDosing'] as const;

export const stageSchema = z.discriminatedUnion('kind', [fishTank, radialFlowSettler, fineFilter, degassingTank, raftBed, sump, returnPump, benchMineralisation], {
  error: choiceError('kind', LOOP_KINDS, LATER_KINDS),
});

const mineralisationTank = strict({
  ...mineralisation,
  takes: listOf(idField(), 0, 24, 'stage ids').default([]),
  returnsTo: idField(),
});
const baseDosing = strict({
  id: idField(), kind: exactly('baseDosing'), into: idField(),
  base: oneOf(['Ca(OH)2', 'KHCO3']).default('KHCO3'),
  g_d: numberFrom(0, 100000, 'g/d').default(0),
  targetPH: numberFrom(4, 10, '').default(7),
});

export const sideSchema = z.discriminatedUnion('kind', [mineralisationTank, baseDosing], { error: choiceError('kind', SIDE_KINDS, LATER_KINDS) });
