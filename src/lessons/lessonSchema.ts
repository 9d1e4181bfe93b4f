// The schema of a lesson file: its shape and limits. What ties its parts together is checked in lessonChecks.ts and measureChecks.ts.
import { PROCESS_NAMES } from '../model/processes/catalogue';
import { SPECIES } from '../catalogue/kinds';
import { SCORE_NAMES, VARIABLES } from '../season/trajectory';
import { actionSchema } from './actionSchema';
import { editorHint, exactly, idField, listOf, namesOf, numberFrom, oneOf, strict, wholeFrom, wordsField, yesNo } from './fields';
import { FREE_SIZES, TINT_NAMES, LESSON_FORMAT } from './lesson';
import { ACTIONS_MAX, planSchema, STAGES_MAX } from './planSchema';
import { stageSchema } from './stageSchema';

const anyNumber = () => numberFrom(-1e9, 1e9, '');
const times = () => numberFrom(0, 1e6, '×').optional();
const size = () => oneOf(FREE_SIZES);

const build = {
  order: listOf(idField(), 2, STAGES_MAX, 'stageIds'),
  actions: listOf(actionSchema, 0, ACTIONS_MAX, 'actions').default([]),
  sizes: listOf(strict({ stage: idField(), size: size(), value: numberFrom(-5, 10000, '') }), 0, 40, 'sizes').optional(),
  without: listOf(idField(), 0, 8, 'sideStageIds').optional(),
  biofilm: oneOf(['bare', 'seeded', 'mature']).optional(),
};

const measure = {
  stage: idField().optional(),
  variable: oneOf(VARIABLES).optional(),
  process: oneOf(namesOf(Object.fromEntries(PROCESS_NAMES.map((name) => [name, 0])))).optional(),
  score: oneOf(SCORE_NAMES).optional(),
  statistic: oneOf(['max', 'min', 'mean', 'last', 'sum']).default('mean'),
  fromDay: wholeFrom(0, 1000, '').default(0),
  toDay: wholeFrom(1, 1000, '').optional(),
};
const statement = { ...measure, atLeast: anyNumber().optional(), atMost: anyNumber().optional() };
const consequenceSchema = strict({ ...statement, atLeastTimes: times(), atMostTimes: times() });

const choices = listOf(
  strict({ key: idField(), text: wordsField(1, 120), atLeast: anyNumber().optional(), below: anyNumber().optional() }),
  2,
  6,
  'choices',
);
const predictionSchema = strict({
  key: idField(),
  askDay: wholeFrom(0, 1000, '').default(0),
  dueDay: wholeFrom(1, 1000, ''),
  question: wordsField(1, 200),
  look: idField(),
  measure: strict(measure),
  choices,
  explanations: listOf(strict({ key: idField(), text: wordsField(1, 200), evidence: strict(statement) }), 2, 5, 'explanations'),
});
const demonstrationSchema = strict({
  key: idField(),
  title: wordsField(1, 80),
  left: idField(),
  right: idField(),
  leftName: wordsField(1, 40),
  rightName: wordsField(1, 40),
  tint: oneOf(TINT_NAMES),
  look: idField(),
  question: wordsField(1, 160),
  measure: strict(measure),
  choices,
  turningPoints: listOf(
    strict({ day: wholeFrom(0, 1000, ''), hour: wholeFrom(0, 23, '').default(9), say: wordsField(1, 160) }),
    1,
    12,
    'turningPoints',
  ),
});

const percent = () => numberFrom(0, 100, '');
const markSchema = strict({
  fishHealth: percent(),
  harvest: percent(),
  goals: listOf(strict({ ...statement, text: wordsField(1, 120) }), 0, 6, 'goals').optional(),
  moves: wholeFrom(0, 40, 'moves').optional(),
});

export const lessonSchema = strict({
  $schema: editorHint(),
  format: exactly(LESSON_FORMAT),
  id: idField(),
  title: wordsField(1, 80),
  brief: listOf(wordsField(1, 200), 1, 3, 'lines'),
  aim: wordsField(0, 240).default(''),
  teaches: wordsField(0, 80).default(''),
  minutes: wholeFrom(1, 240, 'minutes').optional(),
  caveats: listOf(wordsField(1, 240), 0, 6, 'caveats').default([]),
  free: yesNo().default(false),
  plan: planSchema,
  shelf: listOf(stageSchema, 1, STAGES_MAX, 'parts'),
  given: listOf(idField(), 2, STAGES_MAX, 'stageIds').optional(),
  sizes: listOf(
    strict({ stage: idField(), size: size(), from: numberFrom(-5, 10000, ''), to: numberFrom(-5, 10000, '') }),
    0,
    40,
    'sizes',
  ).default([]),
  stocks: listOf(
    strict({ tank: idField(), species: oneOf(namesOf(SPECIES)), number: wholeFrom(1, 100000, 'fish'), mass_g: numberFrom(0.1, 5000, 'g') }),
    0,
    6,
    'stockings',
  ).default([]),
  hints: listOf(
    strict({ about: wordsField(1, 80), notice: wordsField(1, 240), think: wordsField(1, 240), do: wordsField(1, 240) }),
    0,
    12,
    'hints',
  ).default([]),
  predictions: listOf(predictionSchema, 0, 6, 'predictions').default([]),
  demonstrations: listOf(demonstrationSchema, 0, 6, 'demonstrations').default([]),
  scoring: strict({ plantsWeight: numberFrom(0, 1, ''), marks: listOf(markSchema, 3, 3, 'marks') }),
  reference: strict(build),
  mistakes: listOf(
    strict({ key: idField(), title: wordsField(1, 120), ...build, shows: listOf(consequenceSchema, 1, 12, 'consequences') }),
    0,
    20,
    'mistakes',
  ).default([]),
});
