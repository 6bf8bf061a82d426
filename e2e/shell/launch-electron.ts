import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { _electron } from '@playwright/test';
import { findElectron } from '../../electron/start/electron-program.mjs';
import type { Launch, Shell } from './launch.ts';

/** Why the desktop app can't run on Electron itself here, or null. */
export const electronMissing = findElectron() ? null : "Electron's program is not on this machine";

/** The desktop app on Electron itself, with a data folder of its own. */
export async function launchElectron({ app: folder, args = [] }: Launch): Promise<Shell> {
  const home = mkdtempSync(path.join(tmpdir(), 'stationwright-electron-'));
  // Chromium's sandbox refuses to run for root on Linux.
  const sandbox = process.platform === 'linux' && process.getuid?.() === 0 ? ['--no-sandbox'] : [];
  const app = await _electron.launch({
    executablePath: findElectron() ?? '',
    args: [...sandbox, `--user-data-dir=${home}`, folder, ...args],
    timeout: 20_000,
  });
  const main = app.process();
  const ended = new Promise<number | null>((resolve) => main.once('exit', resolve));
  return {
    page: await app.firstWindow(),
    pages: () => app.windows(),
    evaluate: (inMain, argument) => app.evaluate(inMain as never, argument as never),
    ended,
    stop: async () => {
      if (main.exitCode === null) main.kill();
      await ended;
      rmSync(home, { recursive: true, force: true });
    },
  };
}
