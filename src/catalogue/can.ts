// Asks a kind of stage what it can do, by its name.
import { stageType } from './stageTypes';
import type { Capabilities } from '../model/stages/stageKind';

/** @throws RangeError where the kind is not in the catalogue */
export const can = (kind: string, what: keyof Capabilities): boolean => Boolean(stageType(kind)[what]);

/** Where the loop's pump stands, -1 where it has none. */
export const pumpAt = (loop: readonly { kind: string }[]): number => loop.findIndex((stage) => can(stage.kind, 'pumps'));
