// What a stage of the loop or at its side may hold when it comes from outside, kind by kind.
// Sizes left out take those of the stage's file in model/stages; air left out is no air.
import { z } from 'zod';
import { CROPS } from '../catalogue/kinds';
import { BASES } from '../model/processes/dosing';
import { STAGES } from '../catalogue/kinds';
import { stageType } from '../catalogue/stageTypes';
import type { StageSizes } from '../model/stages/stageScience';
import { choiceError, exactly, idField, listOf, namesOf, numberFrom, oneOf, strict, wholeFrom, yesNo } from './fields';

type Measure = Exclude<keyof StageSizes, 'outlet'>;

const usual = (kind: string, size: Measure, otherwise: number): number => stageType(kind).defaults[size] ?? otherwise;

// 10 mL, a bench vessel, to a thousand cubic metres, a large hall.
const volume = (kind: string) => numberFrom(0.00001, 1000, 'm³').default(usual(kind, 'volume_m3', 1));
const media = (usually: number) => numberFrom(0, 1000, 'm³').default(usually);
const area = (kind: string) => numberFrom(0.001, 10000, 'm²').default(usual(kind, 'area_m2', 1));
const height = (kind: string) => numberFrom(0.05, 10, 'm').default(usual(kind, 'height_m', 1));
const air = () => numberFrom(0, 10000, 'L/min').default(0);
/** What any stage may say of where it stands and what it empties through. */
const common = { count: wholeFrom(1, 64, 'units').default(1), pipe_mm: numberFrom(4, 1000, 'mm').optional(), stand_m: numberFrom(-5, 10, 'm').optional() };
const units = { count: common.count };
const pumpCurve = strict({ maxHead_m: numberFrom(0.1, 100, 'm'), maxFlow_m3_h: numberFrom(0.001, 1000, 'm³/h') });
const tank = { air_L_min: air(), media_m3: media(0) };

export const cropSchema = strict({
  kind: oneOf(namesOf(CROPS)),
  plants_m2: numberFrom(0.1, 400, 'plants/m²').default(24),
  plantedDay: wholeFrom(0, 1000, '').default(0),
  replant: yesNo().default(true),
});

/** An open tank: it may be given air stones and media. */
const openTank = <const K extends string>(kind: K) => strict({ id: idField(), kind: exactly(kind), volume_m3: volume(kind), ...tank, ...common });
/** A closed hull or housing. */
const hull = <const K extends string>(kind: K) => strict({ id: idField(), kind: exactly(kind), volume_m3: volume(kind), ...common });
/** A bed over whose floor water stands or runs. */
const bed = <const K extends string>(kind: K, shallowest_m: number, deepest_m: number) => ({
  id: idField(), kind: exactly(kind), area_m2: area(kind), depth_m: numberFrom(shallowest_m, deepest_m, 'm').default(usual(kind, 'depth_m', 0.3)), crop: cropSchema.optional(),
});

const mineralisation = { id: idField(), kind: exactly('mineralisationTank'), volume_m3: volume('mineralisationTank'), air_L_min: air() };
/** On a bench (a rig) a mineralisation tank may stand in the flow; planChecks.ts keeps it out of a loop. */
const benchMineralisation = strict({ ...mineralisation, ...units });

const LOOP_KINDS = STAGES.map(({ kind }) => kind).filter((kind) => kind !== 'mineralisationTank');
const SIDE_KINDS = ['mineralisationTank', 'baseDosing'] as const;

export const stageSchema = z.discriminatedUnion('kind', [
  strict({ id: idField(), kind: exactly('fishTank'), volume_m3: volume('fishTank'), outlet: oneOf(['bottomLift', 'surface']).default('bottomLift'), ...tank, ...common }),
  openTank('conicalClarifier'), openTank('swirlSeparator'), openTank('radialFlowSettler'), openTank('fineFilter'), openTank('degassingTank'), openTank('sump'),
  strict({ id: idField(), kind: exactly('drumFilter'), volume_m3: volume('drumFilter'), mesh_um: numberFrom(10, 1000, 'µm').default(usual('drumFilter', 'mesh_um', 60)), ...common }),
  hull('beadFilter'), hull('sandFilter'), hull('cartridgeFilter'),
  strict({ id: idField(), kind: exactly('movingBedBiofilter'), volume_m3: volume('movingBedBiofilter'), air_L_min: air(), media_m3: media(usual('movingBedBiofilter', 'media_m3', 0)), ...common }),
  strict({ id: idField(), kind: exactly('tricklingFilter'), media_m3: numberFrom(0.001, 1000, 'm³').default(usual('tricklingFilter', 'media_m3', 0.2)), height_m: height('tricklingFilter'), ...common }),
  strict({ ...bed('raftBed', 0.01, 2), ...tank, ...common }),
  strict({ ...bed('nftChannel', 0.002, 0.1), ...common }),
  strict({ ...bed('mediaBed', 0.05, 2), ...common }),
  strict({ id: idField(), kind: exactly('tower'), area_m2: area('tower'), height_m: height('tower'), crop: cropSchema.optional(), ...common }),
  strict({
    id: idField(), kind: exactly('returnPump'), flow_m3_h: numberFrom(0, 1000, 'm³/h').default(1),
    curve: pumpCurve.optional(), floatValve: yesNo().optional(), pipe_mm: common.pipe_mm, ...units,
  }),
  strict({ id: idField(), kind: exactly('uvUnit'), volume_m3: volume('uvUnit'), lamp_W: numberFrom(0, 10000, 'W').default(usual('uvUnit', 'lamp_W', 40)), ...common }),
  benchMineralisation,
], { error: choiceError('kind', LOOP_KINDS, []) });

const mineralisationTank = strict({
  ...mineralisation,
  takes: listOf(idField(), 0, 24, 'stage ids').default([]),
  returnsTo: idField(),
});
const baseDosing = strict({
  id: idField(), kind: exactly('baseDosing'), into: idField(),
  base: oneOf(BASES).default('KHCO3'),
  g_d: numberFrom(0, 100000, 'g/d').default(0),
  targetPH: numberFrom(4, 10, '').default(7),
});

export const sideSchema = z.discriminatedUnion('kind', [mineralisationTank, baseDosing], { error: choiceError('kind', SIDE_KINDS, []) });
