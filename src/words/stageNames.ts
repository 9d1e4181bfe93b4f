// Names of stages as a person reads them; stages of one kind are numbered when there are several.
import { sayOr } from './say';

/** The name of a kind of stage. */
export function kindName(kind: string): string {
  return sayOr(`stage.${kind}.name`, 'stage.unknown.name');
}

/** The name of one stage among all of a plan: "Raft bed", or "Raft bed 2" when there are several. */
export function stageName(stages: readonly { id: string; kind: string }[], id: string): string {
  const stage = stages.find((one) => one.id === id);
  if (stage === undefined) return kindName('unknown');
  const alike = stages.filter((one) => one.kind === stage.kind);
  return alike.length > 1 ? `${kindName(stage.kind)} ${alike.indexOf(stage) + 1}` : kindName(stage.kind);
}
