import { useEffect } from 'react';
import { createStore } from 'zustand/vanilla';

/** How many fields and forms hold what is no step of the document yet. */
export const typedStore = createStore<{ fields: number }>(() => ({ fields: 0 }));

export const isTyped = (): boolean => typedStore.getState().fields > 0;

const count = (more: number) => typedStore.setState(({ fields }) => ({ fields: fields + more }));

/** Tells of a field or form whether it holds such: it would be lost with the window. */
export function useTyped(holds: boolean) {
  useEffect(() => {
    if (!holds) return;
    count(1);
    return () => count(-1);
  }, [holds]);
}
