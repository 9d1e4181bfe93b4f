// What the page is told of the kinds of stages: what each can do, its sizes, controls and cautions; no science crosses.
import { STAGES } from '../catalogue/kinds';
import { CAPABILITIES } from '../model/stages/stageKind';
import type { StageType } from '../model/stages/stageType';
import type { CatalogueEntry } from './messages';

function entryOf(type: StageType): CatalogueEntry {
  const { kind, group, controls, airMax_L_min, cautions, sizes } = type;
  const can = Object.fromEntries(CAPABILITIES.flatMap((name) => (type[name] === undefined ? [] : [[name, type[name]]])));
  return { kind, group, controls, airMax_L_min, cautions, sizes, ...can };
}

export const catalogueEntries = (): CatalogueEntry[] => STAGES.map(entryOf);
