// Cautions: every stage has its own, in full and in short, and the hazards stand where they are met.
import { describe, expect, it } from 'vitest';
import { STAGES } from '../../src/catalogue/kinds';
import { cautionsOf, FIRST_CAUTIONS } from '../../src/page/panels/common/shortCautions';
import { english } from '../../src/words/english';
import { isWord, say } from '../../src/words/say';

const HAZARDS = Object.keys(english)
  .filter(
    (key) =>
      key.startsWith('caution.')
      && !['caution.title', 'caution.all', 'caution.footer', 'caution.unknown', 'caution.teaching'].includes(key),
  )
  .map((key) => key.slice('caution.'.length));

describe('the cautions of the stages', () => {
  it('are known in full and in short', () => {
    for (const stage of STAGES) {
      expect(stage.cautions.length, stage.kind).toBeGreaterThan(0);
      for (const name of stage.cautions)
        expect([isWord(`caution.${name}`), isWord(`shortCaution.${name}`)], `${stage.kind} ${name}`).toEqual([true, true]);
    }
    for (const name of HAZARDS) expect(isWord(`shortCaution.${name}`), name).toBe(true);
  });

  it('name the hazard where it is met', () => {
    for (const { kind, group, controls, airMax_L_min, cautions, defaults } of STAGES) {
      const lies = (name: string, met: boolean): void => expect(!met || cautions.includes(name), `${kind} ${name}`).toBe(true);
      lies('mains', airMax_L_min > 0 || controls.includes('pump') || (defaults.lamp_W ?? 0) > 0);
      lies('hydrogenSulfide', controls.includes('drain'));
      lies('discharge', controls.includes('drain') || controls.includes('backwash'));
      lies('produce', group === 'growPlants');
      lies('uvLight', (defaults.lamp_W ?? 0) > 0);
      lies('fishWelfare', group === 'keepFish');
      lies('permits', group === 'keepFish');
      lies('openWater', kind === 'fishTank' || kind === 'raftBed' || kind === 'sump' || kind === 'mineralisationTank');
      lies('weight', kind === 'fishTank' || kind === 'raftBed' || kind === 'sump');
    }
  });
});

describe('cautions on paper and at the first start', () => {
  it('at the first start are those that concern everyone', () => {
    for (const name of ['mains', 'caustic', 'hydrogenSulfide', 'weight', 'openWater', 'produce', 'fishWelfare', 'permits', 'discharge'])
      expect(FIRST_CAUTIONS).toContain(`shortCaution.${name}`);
    expect(say('shortCaution.decide')).toMatch(/local codes and licensed practice decide/i);
  });

  it('on paper are those of the stages, each once', () => {
    const found = cautionsOf(STAGES, ['fishTank', 'uvUnit', 'radialFlowSettler']);
    expect(found).toEqual([...new Set(found)]);
    expect(found).toEqual(
      expect.arrayContaining(['shortCaution.mains', 'shortCaution.uvLight', 'shortCaution.hydrogenSulfide', 'shortCaution.fishWelfare']),
    );
    expect(found).not.toContain('shortCaution.produce');
    expect(found).not.toContain('shortCaution.pressure');
  });
});
