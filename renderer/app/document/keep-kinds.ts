import { loadOwnKinds, ownKindsKey } from '../../store/own-kinds.ts';
import { loadRecent } from '../../store/recent-kinds.ts';

/** Brings back the user's own kinds and the ones placed last, and follows what other windows do to the former. */
export function keepKinds() {
  loadOwnKinds();
  loadRecent();
  window.addEventListener('storage', (event) => {
    if (event.key === ownKindsKey) loadOwnKinds();
  });
}
