import type { NotDone } from '../bridge.ts';
import { forgetChoice, keptChoice } from '../keep-choice.ts';
import { allRows, databaseReason, deleteRow, type KeptRow, putRow } from './kept-database.ts';
import type { KeptWork } from './kept-work.ts';
import { openTabLocks } from './tab-locks.ts';

/** Under this the first version kept one text, and nothing about it. */
const firstVersionName = 'stationwright.draft';

/** Unsaved work in the browser's database: an entry for each tab, told apart by locks that live as long as the tab. */
export function browserKeptWork(): KeptWork {
  const locks = openTabLocks();
  let own = freshId();
  return {
    hasWindows: false,

    async list() {
      try {
        await takeOverFirstVersion();
        const rows = await allRows();
        const taken = await Promise.all(rows.map(({ id }) => locks.isTaken(id)));
        return rows
          .filter((_, i) => !taken[i])
          .map((row) => ({ ...row, fileChanged: false }))
          .sort((a, b) => (b.keptAt ?? 0) - (a.keptAt ?? 0));
      } catch (error) {
        return notKept(error);
      }
    },

    async bringBack({ id }) {
      if (!(await locks.take(id))) return { error: 'Another tab has brought it back by now.' };
      // What was in this tab before has just been saved or given up.
      if (own !== id) await deleteRow(own).catch(() => {});
      own = id;
      return 'here';
    },

    async throwAway({ id }) {
      if (await locks.isTaken(id)) return { error: 'Another tab has brought it back by now: it stays there.' };
      return attempt(() => deleteRow(id));
    },

    keep: (work) =>
      attempt(async () => {
        if (!(await locks.take(own))) own = freshId();
        await locks.take(own);
        await putRow({ ...work, id: own, keptAt: Date.now() });
      }),

    async forget() {
      // Where nothing can be taken away nothing could be kept.
      await deleteRow(own).catch(() => {});
    },
  };
}

/** Good on pages without a secure address too, where `randomUUID` is missing. */
const freshId = () => `${Date.now().toString(36)}-${Math.random().toString(36).slice(2)}`;

async function attempt(act: () => Promise<unknown>): Promise<NotDone | null> {
  try {
    await act();
    return null;
  } catch (error) {
    return notKept(error);
  }
}

const notKept = (error: unknown): NotDone => ({
  error: `This browser does not keep unsaved work: ${databaseReason(error)}.`,
});

async function takeOverFirstVersion() {
  const text = keptChoice(firstVersionName);
  if (text === null) return;
  const row: KeptRow = { id: freshId(), text, about: null, keptAt: null };
  await putRow(row);
  forgetChoice(firstVersionName);
}
