/** Tells which entries belong to tabs that are alive. */
export interface TabLocks {
  /** Whether this tab has the entry from here on; false where another tab that is alive has it. */
  take(id: string): Promise<boolean>;
  /** Whether a tab that is alive has it: this one, or another. */
  isTaken(id: string): Promise<boolean>;
}

// A page that was reloaded may give up its locks only after the new one has begun.
const lastingMs = 2000;
const answerMs = 400;

/** By the browser's locks, which die with their tab; where there are none, by asking the other tabs. */
export function openTabLocks(): TabLocks {
  const locks: LockManager | undefined = navigator.locks;
  return locks ? byLocks(locks) : byAsking();
}

function byLocks(locks: LockManager): TabLocks {
  const own = new Set<string>();
  /** Whether no other tab has the lock, or gives it up soon; it is held for as long as `use` takes. */
  const isFree = (id: string, use: () => Promise<void>) =>
    new Promise<boolean>((resolve) => {
      const granted = () => {
        resolve(true);
        return use();
      };
      const signal = AbortSignal.timeout(lastingMs);
      const isLate = (error: unknown) => error instanceof DOMException && error.name === 'TimeoutError';
      // Locks that do not work make no entry anybody's: rather offered twice than never.
      locks.request(`stationwright.unsaved.${id}`, { signal }, granted).catch((error) => resolve(!isLate(error)));
    });
  return {
    async take(id) {
      if (own.has(id)) return true;
      const free = await isFree(id, () => new Promise(() => {}));
      if (free) own.add(id);
      return free;
    },
    isTaken: async (id) => own.has(id) || !(await isFree(id, async () => {})),
  };
}

type Word = { readonly ask: string } | { readonly have: string };

function byAsking(): TabLocks {
  const own = new Set<string>();
  const channel = 'BroadcastChannel' in globalThis ? new BroadcastChannel('stationwright.unsaved') : null;
  const say = (word: Word) => channel?.postMessage(word);
  channel?.addEventListener('message', ({ data }: MessageEvent<Word>) => {
    if ('ask' in data && own.has(data.ask)) say({ have: data.ask });
  });
  const isOthers = (id: string) =>
    new Promise<boolean>((resolve) => {
      const hear = ({ data }: MessageEvent<Word>) => 'have' in data && data.have === id && end(true);
      const end = (taken: boolean) => {
        channel?.removeEventListener('message', hear);
        resolve(taken);
      };
      channel?.addEventListener('message', hear);
      say({ ask: id });
      setTimeout(end, answerMs, false);
    });
  return {
    async take(id) {
      const free = own.has(id) || !(await isOthers(id));
      if (free) own.add(id);
      return free;
    },
    isTaken: async (id) => own.has(id) || isOthers(id),
  };
}
