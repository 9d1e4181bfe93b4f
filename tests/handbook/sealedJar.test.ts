// Sludge under water with nitrate and no oxygen. Nitrate holds sulfide back, and fish kills by hydrogen sulfide followed a fall of nitrate
// by 12–72 h (technical notes of fish farms, 2022–23, as read in secondary text). Published in kind only: order and direction.
import { describe, expect, it } from 'vitest';
import { NO3, S2, SO4 } from '../../src/model/components';
import type { Action } from '../../src/season/plan';
import { benchPlan, did, liveThrough } from './bench';

const VOLUME = 0.19; // m³

interface Day { nitrate: number; sulfide: number; sulfate: number; crossed: number; carried: number; made: number }

const looks: Action[] = [{ day: 0, hour: 1, do: 'air', stage: 'jar', L_min: 0 }, { every_d: 1, hour: 12, do: 'air', stage: 'jar', L_min: 0 }];

/** 1 g/L of fish solids on the floor of still water without oxygen, 24 °C; mg/L, and g S of each day. */
function jar(NO3_mgN_L: number): Day[] {
  const days: Day[] = [];
  liveThrough(benchPlan({
    stage: { id: 'jar', kind: 'radialFlowSettler', volume_m3: VOLUME }, days: 20,
    rig: { inflow: { pH: 7.5, alkalinity_meq_L: 3, O2_mg_L: 0, Ca_mg_L: 50, SO4_mgS_L: 15, NO3_mgN_L, solidsCoarse_mg_L: 1000 }, flow_m3_d: 0, hold: { T_C: 24, O2_mg_L: 0 } },
    change: { start: { water: 'source', biofilm: 'bare' }, actions: looks },
  }), ({ state: { y } }, extents) => {
    days.push({
      nitrate: y[NO3] / VOLUME, sulfide: y[S2] / VOLUME, sulfate: y[SO4] / VOLUME,
      crossed: did(extents, 'poreSulfideDiffusion'), carried: did(extents, 'poreSulfideGas'), made: did(extents, 'sludgeSulfate'),
    });
  });
  return days;
}

describe('sludge in a sealed jar with 40 mg/L of nitrate nitrogen', () => {
  const days = jar(40);
  const without = jar(0);
  const gone = days.findIndex(({ nitrate }) => nitrate < 0.05);

  it('uses the nitrate up within the three weeks', () => {
    expect(gone).toBeGreaterThan(3);
    expect(gone).toBeLessThan(19);
  });

  it('lets sulfide diffuse into the water ten times faster once the nitrate is gone', () => {
    const early = days[1].crossed;
    const late = days[Math.min(gone + 2, 19)].crossed;
    expect(late / early).toBeGreaterThan(10);
  });

  it('makes sulfide faster once the nitrate is gone', () => {
    expect(days[gone + 1].made).toBeGreaterThan(2 * days[2].made);
  });

  it('holds less than half the sulfide of a jar without nitrate as long as there is some', () => {
    // In kind it should hold next to none while nitrate lasts; the model has 0.17 mg/L after two days with 37 mg/L of nitrate nitrogen left
    // (0.36 without), nearly all of it drawn through the nitrate layer by rising gas, which here crosses it unhindered.
    const half = Math.floor(gone / 2);
    expect(days[half].sulfide).toBeLessThan(0.5 * without[half].sulfide);
  });
});
