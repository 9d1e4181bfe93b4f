// The tables of fish, crops and processes in MODEL.md against the recorded values: what a teacher reads is what the model reckons with.
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { CROPS, SPECIES } from '../../src/catalogue/kinds';
import { valuesWith } from '../../src/catalogue/values';

const page = readFileSync(new URL('../../src/model/MODEL.md', import.meta.url), 'utf8').split('\n');
const all = valuesWith();
const values = { ...all, ...all.fish, ...all.crops } as unknown as Record<string, Record<string, number>>;

/** A row by how its title begins: the parameters in the order of its numbers, and what each is multiplied by to be shown. */
type Row = readonly [title: string, ...parameters: (string | readonly [string, number])[]];

/** The kinds of a table in the order of its columns: what files call them stands in its first row. */
const [FISH, CROP_KINDS] = page
  .filter((line) => line.startsWith('| In files'))
  .map((line) => [...line.matchAll(/`(\w+)`/g)].map(([, kind]) => kind));
const FISH_ROWS: readonly Row[] = [
  ['Eats best at', 'optimumLow', 'optimumHigh'],
  ['Eats nothing below', 'coldStop', 'hotStop'],
  ['Dies of cold', 'coldLethal', 'hotLethal'],
  ['Full ration at 50 g', ['rationAt50g', 100], 'rationExponent'],
  ['Gain, g per g eaten', 'gain'],
  ['Eats to the full from', 'appetiteFull', 'appetiteNone'],
  ['Oxygen: ease ends', 'o2Safe', 'o2Harm', 'o2Lethal'],
  ['NH3-N: ease ends', 'nh3Safe', 'nh3Harm', 'nh3LC50'],
  ['H2S: ease ends', ['h2sSafe', 1000], ['h2sLC50', 1000]],
  ['CO2: ease ends', 'co2Safe', 'co2Harm'],
  ['Solids: ease ends', 'solidsSafe', 'solidsHarm'],
  ['Crowding: ease ends', 'density', 'densityHarm'],
];
const CROP_ROWS: readonly Row[] = [
  ['Light use', 'radiationUse', 'radiationHalf'],
  ['Leaf area', 'leafAreaPerMass'],
  ['Plants per m²', 'plants_m2'],
  ['Ripe at', 'ripe'],
  ['Cut: share of the leaf', 'cutShare', 'harvestShare'],
  ['Dry share', ['dryShare', 100]],
  ['Grows best at', 'optimumLow', 'optimumHigh', 'coldStop', 'hotStop'],
  ['Full from pH', 'pHOptimum', ['pHLoss', 100]],
  ['Full stores', ['quotaN', 100], ['quotaP', 100], ['quotaK', 100], ['quotaCa', 100]],
  ['Full store of Fe', ['quotaFe', 1e6]],
  ['Water, L per g', 'waterUse'],
];

const numbersOf = (cell: string): number[] =>
  (
    cell
      .replaceAll('all', '1')
      .replaceAll('−', '-')
      .match(/(?<![\d.–])-?\d+(?:\.\d+)?|(?<=–)\d+(?:\.\d+)?/g) ?? []
  ).map(Number);

describe.each([
  ['fish', FISH, FISH_ROWS],
  ['crops', CROP_KINDS, CROP_ROWS],
] as const)('the table of %s', (what, kinds, rows) => {
  it('has a column for each that the catalogue has', () => {
    expect([...kinds].sort()).toEqual(Object.keys(what === 'fish' ? SPECIES : CROPS).sort());
  });

  it.each(rows.map(([title, ...parameters]) => ({ title, parameters })))('tells the recorded values: $title', ({ title, parameters }) => {
    const line = page.find((one) => one.startsWith(`| ${title}`));
    expect(line, title).toBeDefined();
    const cells = (line ?? '').split('|').slice(2, 2 + kinds.length);
    kinds.forEach((kind, k) => {
      const recorded = parameters.map((parameter) =>
        typeof parameter === 'string' ? values[kind][parameter] : values[kind][parameter[0]] * parameter[1],
      );
      const shown = numbersOf(cells[k]);
      expect(shown, `${kind}: ${cells[k]}`).toHaveLength(recorded.length);
      recorded.forEach((value, i) => {
        expect(shown[i], `${kind}: ${cells[k]}`).toBeCloseTo(value, 9);
      });
    });
  });
});

