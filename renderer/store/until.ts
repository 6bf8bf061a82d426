import type { StoreApi } from 'zustand/vanilla';

/** Resolves once a store is in a state. */
export function until<T>(store: StoreApi<T>, isIt: (state: T) => boolean): Promise<void> {
  return new Promise((resolve) => {
    const look = () => {
      if (!isIt(store.getState())) return;
      end();
      resolve();
    };
    const end = store.subscribe(look);
    look();
  });
}
