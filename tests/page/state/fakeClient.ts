// A stand-in for the worker: answers at once with a small season whose numbers are easy to foresee, and keeps what it was asked.
import type { Answers, DesignCheck, Request, SeasonAnswer } from '../../../src/worker/messages';
import { givenOrder } from '../../../src/lessons/buildPlan';
import { movesBetween } from '../../../src/lessons/moves';
import type { Client, Judged } from '../../../src/page/state/common/state';
import type { Lesson } from '../../../src/lessons/lesson';
import type { Plan } from '../../../src/season/plan';
import type { DayChunk, Scores } from '../../../src/season/trajectory';
import { learnKinds } from '../../../src/page/state/common/kinds';
import { catalogueEntries } from '../../../src/worker/catalogueEntries';

// as the page learns of them before it shows anything
learnKinds(catalogueEntries());

export const VARIABLE_NAMES = ['TAN_mgN_L', 'O2_mg_L', 'number', 'mass_g'];

export const SCORES: Scores = {
  fishHealth: 80,
  survival: 1,
  meanWelfare: 0.8,
  harvest: 60,
  plants_kg: 6,
  plantsIdeal_kg: 10,
  gain_kg: 3,
  gainIdeal_kg: 5,
  stewardship: 50,
  waterUsed_L: 100,
  nitrogenDischarged_g: 5,
  solidsDischarged_g: 40,
  energy_kWh: 12,
  work_h: 3,
};

export function smallPlan(days = 4): Plan {
  return {
    format: 'loopwright.plan/2',
    model: '1.1',
    title: 'Small',
    seed: 'a',
    days,
    climate: { air_C: { mean: 22, daySwing: 0, yearSwing: 0, dayOfYear: 1 }, light_mol_m2_d: 17, dayLength_h: 14, weather: 0 },
    source: {},
    start: { water: 'source', biofilm: 'bare' },
    loop: [
      { id: 'fish', kind: 'fishTank', volume_m3: 1, air_L_min: 30 },
      { id: 'sump', kind: 'sump', volume_m3: 0.4 },
      { id: 'pump', kind: 'returnPump', flow_m3_h: 1.8 },
    ],
    side: [{ id: 'base', kind: 'baseDosing', into: 'sump', base: 'KHCO3', g_d: 0, targetPH: 7 }],
    fish: [{ tank: 'fish', species: 'tilapia', number: 60, mass_g: 50, day: 0 }],
    actions: [],
    rig: null,
  };
}

export function smallLesson(days = 4): Lesson {
  return {
    format: 'loopwright.lesson/2',
    id: 'small',
    title: 'Small',
    brief: ['Do it.'],
    plan: smallPlan(days),
    shelf: [
      { id: 'settler', kind: 'radialFlowSettler', volume_m3: 0.19 },
      { id: 'rafts', kind: 'raftBed', area_m2: 3, depth_m: 0.3, air_L_min: 15 },
    ],
    aim: '',
    teaches: '',
    minutes: 10,
    caveats: [],
    free: false,
    sizes: [],
    stocks: [],
    hints: [],
    predictions: [],
    demonstrations: [],
    scoring: {
      plantsWeight: 0.5,
      marks: [
        { fishHealth: 50, harvest: 30 },
        { fishHealth: 70, harvest: 50 },
        { fishHealth: 90, harvest: 80 },
      ],
    },
    reference: { order: ['fish', 'settler', 'rafts', 'sump', 'pump'], actions: [] },
    mistakes: [],
  };
}

