// Fish that a lesson offers to put in: which are still to be had, from the start while building, or at the hour a person thinks the water
// is ready.
import type { StoreApi } from 'zustand/vanilla';
import type { Lesson, StockOffer } from '../../../lessons/lesson';
import type { Action, Deed, Plan } from '../../../season/plan';
import { say, sayOr } from '../../../words/say';
import { valueOf, withUnit } from '../../../words/units';
import type { PageActions } from '../common/actions';
import type { PageStore } from '../common/page';
import { openedOf } from '../common/selectors';
import type { EditDesign } from './designing';

function sameFish(action: Action, { tank, species, number, mass_g }: StockOffer): boolean {
  return (
    action.do === 'stock' && action.tank === tank && action.species === species && action.number === number && action.mass_g === mass_g
  );
}

/** Offers put in by a plan's actions, each once, as indices into the lesson's offers with the place of their action. */
export function stocked(lesson: Pick<Lesson, 'stocks'>, plan: Pick<Plan, 'actions'>): Map<number, number> {
  const found = new Map<number, number>();
  const taken = new Set<number>();
  lesson.stocks.forEach((offer, index) => {
    const at = plan.actions.findIndex((action, place) => !taken.has(place) && sameFish(action, offer));
    if (at < 0) return;
    taken.add(at);
    found.set(index, at);
  });
  return found;
}

/** "40 tilapia of 20 g". */
export function fishWords({ species, number, mass_g }: StockOffer): string {
  return say('stock.fish', {
    n: valueOf('number', number),
    species: sayOr(`stock.${species}`, 'stage.unknown.name'),
    mass: withUnit('mass_g', mass_g),
  });
}

/** @param act does a deed at the next whole hour of the season */
export function createStocking(store: StoreApi<PageStore>, edit: EditDesign, act: (deed: Deed) => void): Pick<PageActions, 'stock'> {
  return {
    stock(index) {
      const game = openedOf(store.getState());
      const offer = game?.lesson.stocks[index];
      if (game === null || offer === undefined) return;
      const { tank, species, number, mass_g } = offer;
      const deed: Deed = { do: 'stock', tank, species, number, mass_g };
      const at = stocked(game.lesson, game.plan).get(index);
      if (game.mode !== 'build') {
        if (at === undefined) act(deed);
        return;
      }
      const actions =
        at === undefined ? [{ day: 0, hour: 0, ...deed }, ...game.plan.actions] : game.plan.actions.filter((_, place) => place !== at);
      edit(game, { ...game.plan, actions }, say(at === undefined ? 'said.stocked' : 'said.unstocked', { fish: fishWords(offer) }));
    },
  };
}
