import { createStore } from 'zustand/vanilla';

/** Whether a choice could not be kept: storage is forbidden here, or there is no room. */
export const choicesStore = createStore<{ failed: boolean }>(() => ({ failed: false }));

/*
 * The one way to the browser's small store for choices (theme, own kinds, label sheet). A browser may forbid it, so
 * that even naming it throws, or have no room left; then what is chosen lasts as long as the window.
 */

/** What was kept under a name; null where nothing was, or the browser doesn't say. */
export function keptChoice(name: string): string | null {
  try {
    return localStorage.getItem(name);
  } catch {
    return null;
  }
}

/** Keeps a text under a name for the next time; false where it can't be kept. */
export function keepChoice(name: string, text: string): boolean {
  try {
    localStorage.setItem(name, text);
    return true;
  } catch {
    choicesStore.setState({ failed: true });
    return false;
  }
}

export function forgetChoice(name: string) {
  try {
    localStorage.removeItem(name);
  } catch {
    // Then there was nothing to forget.
  }
}
