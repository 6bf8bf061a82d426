import { _electron } from '@playwright/test';
import { findElectron } from '../../electron/start/electron-program.mjs';
import type { Launch, Shell } from './launch.ts';

/** Why the desktop app can't run on Electron itself here, or null. */
export const electronMissing = findElectron() ? null : "Electron's program is not on this machine";

/** The desktop app on Electron itself. */
export async function launchElectron({ app: folder, home, args = [] }: Launch): Promise<Shell> {
  // Chromium's sandbox refuses to run for root on Linux.
  const sandbox = process.platform === 'linux' && process.getuid?.() === 0 ? ['--no-sandbox'] : [];
  const app = await _electron.launch({
    executablePath: findElectron() ?? '',
    args: [...sandbox, `--user-data-dir=${home}`, folder, ...args],
    timeout: 20_000,
  });
  const main = app.process();
  const ended = new Promise<number | null>((resolve) => main.once('exit', resolve));
  const end = async (signal: NodeJS.Signals) => {
    if (main.exitCode === null) main.kill(signal);
    await ended;
  };
  return {
    page: await app.firstWindow(),
    pages: () => app.windows(),
    evaluate: (inMain, argument) => app.evaluate(inMain as never, argument as never),
    ended,
    stop: () => end('SIGTERM'),
    kill: () => end('SIGKILL'),
  };
}
