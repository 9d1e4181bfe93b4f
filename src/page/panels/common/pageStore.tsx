// How panels reach the page's store: one context, one selector hook.
import { createContext, useContext, type ReactNode } from 'react';
import { useStore } from 'zustand';
import type { StoreApi } from 'zustand/vanilla';
import type { PageStore } from '../../state/common/state';

const StoreContext = createContext<StoreApi<PageStore> | null>(null);

export function PageStoreProvider({ store, children }: { store: StoreApi<PageStore>; children: ReactNode }) {
  return <StoreContext.Provider value={store}>{children}</StoreContext.Provider>;
}

/** The store itself, for actions and for reading outside of a render. */
export function usePageStore(): StoreApi<PageStore> {
  const store = useContext(StoreContext);
  if (store === null) throw new Error('Panels must stand inside PageStoreProvider.');
  return store;
}

/** A selected part of the page's state; renders again when it changes. */
export function usePage<T>(select: (state: PageStore) => T): T {
  return useStore(usePageStore(), select);
}
