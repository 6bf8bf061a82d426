import type { Page } from '@playwright/test';
import type { Shell } from './launch.ts';
import { chooseMenu, expect, secondWindow, test } from './test.ts';

/*
 * Stand-ins share a browser: each must find it as if it were new, however the one before it ended. Electron has the
 * user's data folder for what pages keep, so it has no part in this.
 */

/** Keeps something in each place that a page has. */
const leave = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    localStorage.setItem('left', 'here');
    await cookieStore.set('left', 'here');
    await caches.open('left');
    await new Promise((resolve) => indexedDB.open('left').addEventListener('success', resolve));
  });

const found = (page: Page) =>
  page.evaluate(async () => ({
    stored: Object.keys(localStorage),
    cookies: (await cookieStore.getAll()).map(({ name }) => name),
    caches: await caches.keys(),
    databases: (await indexedDB.databases()).map(({ name }) => name),
    geolocation: (await navigator.permissions.query({ name: 'geolocation' })).state,
  }));

const left = { stored: ['left'], cookies: ['left'], caches: ['left'], databases: ['left'], geolocation: 'granted' };
const nothing = { stored: [], cookies: [], caches: [], databases: [], geolocation: 'denied' };

const endings: Record<string, (shell: Shell) => Promise<void>> = {
  quit: async (shell) => {
    await chooseMenu(shell, 'quit');
    await shell.ended;
  },
  stopped: (shell) => shell.stop(),
  killed: (shell) => shell.kill(),
  'killed with a page that hangs': async (shell) => {
    await shell.page.evaluate(() => {
      setTimeout(() => {
        for (;;);
      });
    });
    await shell.kill();
  },
  'killed with a page that has died': async (shell) => {
    const died = shell.page.waitForEvent('crash');
    await shell.evaluate(({ BrowserWindow, dialog }) => {
      dialog.showMessageBox = () => new Promise(() => {});
      for (const window of BrowserWindow.getAllWindows()) window.webContents.forcefullyCrashRenderer();
    }, null);
    await died;
    await shell.kill();
  },
};

test('a stand-in finds nothing of the one before it, however that ended', async ({ start }) => {
  let shell = await start();
  for (const [ending, end] of Object.entries(endings))
    await test.step(ending, async () => {
      // From here on it lets its windows have what they ask for.
      await shell.evaluate(({ session }) => session.defaultSession.setPermissionCheckHandler(() => true), null);
      await chooseMenu(shell, 'new');
      const windows = [shell.page, await secondWindow(shell)] as const;
      await leave(windows[0]);
      expect(await found(windows[1])).toEqual(left);
      await end(shell);
      expect(windows.map((page) => page.isClosed())).toEqual([true, true]);

      shell = await start();
      expect(shell.pages()).toEqual([shell.page]);
      expect(await found(shell.page)).toEqual(nothing);
    });
});

test('a stand-in does not start beside another, whose windows it would take for its own', async ({ start }) => {
  const first = await start();
  await expect(start()).rejects.toThrow('another stand-in has windows');
  await first.kill();
  await start();
});
