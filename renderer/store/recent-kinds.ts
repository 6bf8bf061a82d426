import { createStore } from 'zustand/vanilla';
import { keepChoice, keptChoice } from '../shell/keep-choice.ts';

const key = 'stationwright.recent';
const most = 4;

/** The ids of the kinds that were placed last, newest first. */
export const recentStore = createStore<{ ids: readonly string[] }>(() => ({ ids: [] }));

export function loadRecent() {
  try {
    const ids: unknown = JSON.parse(keptChoice(key) ?? '[]');
    if (Array.isArray(ids)) recentStore.setState({ ids: ids.filter((id) => typeof id === 'string').slice(0, most) });
  } catch {
    // Nothing that anyone would miss.
  }
}

export function rememberRecent(id: string) {
  const ids = [id, ...recentStore.getState().ids.filter((other) => other !== id)].slice(0, most);
  recentStore.setState({ ids });
  keepChoice(key, JSON.stringify(ids));
}
