import { createStore } from 'zustand/vanilla';

const key = 'stationwright.recent';
const most = 4;

/** The ids of the kinds that were placed last, newest first. */
export const recentStore = createStore<{ ids: readonly string[] }>(() => ({ ids: [] }));

export function loadRecent() {
  try {
    const ids: unknown = JSON.parse(localStorage.getItem(key) ?? '[]');
    if (Array.isArray(ids)) recentStore.setState({ ids: ids.filter((id) => typeof id === 'string').slice(0, most) });
  } catch {
    // Nothing that anyone would miss.
  }
}

export function rememberRecent(id: string) {
  const ids = [id, ...recentStore.getState().ids.filter((other) => other !== id)].slice(0, most);
  recentStore.setState({ ids });
  try {
    localStorage.setItem(key, JSON.stringify(ids));
  } catch {
    // They are remembered while the window is open.
  }
}
