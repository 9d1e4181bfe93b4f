// Base dosing: what drips where is in the season's dosing; the can itself holds none of the loop's water.
import { holdsNoWater } from '../../../model/stages/holdsNoWater';
import type { StageScience } from '../../../model/stages/stageScience';

export const science: StageScience = holdsNoWater;
