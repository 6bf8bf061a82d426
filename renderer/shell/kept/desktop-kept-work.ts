import type { DesktopBridge, KeptDocument } from '../bridge.ts';
import type { KeptEntry, KeptWork } from './kept-work.ts';

/** Unsaved work by way of the desktop shell, which keeps it in the user's data folder. */
export function desktopKeptWork(bridge: DesktopBridge): KeptWork {
  return {
    hasWindows: true,
    list: async (unasked) => (await bridge.listKept({ unasked })).map(entryOf),
    bringBack: ({ id }) => bridge.bringBack({ id }),
    throwAway: ({ id }) => bridge.throwAway({ id }),
    keep({ text, about: { file, ...about } }) {
      const path = typeof file?.place === 'string' ? file.place : null;
      return bridge.keepWork({ text, about: { ...about, path, stamp: file?.stamp ?? null } });
    },
    async forget() {
      await bridge.forgetWork();
    },
  };
}

/** The entry that the shell tells of, with its file as the screen knows files. */
export function entryOf({ about, ...kept }: KeptDocument): KeptEntry {
  if (!about) return { ...kept, about };
  const { path, stamp, ...known } = about;
  const file =
    path === null ? null : { name: path.split(/[\\/]/).at(-1) ?? path, place: path, ...(stamp && { stamp }) };
  return { ...kept, about: { ...known, file } };
}
