// Writes what the page shows into the picture's moment, once a frame.
import type { Moment } from '../kit/moment';
import type { PageState } from '../../state/common/page';
import { comfortOf, hourOf, planOf, seasonOf, speedOf } from '../../state/common/selectors';
import { TINTS } from '../../state/common/tints';

/** Takes over the page's state for this frame, which came `moment.dt` after the last. */
export function takeOver(moment: Moment, state: Pick<PageState, 'game' | 'view' | 'preferences'>): void {
  const speed = speedOf(state);
  moment.view = seasonOf(state);
  moment.plan = planOf(state);
  moment.comfort = comfortOf(state);
  moment.tint = state.game.mode === 'class' ? state.game.scale : TINTS[state.view.tint];
  moment.now_h = hourOf(state);
  moment.moving = !state.preferences.reducedMotion;
  moment.hurries = speed === 'day1' || speed === 'days5';
  moment.advance();
}
