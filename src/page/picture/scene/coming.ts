// A picture that is being drawn while the one before it still stands.
import type { Studio } from '../kit/studio';
import type { Handle } from './handles';
import type { WorldLayout } from './layout';
import type { Picture } from './picture';
import type { View } from './sight';

/** A picture on its way. drawn: it waits for the look to arrive; out: the look leaves when it has come. */
export interface Coming {
  layout: WorldLayout;
  handles: readonly Handle[];
  view: View;
  k: number;
  drawn: Picture | null;
  out: boolean;
  studio: Studio;
  /** where its sheets are being made */
  own: Studio | null;
  steps: Generator<void, Picture | null>;
}
