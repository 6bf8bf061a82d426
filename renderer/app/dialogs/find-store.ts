import { createStore } from 'zustand/vanilla';

export const findStore = createStore<{ open: boolean }>(() => ({ open: false }));
export const openFind = () => findStore.setState({ open: true });
export const closeFind = () => findStore.setState({ open: false });
