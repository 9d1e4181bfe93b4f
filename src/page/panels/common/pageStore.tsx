// How panels reach the page: one context with its store, and a hook for each part of its state.
import { createContext, useContext, useMemo, type ReactNode } from 'react';
import { useStore } from 'zustand';
import type { StoreApi } from 'zustand/vanilla';
import type { Build } from '../../state/build/build';
import type { Opened, PageStore } from '../../state/common/page';
import { buildOf, livedOf, openedOf } from '../../state/common/selectors';
import type { Lived } from '../../state/run/lived';
import type { UnitSystem } from '../../../words/units';

/**
 * The store, and the units that every number of the panels is written in: where those change, all that stands in the page is written anew.
 */
interface Page {
  store: StoreApi<PageStore>;
  units: UnitSystem;
}

const PageContext = createContext<Page | null>(null);

export function PageStoreProvider({ store, children }: { store: StoreApi<PageStore>; children: ReactNode }) {
  const units = useStore(store, ({ preferences }) => preferences.units);
  const page = useMemo(() => ({ store, units }), [store, units]);
  return <PageContext.Provider value={page}>{children}</PageContext.Provider>;
}

/** The store itself, for actions and for reading outside of a render. */
export function usePageStore(): StoreApi<PageStore> {
  const page = useContext(PageContext);
  if (page === null) throw new Error('Panels must stand inside PageStoreProvider.');
  return page.store;
}

/** A selected part of the page's state; renders again when it changes. */
export function usePage<T>(select: (state: PageStore) => T): T {
  return useStore(usePageStore(), select);
}

function there<G>(game: G | null): G {
  if (game === null) throw new Error('This panel stands where its mode is not.');
  return game;
}

/** A part of what is built, for panels that are mounted while building alone. */
export function useBuild<T>(pick: (build: Build) => T): T {
  return usePage((page) => pick(there(buildOf(page))));
}

/** A part of the season that is lived, for panels that are mounted while it runs and at its result. */
export function useLived<T>(pick: (lived: Lived) => T): T {
  return usePage((page) => pick(there(livedOf(page))));
}

/** A part of what building and living have in common, for panels that are mounted once a lesson is open. */
export function useOpened<T>(pick: (game: Opened) => T): T {
  return usePage((page) => pick(there(openedOf(page))));
}
