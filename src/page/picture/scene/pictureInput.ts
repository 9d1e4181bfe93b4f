// What a picture is drawn from.
import type { Plan } from '../kit/terms';
import type { Living } from '../life/living';
import type { Legible } from '../marks/legible';
import type { Handle } from './handles';
import type { WorldLayout } from './layout';

export interface PictureInput {
  layout: WorldLayout;
  plan: Plan;
  building: boolean;
  aerated: ReadonlySet<string>;
  living: Living;
  bad: ReadonlySet<string>;
  /** stages that are named and numbered; null: all */
  told: readonly string[] | null;
  legible: Legible;
  /** while building */
  handles: readonly Handle[];
  /** the stage that is selected as the picture is drawn */
  looked: string | null;
  viewTop: number;
}