/** Processes whose rate is written out: the parameters whose values stand in their row, and what each is multiplied by to be shown. */
const RATES: readonly (readonly [process: string, ...parameters: (string | readonly [string, number])[]])[] = [
  ['nitritation', 'aobGrowth', 'aobYield', 'aobTAN', 'aobO2'],
  ['nitriteOxidation', 'nobGrowth', 'nobYield', 'nobNO2', 'nobO2', 'nobFreeAmmonia'],
  ['heterotrophsAerobic', 'hetGrowth', 'hetYield', 'hetSubstrate', 'hetO2'],
  ['heterotrophsAnoxic', 'hetAnoxic', 'hetNO3'],
  ['sloughAmmoniaOxidisers', 'aobCapacity', 'nobCapacity', 'hetCapacity'],
  ['sulfideOxidation', 'sulfideFilm', 'sulfideWater'],
  ['methaneOxidation', 'methaneFilm'],
  ['hydrolysisCoarseFast', 'hydrolysisFast'],
  ['hydrolysisCoarseSlow', 'hydrolysisSlow'],
  ['clumpDenitrificationFast', 'clumpAnoxic', 'clumpHalf', ['hetNO3', 4]],
  ['sludgeAnoxic', 'sludgeAnoxic'],
  ['sludgeSulfate', 'sludgeSulfate'],
  ['sludgeMethane', 'sludgeMethane', ['methaneBubbles', 100]],
  ['poreSulfideDiffusion', ['sulfideReaction', 1000]],
  ['poreSulfideGas', 'bubbleEntrain', ['gasReaction', 1000]],
  ['settleCoarseFast', 'settleCoarse', 'settleFine', 'settleSuperfine'],
  ['catchCoarseFast', 'rootCoarse', 'rootFine', 'rootSuperfine', 'mediaCatch'],
  ['shearFast', 'airShear', 'airShearFrom'],
  ['releaseFast', 'rootRelease', 'rootSlough'],
  ['rootRelaxation', 'rootRelax'],
  ['freeBacteriaGrowth', 'freeBacteriaTurnover', 'freeBacteriaOrganics', 'freeBacteriaFines'],
  ['ironLoss', 'ironLoss', 'ironHighPH'],
];

describe('the tables of processes', () => {
  it.each(RATES.map(([process, ...parameters]) => ({ process, parameters })))(
    'write the rate of $process with the recorded values',
    ({ process, parameters }) => {
      const line = page.find((one) => one.startsWith('|') && one.split('|')[1].includes(`\`${process}\``)) ?? '';
      const shown = new Set(numbersOf(line.replaceAll(/`[^`]*`/g, '')));
      for (const parameter of parameters) {
        const [name, times] = typeof parameter === 'string' ? [parameter, 1] : parameter;
        expect(
          [...shown].some((number) => Math.abs(number - values['kinetics'][name] * times) < 1e-9),
          `${name} ${values['kinetics'][name] * times} in ${line}`,
        ).toBe(true);
      }
    },
  );

  it('write what roots breathe with the recorded values', () => {
    const shown = numbersOf(page.find((one) => one.startsWith('- **Root health')) ?? '');
    for (const name of [
      'rootSulfide',
      'rootO2Half',
      'rootStill',
      'rootRespiration',
      'rootPerLeaf',
      'rootArea',
      'rootAreaLeast',
      'rootAirHalf',
    ])
      expect(shown, name).toContain(values['kinetics'][name]);
  });
});