/** TAN rises by 0.1 an hour in the first cell and by 0.2 in the next, and so on; `shift` tells two answers apart. */
export function smallSeason(plan: Plan, keepDays: number, shift = 0): SeasonAnswer {
  const holders = plan.loop.filter((stage) => stage.kind !== 'returnPump');
  const cells = holders.length + holders.filter((stage) => stage.kind === 'raftBed').length * 2;
  let first = 0;
  const stages = plan.loop.map((stage) => {
    const count = stage.kind === 'returnPump' ? 0 : stage.kind === 'raftBed' ? 3 : 1;
    const entry = { id: stage.id, kind: stage.kind, first, cells: count, volume_m3: 1 };
    first += count;
    return entry;
  });
  const width = VARIABLE_NAMES.length;
  const row = (target: Float32Array, at: number, hour: number): void => {
    for (let cell = 0; cell < cells; cell += 1) target.set([0.1 * (cell + 1) * hour + shift, 6, 60, 50 + hour], at + cell * width);
  };
  const initial = new Float32Array(cells * width);
  row(initial, 0, 0);
  const days: DayChunk[] = [];
  for (let day = keepDays; day < plan.days; day += 1) {
    const hourly = new Float32Array(24 * cells * width);
    for (let hour = 0; hour < 24; hour += 1) row(hourly, hour * cells * width, day * 24 + hour + 1);
    days.push({
      day,
      hourly,
      extents: new Float64Array(0),
      scores: { ...SCORES, fishHealth: 80 + day },
      events: [{ hour: day * 24 + 9, kind: 'drained', stage: 'settler', amount: 1, byPerson: false }],
    });
  }
  return {
    stages,
    cells,
    variables: VARIABLE_NAMES,
    processNames: [],
    initial,
    firstDay: keepDays,
    days,
    summary: { days: plan.days, scores: SCORES, ledger: [], clipped: 0, steps: 1, rejections: 0 },
    sky: new Float32Array(plan.days).fill(1),
  };
}

const DESIGN: DesignCheck = { stages: [], totalVolume_m3: 1, lift_m: 1, problems: [] };

export interface FakeClient extends Client {
  asked: Request[];
  runs: Extract<Request, { ask: 'run' }>[];
  /** while true, seasons wait until release() */
  hold: boolean;
  release(): void;
  failRuns: string | null;
  /** while true, verdicts wait until release() */
  holdVerdicts: boolean;
  shift: number;
  /** what every season is judged to be */
  judged: Judged;
}

export function fakeClient(lesson: Lesson = smallLesson()): FakeClient {
  const waiting: (() => void)[] = [];
  const fake: FakeClient = {
    asked: [],
    runs: [],
    hold: false,
    holdVerdicts: false,
    failRuns: null,
    shift: 0,
    judged: { marks: [], predictions: [] },
    release: () => {
      while (waiting.length > 0) waiting.shift()?.();
    },
    async ask<R extends Request>(request: R): Promise<Answers[R['ask']]> {
      fake.asked.push(request);
      const answer = (value: Answers[keyof Answers]): Answers[R['ask']] => value as Answers[R['ask']];
      switch (request.ask) {
        case 'catalogue':
          return answer(catalogueEntries());
        case 'processes':
          return answer({ effects: {}, limits: {}, crops: {}, units: {} });
        case 'openLesson':
          return answer(
            request.text === 'broken'
              ? {
                  problems: [{ path: 'plan.days', got: { code: 'value', text: '"many"' }, expected: { code: 'whole', from: 1, to: 1000 } }],
                }
              : { lesson },
          );
        case 'checkDesign':
          return answer(DESIGN);
        case 'comfort':
          return answer([{ applies: 'fish', variable: 'TAN_mgN_L', watchAbove: 2, actAbove: 4 }]);
        case 'judge':
          if (fake.holdVerdicts) await new Promise<void>((go) => waiting.push(go));
          return answer(fake.judged);
        case 'moves':
          return answer(movesBetween(givenOrder(request.lesson), request.built));
        case 'run': {
          fake.runs.push(request);
          if (fake.hold) await new Promise<void>((go) => waiting.push(go));
          if (fake.failRuns !== null) throw new Error(fake.failRuns);
          return answer(smallSeason(request.plan, request.keepDays, fake.shift));
        }
        default:
          throw new Error('not asked for');
      }
    },
  };
  return fake;
}
