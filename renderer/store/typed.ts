import { useEffect } from 'react';
import { createStore } from 'zustand/vanilla';

/** How many fields hold text that is no step of the document yet. */
export const typedStore = createStore<{ fields: number }>(() => ({ fields: 0 }));

const count = (more: number) => typedStore.setState(({ fields }) => ({ fields: fields + more }));

/** Tells of a field whether it holds such text: it would be lost with the window. */
export function useTyped(isTyped: boolean) {
  useEffect(() => {
    if (!isTyped) return;
    count(1);
    return () => count(-1);
  }, [isTyped]);
}
