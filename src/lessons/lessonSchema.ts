// The schema of a lesson file: its shape and limits. What ties its parts together is checked in lessonChecks.ts.
import { VARIABLES } from '../season/trajectory';
import { actionSchema } from './actionSchema';
import { editorHint, exactly, idField, listOf, numberFrom, oneOf, strict, textField, wholeFrom } from './fields';
import { LESSON_FORMAT } from './lesson';
import { ACTIONS_MAX, planSchema, STAGES_MAX } from './planSchema';
import { stageSchema } from './stageSchema';

const build = {
  order: listOf(idField(), 2, STAGES_MAX, 'stage ids'),
  actions: listOf(actionSchema, 0, ACTIONS_MAX, 'actions').default([]),
};

const consequenceSchema = strict({
  stage: idField(),
  variable: oneOf(VARIABLES),
  statistic: oneOf(['max', 'min', 'mean', 'last']),
  fromDay: wholeFrom(0, 1000, '').default(0),
  atLeastTimes: numberFrom(0, 1e6, 'times').optional(),
  atMostTimes: numberFrom(0, 1e6, 'times').optional(),
});

const percent = () => numberFrom(0, 100, '');

export const lessonSchema = strict({
  $schema: editorHint(),
  format: exactly(LESSON_FORMAT),
  id: idField(),
  title: textField(1, 80),
  brief: listOf(textField(1, 200), 1, 3, 'lines'),
  plan: planSchema,
  shelf: listOf(stageSchema, 1, STAGES_MAX, 'parts'),
  scoring: strict({
    plantsWeight: numberFrom(0, 1, ''),
    marks: listOf(strict({ fishHealth: percent(), harvest: percent() }), 3, 3, 'thresholds, for one, two and three marks'),
  }),
  reference: strict(build),
  mistakes: listOf(strict({ key: idField(), title: textField(1, 120), ...build, shows: listOf(consequenceSchema, 1, 12, 'consequences') }), 0, 20, 'mistakes').default([]),
});
