import { randomBytes } from 'node:crypto';
import { open, realpath, rename, rm, stat } from 'node:fs/promises';

/**
 * Writes all of the content or, throwing, nothing: it goes to a new file beside the old one, onto the disk, and
 * only then takes the old one's name. A full disk or a power cut half way leaves the old file as it was.
 */
export async function writeAtomically(file: string, content: string | Uint8Array): Promise<void> {
  // A link keeps being a link: its target is what gets replaced.
  const target = await realpath(file).catch(() => file);
  const mode = await stat(target).then(
    (old) => old.mode,
    () => 0o666,
  );
  const fresh = `${target}.${randomBytes(6).toString('hex')}.tmp`;
  try {
    const handle = await open(fresh, 'wx', mode);
    try {
      await handle.writeFile(content);
      await handle.sync();
    } finally {
      await handle.close();
    }
    await rename(fresh, target);
  } catch (error) {
    await rm(fresh, { force: true });
    throw error;
  }
}
