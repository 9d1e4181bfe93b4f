// What a stage of the loop or at its side may hold when it comes from outside, kind by kind, from what each kind's folder says.
// Sizes left out take those of the kind; air left out is no air.
import { z } from 'zod';
import { CROPS, STAGES } from '../catalogue/kinds';
import type { StageKind } from '../catalogue/kinds';
import { BASES } from '../model/processes/dosing';
import type { SizeRange } from '../model/stages/stageKind';
import type { StageType } from '../model/stages/stageType';
import type { SideSpec, StageSpec } from '../season/plan';
import { choiceError, exactly, idField, listOf, namesOf, numberFrom, oneOf, strict, wholeFrom, yesNo } from './fields';

/** What any stage may say of where it stands and what it empties through. */
const count = wholeFrom(1, 64, 'units').default(1);
const pipe = numberFrom(4, 1000, 'mm').optional();
const stand = numberFrom(-5, 10, 'm').optional();
const pumpCurve = strict({ maxHead_m: numberFrom(0.1, 100, 'm'), maxFlow_m3_h: numberFrom(0.001, 1000, 'm³/h') });

export const cropSchema = strict({
  kind: oneOf(namesOf(CROPS)),
  plants_m2: numberFrom(0.1, 400, 'plants/m²').default(24),
  plantedDay: wholeFrom(0, 1000, '').default(0),
  replant: yesNo().default(true),
});

const sizeField = (size: SizeRange | readonly string[]): z.ZodType => {
  if ('from' in size) return numberFrom(size.from, size.to, size.unit).default(size.leftOut ?? size.usual);
  const [usual, ...others] = size;
  return oneOf([usual, ...others]).default(usual);
};
const sizesOf = ({ sizes }: StageType): z.ZodRawShape =>
  Object.fromEntries(Object.entries(sizes).map(([name, size]) => [name, sizeField(size)]));

/** What is written after the sizes, by what the kind can do. */
function further(type: StageType): z.ZodRawShape {
  if (type.pumps) return { curve: pumpCurve.optional(), floatValve: yesNo().optional(), pipe_mm: pipe, count };
  // at the side there is one, filled by hand; on a bench (a rig) it may stand in the flow, and planChecks.ts keeps it out of a loop
  if (type.takesSolids) return { count };
  return { ...(type.grows ? { crop: cropSchema.optional() } : {}), count, pipe_mm: pipe, stand_m: stand };
}

const sideFields = (type: StageType): z.ZodRawShape =>
  type.takesSolids
    ? { takes: listOf(idField(), 0, 24, 'stageIds').default([]), returnsTo: idField() }
    : {
        into: idField(),
        base: oneOf(BASES).default('KHCO3'),
        g_d: numberFrom(0, 100000, 'g/d').default(0),
        targetPH: numberFrom(4, 10, '').default(7),
      };

type Member = ReturnType<typeof exactly>;
const member = (type: StageType, fields: z.ZodRawShape): z.ZodObject<{ kind: Member }> =>
  strict({ id: idField(), kind: exactly(type.kind), ...sizesOf(type), ...fields }) as unknown as z.ZodObject<{ kind: Member }>;

/** A choice among kinds; at least one of each sort is in the catalogue. */
function choiceOf(types: readonly StageType[], fieldsOf: (type: StageType) => z.ZodRawShape, named: readonly string[]): z.ZodType {
  const [first, ...others] = types.map((type) => member(type, fieldsOf(type)));
  return z.discriminatedUnion('kind', [first, ...others], { error: choiceError('kind', named) });
}

/** A part as a person may write it: sizes may be left out. */
export type StageInput = { id: string; kind: StageKind } & {
  [Key in Exclude<keyof StageSpec, 'id' | 'kind' | 'crop'>]?: StageSpec[Key];
} & { crop?: z.input<typeof cropSchema> };
export type SideInput = { id: string; kind: StageKind } & (
  | { volume_m3?: number; air_L_min?: number; takes?: string[]; returnsTo: string }
  | { into: string; base?: (typeof BASES)[number]; g_d?: number; targetPH?: number }
);

const inFlow = STAGES.filter((type) => !type.doses);
const atSide = STAGES.filter((type) => type.doses || type.takesSolids);
const names = (types: readonly StageType[]): string[] => types.map(({ kind }) => kind);

// Which sizes a kind takes is not known to the compiler: the ranges are the kinds' own, and their names are keys of StageSpec.
export const stageSchema = choiceOf(inFlow, further, names(inFlow.filter((type) => !type.takesSolids))) as z.ZodType<StageSpec, StageInput>;
export const sideSchema = choiceOf(atSide, sideFields, names(atSide)) as z.ZodType<SideSpec, SideInput>;
