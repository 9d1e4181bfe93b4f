// What the page knows of the kinds is what their folders say: nothing stale, nothing missing without a word, nothing shared by accident.
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { stageMiniatures } from '../../src/catalogue/icons';
import { stageDrawings } from '../../src/catalogue/drawings';
import { foldersOf, pageFiles } from '../../src/catalogue/generate/pageFiles';
import { english } from '../../src/catalogue/words';

describe('the lists of the catalogue', () => {
  it('are as `npm run catalogue` writes them', async () => {
    for (const [path, text] of Object.entries(await pageFiles('.')))
      expect(readFileSync(path, 'utf8') === text, `${path} is stale`).toBe(true);
  });

  it('have a miniature of everything that stands in the loop', () => {
    const inLoop = Object.keys(stageDrawings).filter((kind) => ['loop', 'inTank'].includes(stageDrawings[kind].place));
    expect(inLoop.length).toBeGreaterThan(5);
    expect(inLoop.filter((kind) => !Object.hasOwn(stageMiniatures, kind))).toEqual([]);
  });

  it('give every kind its words', () => {
    for (const { group, kind } of foldersOf('.')) {
      const key = { stages: `stage.${kind}.name`, crops: `crop.${kind}`, species: `species.${kind}` }[group];
      expect(Object.hasOwn(english, key), key).toBe(true);
    }
  });
});

describe('a kind that is added', () => {
  let root = '';
  const put = (path: string, text: string): void => {
    mkdirSync(join(root, path, '..'), { recursive: true });
    writeFileSync(join(root, path), text);
  };
  const stage = (kind: string): void => {
    for (const name of ['kind.ts', 'science.ts']) put(`src/catalogue/stages/${kind}/${name}`, '');
    put(`src/catalogue/stages/${kind}/drawing.ts`, "export { plainVessel as drawing } from '../../../page/picture/kit/plainVessel';\n");
    put(
      `src/catalogue/stages/${kind}/words.ts`,
      "export const english = { name: 'Weir', does: 'Holds back.', mistake: 'None.', cautions: { edge: { full: 'Sharp; local rules decide.', short: 'Sharp.' } } };\n",
    );
    put(`src/catalogue/stages/${kind}/icon.svg`, '<!-- A. Painter, CC0 -->\n<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"/>\n');
  };

  beforeEach(() => {
    root = mkdtempSync(join(tmpdir(), 'catalogue-'));
    for (const group of ['stages', 'crops', 'species']) mkdirSync(join(root, 'src/catalogue', group), { recursive: true });
    mkdirSync(join(root, 'assets'));
    cpSync('assets/credits.json', join(root, 'assets/credits.json'));
  });
  afterEach(() => rmSync(root, { recursive: true }));

  it('is drawn, named, pictured and credited from its folder alone', async () => {
    stage('weir');
    put(
      'src/catalogue/stages/weir/miniature.svg',
      '<!-- A. Painter, CC0 -->\n<svg xmlns="http://www.w3.org/2000/svg" viewBox="-3 -33 46 35"/>\n',
    );
    const files = await pageFiles(root);
    expect(files['src/catalogue/drawings.ts']).toContain("import { drawing as weir } from './stages/weir/drawing';");
    for (const key of ['stage.weir.name', 'stage.weir.does', 'stage.weir.mistake', 'caution.edge', 'shortCaution.edge'])
      expect(files['src/catalogue/words.ts']).toContain(`'${key}': weir.english.`);
    expect(files['src/catalogue/icons.ts']).toContain('weir: { picture: weirSmall, top: -33, width: 46, height: 35 }');
    expect(JSON.parse(files['assets/credits.json'])).toMatchObject({
      kinds: [{ file: 'src/catalogue/stages/weir/icon.svg', author: 'A. Painter', licence: 'CC0' }, { licence: 'CC0' }],
    });
  });

  it.each([
    ['drawing.ts', '', /stages\/weir\/drawing\.ts: must export "drawing"/],
    [
      'words.ts',
      "export const english = { name: 'Weir', does: 'Holds back.' };\n",
      /stages\/weir\/words\.ts: "english" needs a text "mistake"/,
    ],
    ['words.ts', 'export const german = {};\n', /stages\/weir\/words\.ts: must export "english"/],
    [
      'icon.svg',
      '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"/>',
      /stages\/weir\/icon\.svg: its first line must say who made it/,
    ],
  ])('is refused when its %s does not say what it must', async (name, text, message) => {
    stage('weir');
    put(`src/catalogue/stages/weir/${name}`, text);
    await expect(pageFiles(root)).rejects.toThrow(message);
  });

  it('is refused without a drawing: a plain vessel is drawn only where the folder says so', async () => {
    stage('weir');
    rmSync(join(root, 'src/catalogue/stages/weir/drawing.ts'));
    await expect(pageFiles(root)).rejects.toThrow('src/catalogue/stages/weir/drawing.ts: missing');
  });
});
