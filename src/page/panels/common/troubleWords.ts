// Puts a trouble into one sentence.
import type { Plan } from '../../state/common/contract';
import type { Trouble } from '../../state/run/troubles';
import { isWord, say, sayOr } from '../../../words/say';
import { stageName } from '../../../words/stageNames';
import { figure, valueOf, withUnit } from '../../../words/units';

export function troubleWords(plan: Plan, trouble: Trouble): string {
  const stage = stageName([...plan.loop, ...plan.side], trouble.stage);
  if (trouble.kind === 'event') return sayOr(`trouble.${trouble.event}`, 'design.unknown', { n: figure(trouble.amount, 0), stage });
  const key = `variable.${trouble.variable}`;
  return say(`trouble.${trouble.applies}${trouble.side === 'above' ? 'Above' : 'Below'}`, {
    what: isWord(key) ? say(key) : trouble.variable,
    stage,
    value: valueOf(trouble.variable, trouble.value),
    limit: withUnit(trouble.variable, trouble.limit),
  });
}
