// Ammonia and nitrite oxidisers share one film (Hiatt & Grady 2008; Sin et al. 2008: two-step nitrification runs to nitrate where
// oxygen is ample). Published in kind; that nitrite stays under 1 mg/L at 10 mg/L of ammonia nitrogen is the calibration's aim.
import { describe, expect, it } from 'vitest';
import { BA, BN } from '../../src/model/components';
import { readCell } from '../../src/season/reading';
import { feedWater, nitrification } from './bench';

describe('ammonia oxidisers and nitrite oxidisers in one film at 10 mg/L of ammonia nitrogen and 8 mg/L of oxygen', () => {
  it.each(['bare', 'seeded', 'mature'] as const)('live side by side 90 days after a %s start', (biofilm) => {
    const { season } = nitrification(
      { inflow: feedWater({ TAN_mgN_L: 10.9 }), flow_m3_d: 24, hold: { T_C: 25, pH: 7.5, O2_mg_L: 8 } },
      90,
      { start: { water: 'source', biofilm } },
    );
    const { film } = season.runtime.assembly.cells[0];
    const water = readCell(season.runtime, season.state.y, 0);
    expect(water.TAN).toBeGreaterThan(9);
    expect(water.NO2).toBeLessThan(1);
    expect(water.NO3).toBeGreaterThan(0.1);
    expect(season.state.y[BA] / film).toBeGreaterThan(0.1);
    expect(season.state.y[BN] / film).toBeGreaterThan(0.05);
  });

  it('and more of what is oxidised stays nitrite where oxygen is scarce, for nitrite oxidisers need more of it', () => {
    const nitriteShare = (O2_mg_L: number): number => {
      const { season } = nitrification({ inflow: feedWater({ TAN_mgN_L: 10.9 }), flow_m3_d: 24, hold: { T_C: 25, pH: 7.5, O2_mg_L } }, 90);
      const { NO2, NO3 } = readCell(season.runtime, season.state.y, 0);
      return NO2 / (NO2 + NO3);
    };
    expect(nitriteShare(0.5)).toBeGreaterThan(nitriteShare(8));
  });
});
