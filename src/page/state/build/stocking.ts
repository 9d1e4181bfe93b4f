// Fish that a lesson offers to put in: which are still to be had, from the start while building, or at the hour a person thinks the water is ready.
import type { StoreApi } from 'zustand/vanilla';
import type { Lesson, StockOffer } from '../../../lessons/lesson';
import type { Action, Deed, Plan } from '../../../season/plan';
import { say, sayOr } from '../../../words/say';
import { valueOf, withUnit } from '../../../words/units';
import type { PageActions, PageStore } from '../common/state';

const sameFish = (action: Action, offer: StockOffer): boolean => action.do === 'stock' && action.tank === offer.tank && action.species === offer.species && action.number === offer.number && action.mass_g === offer.mass_g;

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
  return say('stock.fish', { n: valueOf('number', number), species: sayOr(`stock.${species}`, 'stage.unknown.name'), mass: withUnit('mass_g', mass_g) });
}

/**
 * @param edit sets a new design, has it checked and keeps the step, told in words
 * @param act does a deed at the next whole hour of the season
 */
export function createStocking(store: StoreApi<PageStore>, edit: (plan: Plan, what: string) => void, act: (deed: Deed) => void): Pick<PageActions, 'stock'> {
  return {
    stock(index) {
      const { lesson, plan, mode } = store.getState();
      const offer = lesson?.stocks[index];
      if (lesson === null || plan === null || offer === undefined) return;
      const { tank, species, number, mass_g } = offer;
      const deed: Deed = { do: 'stock', tank, species, number, mass_g };
      const at = stocked(lesson, plan).get(index);
      if (mode !== 'build') {
        if (at === undefined) act(deed);
        return;
      }
      const actions = at === undefined ? [{ day: 0, hour: 0, ...deed }, ...plan.actions] : plan.actions.filter((_, place) => place !== at);
      edit({ ...plan, actions }, say(at === undefined ? 'said.stocked' : 'said.unstocked', { fish: fishWords(offer) }));
    },
  };
}
