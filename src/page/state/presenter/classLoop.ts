// One of the two loops before a class: a season that is shown and that nobody acts in.
import type { Plan } from '../../../season/plan';
import type { ComfortBand, DesignCheck } from '../../../worker/messages';
import type { SeasonView, Speed } from '../common/state';
import type { Tint } from '../common/tints';

export interface ClassLoop {
  mode: 'class';
  plan: Plan;
  design: DesignCheck;
  comfort: readonly ComfortBand[];
  season: SeasonView;
  now_h: number;
  lived_h: number;
  speed: Speed;
  /** scale of the tint, shared by both loops */
  scale: Tint;
  /** stages whose name and number are shown in the picture */
  told: readonly string[];
}
