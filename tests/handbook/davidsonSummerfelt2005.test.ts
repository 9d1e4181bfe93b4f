// Davidson & Summerfelt 2005, Aquac. Eng. 33:47–61: at 0.0031 m³/s per m² of surface a radial-flow settler kept 77.9 ± 1.6 % of the solids
// of a trout tank and a swirl separator 37.1 ± 3.3 %. The settler's class speeds and the two efficiencies are calibrated to it: this holds
// them there.
import { describe, expect, it } from 'vitest';
import { kept, SURFACE_LOAD } from './settlerCases';

describe('separators at 268 m³/m²/d', () => {
  it('a radial-flow settler keeps 78 %', () => {
    expect(Math.abs(kept('radialFlowSettler') - 0.779)).toBeLessThan(0.05);
  });

  it('a swirl separator keeps 37 %', () => {
    expect(Math.abs(kept('swirlSeparator') - 0.371)).toBeLessThan(0.05);
  });

  it('a plain cone stands between them', () => {
    const cone = kept('conicalClarifier');
    expect(cone).toBeGreaterThan(kept('swirlSeparator') + 0.05);
    expect(cone).toBeLessThan(kept('radialFlowSettler') - 0.05);
  });

  it('what is kept does not hang on how much comes, and falls with the load on the surface', () => {
    const twice = { solidsCoarse_mg_L: 30.4, solidsFine_mg_L: 6.4, solidsSuperfine_mg_L: 3.2 };
    expect(Math.abs(kept('radialFlowSettler', SURFACE_LOAD, twice) - kept('radialFlowSettler'))).toBeLessThan(0.02);
    expect(kept('radialFlowSettler', 4 * SURFACE_LOAD)).toBeLessThan(kept('radialFlowSettler') - 0.02);
  });
});
