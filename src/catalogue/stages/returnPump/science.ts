// Return pump: its curve and pipes are the season's circuit; it holds no water of its own.
import { holdsNoWater } from '../../../model/stages/holdsNoWater';
import type { StageScience } from '../../../model/stages/stageScience';

export const science: StageScience = holdsNoWater;
