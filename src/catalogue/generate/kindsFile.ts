// Writes kinds.ts, the one list of what can stand in a loop or live in it, from the catalogue's folders.
import { foldersIn, withFile } from './folders';

const WIDEST = 130;

/** Names in a list, as many on a line as fit. */
function wrapped(items: readonly string[], between: string): string {
  const lines: string[] = [];
  let line = ' ';
  items.forEach((item, index) => {
    const text = ` ${item}${index === items.length - 1 ? '' : between}`;
    if (line.length + text.length > WIDEST) {
      lines.push(line);
      line = ' ';
    }
    line += text;
  });
  return [...lines, line].join('\n');
}

const union = (name: string, kinds: readonly string[]): string =>
  `export type ${name} =\n${wrapped(
    kinds.map((kind) => `'${kind}'`),
    ' |',
  )};\n`;

/** The text of kinds.ts. @param root the folder with stages/, crops/ and species/; @param model how the file names the model's folder */
export function kindsFile(root: string, model = '../model'): string {
  const { stages, crops, species } = foldersIn(root);
  const withConstants = withFile(root, 'stages', stages, 'constants.ts');
  return [
    '// Written by `npm run catalogue` from the folders beside it, never by hand: every kind of stage, crop and fish.',
    `import type { CropParameters } from '${model}/parameters/cropNumbers';`,
    `import type { FishParameters } from '${model}/parameters/fishNumbers';`,
    `import type { ParameterGroup } from '${model}/parameters/parameter';`,
    `import { stageOf } from '${model}/stages/stageType';`,
    `import type { StageType } from '${model}/stages/stageType';`,
    ...crops.map((kind) => `import { science as ${kind} } from './crops/${kind}/science';`),
    ...species.map((kind) => `import { science as ${kind} } from './species/${kind}/science';`),
    ...stages.flatMap((kind) => [
      ...(withConstants.includes(kind) ? [`import { constants as ${kind}Constants } from './stages/${kind}/constants';`] : []),
      `import { kind as ${kind}Kind } from './stages/${kind}/kind';`,
      `import { science as ${kind} } from './stages/${kind}/science';`,
    ]),
    '',
    union('StageKind', stages),
    'export const STAGES: readonly (StageType & { kind: StageKind })[] = [',
    ...stages.map((kind) => `  stageOf('${kind}', ${kind}Kind, ${kind}),`),
    '];\n',
    '/** Numbers that a kind of stage has for itself. */',
    `export const KIND_CONSTANTS: Readonly<Record<string, ParameterGroup>> = {${
      withConstants.length === 0
        ? ''
        : `\n${wrapped(
            withConstants.map((kind) => `${kind}: ${kind}Constants`),
            ',',
          )},\n`
    }};\n`,
    union('CropName', crops),
    `export const CROPS: Readonly<Record<CropName, CropParameters>> = {\n${wrapped(crops, ',')},\n};\n`,
    union('SpeciesName', species),
    `export const SPECIES: Readonly<Record<SpeciesName, FishParameters>> = {\n${wrapped(species, ',')},\n};\n`,
  ].join('\n');
}
