// A kind of stage as the engine has it: what it is and how it works, under its name.
import type { KindFacts } from './stageKind';
import type { StageScience, StageSizes } from './stageScience';

export interface StageType extends KindFacts, StageScience {
  kind: string;
  /** its sizes where nobody says otherwise */
  defaults: StageSizes;
}

/** Puts together what the files of a kind's folder say. */
export function stageOf<Kind extends string>(kind: Kind, facts: KindFacts, science: StageScience): StageType & { kind: Kind } {
  const defaults: StageSizes = Object.fromEntries(
    Object.entries(facts.sizes).map(([name, size]) => [name, 'usual' in size ? size.usual : size[0]]),
  );
  return { kind, ...facts, ...science, defaults: facts.pumps ? defaults : { ...defaults, count: 1 } };
}
