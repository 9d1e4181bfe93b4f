// Units and number formats: metric and US customary, as the chosen language writes them; the model stays metric.
import { afterEach, describe, expect, it } from 'vitest';
import { FORMATS } from '../../src/words/formats';
import { ENGLISH, chooseLanguage } from '../../src/words/language';
import { figure, fromShown, massOf, showUnitsOf, toShown, unitOf, volumeOf, whole, withUnit } from '../../src/words/units';

const written = (tag: string): void => chooseLanguage({ ...ENGLISH, tag });

afterEach(() => {
  showUnitsOf('metric');
  chooseLanguage(ENGLISH);
});

describe('US customary units', () => {
  it('are what a person there would measure, by the exact definitions', () => {
    showUnitsOf('us');
    expect(withUnit('T_C', 25)).toBe('77\u00a0°F');
    expect(withUnit('volume_m3', 1)).toBe('264\u00a0gal');
    expect(withUnit('kilograms', 10)).toBe('22.0\u00a0lb');
    expect(withUnit('height_cm', 2.54)).toBe('1.0\u00a0in');
    expect(toShown('feed_g_d', 28.349523125)).toBeCloseTo(1, 12);
    expect(toShown('air_L_min', 28.316846592)).toBeCloseTo(1, 12);
    expect(toShown('T_C', -40)).toBeCloseTo(-40, 12);
  });

  it('leave concentrations in mg/L, pH and shares as they are', () => {
    showUnitsOf('us');
    expect([unitOf('O2_mg_L'), unitOf('TAN_mgN_L'), unitOf('pH'), unitOf('welfare')]).toEqual(['mg/L', 'mg N/L', '', '%']);
    expect(withUnit('pH', 6.994)).toBe('6.99');
  });

  it('what a person enters comes back as the same metric value, for every quantity', () => {
    showUnitsOf('us');
    for (const variable of Object.keys(FORMATS)) expect(fromShown(variable, toShown(variable, 12.5)), variable).toBeCloseTo(12.5, 9);
  });

  it('are put away again', () => {
    showUnitsOf('us');
    showUnitsOf('metric');
    expect(withUnit('T_C', 25)).toBe('25.0\u00a0°C');
  });
});

describe('a mass from a trace to a harvest', () => {
  it('is said in mg, g or kg', () => {
    expect([0, 0.0057, 0.034, 3.24, 44.4, 1530].map(massOf)).toEqual([
      '0\u00a0g',
      '5.7\u00a0mg',
      '34\u00a0mg',
      '3.2\u00a0g',
      '44\u00a0g',
      '1.5\u00a0kg',
    ]);
  });

  it('or in mg, oz or lb', () => {
    showUnitsOf('us');
    expect([0.0057, 44.4, 1530].map(massOf)).toEqual(['5.7\u00a0mg', '1.57\u00a0oz', '3.4\u00a0lb']);
  });
});

describe('a volume of water', () => {
  it('is said in litres where it is small', () => {
    expect([0.008, 0.3].map(volumeOf)).toEqual(['8\u00a0L', '0.30\u00a0m³']);
    showUnitsOf('us');
    expect([0.008, 0.3].map(volumeOf)).toEqual(['2\u00a0gal', '79\u00a0gal']);
  });
});

describe('the format of numbers', () => {
  it('follows the chosen language, with a minus that reads as one', () => {
    written('de-DE');
    expect([figure(2.5, 1), figure(0.004, 1), figure(-2.5, 1), figure(12345.6, 0)]).toEqual(['2,5', '<0,1', '−2,5', '12.346']);
    written('en-GB');
    expect([figure(2.5, 1), figure(12345.6, 0), whole(4321)]).toEqual(['2.5', '12,346', '4321']);
  });

  it('keeps the digits of the page whatever the language', () => {
    written('ar-EG');
    expect(whole(120)).toBe('120');
  });
});
