// The picture of each kind of stage, as shown on the parts shelf, and those that stand for fish and for leaves.
import fishGlide from '../../../../assets/sprites/fish-glide.svg?url';
import lettuce from '../../../../assets/sprites/lettuce-4.svg?url';
import { stageIcons } from '../../../catalogue/icons';
import type { StageKind } from '../../state/common/contract';

export const STAGE_PICTURES: Readonly<Record<StageKind, string>> = stageIcons;

export const FISH_PICTURE = fishGlide;
export const LETTUCE_PICTURE = lettuce;
