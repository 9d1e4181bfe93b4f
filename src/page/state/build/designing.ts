// Puts a design on the table and has the worker check it: levels, falls and comfort bands.
import type { StoreApi } from 'zustand/vanilla';
import type { Plan } from '../../../season/plan';
import { openedOf } from '../common/selectors';
import type { PageState, PageStore } from '../common/page';
import type { Client } from '../common/state';
import { withStep, type Build } from './build';

/** What else changes with a design, in the same assignment. */
type Beside = Partial<Pick<PageState, 'view' | 'announcement'>>;
/** Shows a design and has it checked, without making a step of it. */
export type ShowDesign = (build: Build, beside?: Beside) => void;
/** Makes a step of a new design, told in words. */
export type EditDesign = (build: Build, plan: Plan, what: string, beside?: Beside) => void;

export interface Designing {
  show: ShowDesign;
  edit: EditDesign;
  /** Has a design checked that is shown already. */
  check(plan: Plan): Promise<void>;
}

/**
 * @param forget forgets seasons of the design before that are still on their way
 * @param fail tells what the worker could not do
 */
export function createDesigning(client: Client, store: StoreApi<PageStore>, forget: () => void, fail: (error: unknown) => void): Designing {
  let checks = 0;

  /** Only the newest answer counts. */
  const check = async (plan: Plan): Promise<void> => {
    checks += 1;
    const mine = checks;
    try {
      const [design, comfort] = await Promise.all([client.ask({ ask: 'checkDesign', plan }), client.ask({ ask: 'comfort', plan })]);
      const game = openedOf(store.getState());
      if (mine === checks && game !== null) store.setState({ game: { ...game, design, comfort } });
    } catch (error) {
      if (mine === checks) fail(error);
    }
  };

  const show: ShowDesign = (build, beside) => {
    if (build.busy) forget();
    store.setState({ ...beside, game: { ...build, busy: false } });
    void check(build.plan);
  };

  return { check, show, edit: (build, plan, what, beside) => show({ ...build, plan, history: withStep(build, what) }, beside) };
}
