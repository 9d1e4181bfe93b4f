// What a person does, done: each deed changes settings or moves matter at a cut, and is told as an event.
import { CL, FE, NA } from '../model/components';
import { ID } from '../model/processes/catalogue';
import { DOSE_OF } from '../model/processes/dosing';
import { fill } from './levels';
import { cutBed, plant, stock, takeFish } from './livestock';
import type { BaseKind, Deed } from './plan';
import type { RunState } from './runState';
import type { Runtime } from './runtime';
import { disturb, drain, exchange, put, rinse } from './transfers';
import type { EventKind, SeasonEvent } from './trajectory';

export interface Place {
  hour: number;
  byPerson: boolean;
  events: SeasonEvent[];
}

/** Does one deed. Unknown stages were refused when the plan was read; here they are passed over. */
export function doDeed(runtime: Runtime, state: RunState, deed: Deed, place: Place): void {
  const tell = (kind: EventKind, stage: string, amount: number): void => {
    place.events.push({ hour: place.hour, kind, stage, amount, byPerson: place.byPerson });
  };
  const cellsOf = (id: string): number[] => {
    const stage = runtime.assembly.stages.find((entry) => entry.id === id);
    return stage ? Array.from({ length: stage.cells }, (_, i) => stage.first + i) : [];
  };
  switch (deed.do) {
    case 'feed': {
      const feed = { tank: deed.tank, g_d: deed.g_d, meals_h: deed.meals_h?.length ? [...deed.meals_h] : [8, 12, 16] };
      state.feeds = [...state.feeds.filter((other) => other.tank !== deed.tank), feed];
      return tell('fed', deed.tank, deed.g_d);
    }
    case 'air':
      state.air[deed.stage] = deed.L_min;
      return tell('airSet', deed.stage, deed.L_min);
    case 'pump':
    case 'power': {
      const ran = running(state);
      if (deed.do === 'pump') state.pumpOn = deed.on;
      else {
        if (state.powerOn && !deed.on) state.powerOffAt = place.hour;
        state.powerOn = deed.on;
      }
      // Water set moving again stirs the beds that lay still.
      if (!ran && running(state)) for (const cell of runtime.assembly.cells) if (cell.bedThickness > 0) disturb(runtime, state, cell.index);
      return tell(deed.do === 'pump' ? (deed.on ? 'pumpOn' : 'pumpOff') : deed.on ? 'powerOn' : 'powerOff', '', deed.on ? 1 : 0);
    }
    case 'flow':
      state.flow_m3_d = deed.flow_m3_h * 24;
      return tell('flowSet', '', deed.flow_m3_h);
    case 'drain': {
      let volume = 0;
      for (const cell of cellsOf(deed.stage)) volume += drain(runtime, state, cell);
      return tell('drained', deed.stage, volume * 1000);
    }
    case 'rinse':
    case 'backwash': {
      let volume = 0;
      for (const cell of cellsOf(deed.stage)) volume += rinse(runtime, state, cell);
      return tell(deed.do === 'backwash' ? 'backwashed' : 'rinsed', deed.stage, volume * 1000);
    }
    case 'base':
      state.base = {
        kind: deed.base ?? state.base.kind,
        g_d: deed.g_d,
        targetPH: deed.targetPH ?? state.base.targetPH,
        level: state.base.level,
        at: state.base.at,
      };
      return tell('baseSet', runtime.assembly.dosing?.id ?? '', deed.g_d);
    case 'salt':
      for (const cell of cellsOf(deed.stage).slice(0, 1)) {
        put(state, cell, NA, deed.g * 0.3934);
        put(state, cell, CL, deed.g * 0.6066);
      }
      return tell('salted', deed.stage, deed.g);
    case 'iron':
      for (const cell of cellsOf(deed.stage).slice(0, 1)) put(state, cell, FE, deed.g);
      return tell('ironAdded', deed.stage, deed.g);
    case 'exchange': {
      let volume = 0;
      for (const cell of cellsOf(deed.stage)) volume += exchange(runtime, state, cell, Math.min(1, Math.max(0, deed.fraction)));
      return tell('exchanged', deed.stage, volume * 1000);
    }
    case 'singleDose':
      for (const cell of cellsOf(deed.stage).slice(0, 1)) dissolve(runtime, state, cell, deed.base, deed.g);
      return tell('baseSet', deed.stage, deed.g);
    case 'topUp': {
      const entry = runtime.assembly.stages.find((stage) => stage.id === deed.stage);
      if (entry) fill(runtime, state, entry, deed.L / 1000);
      return tell('toppedUp', deed.stage, deed.L);
    }
    case 'heater':
      state.heaters[deed.stage ?? ''] = { power_W: deed.power_W, target_C: deed.target_C };
      return tell('heaterSet', deed.stage ?? '', deed.power_W);
    case 'light':
      if (deed.stage === undefined) state.light = deed.mol_m2_d;
      else state.lights[deed.stage] = deed.mol_m2_d;
      return tell('lightSet', deed.stage ?? '', deed.mol_m2_d);
    case 'setting':
      state.lamps[deed.stage] = deed.lamp_W;
      return tell('lampSet', deed.stage, deed.lamp_W);
    case 'stock':
      return stock(runtime, state, deed, tell);
    case 'takeFish':
      return takeFish(state, deed, tell);
    case 'plant':
      return plant(
        runtime,
        state,
        deed.stage,
        { kind: deed.crop, plants_m2: deed.plants_m2, replant: deed.replant },
        place.hour / 24,
        tell,
      );
    case 'harvest':
      return cutBed(runtime, state, deed.stage, tell);
  }
}

/** A base thrown in at once: all that its column brings. */
function dissolve(runtime: Runtime, state: RunState, cell: number, base: BaseKind, grams: number): void {
  const column = runtime.matrix.columns[ID[DOSE_OF[base]]];
  column.rows.forEach((row, i) => put(state, cell, row, column.coefficients[i] * grams));
}

export const running = (state: RunState): boolean => state.pumpOn && state.powerOn;
