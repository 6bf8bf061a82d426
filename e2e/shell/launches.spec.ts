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

const endings: Record<string, (shell: Shell) => Promise<unknown>> = {
  'is quit': async (shell) => {
    await chooseMenu(shell, 'quit');
    return shell.ended;
  },
  'is stopped': (shell) => shell.stop(),
  'is killed': (shell) => shell.kill(),
  'is killed with a page that hangs': async (shell) => {
    await shell.page.evaluate(() => {
      setTimeout(() => {
        for (;;);
      });
    });
    await shell.kill();
  },
  'is killed with a page that has died': async (shell) => {
    const died = shell.page.waitForEvent('crash');
    await shell.evaluate(({ BrowserWindow, dialog }) => {
      dialog.showMessageBox = () => new Promise(() => {});
      for (const window of BrowserWindow.getAllWindows()) window.webContents.forcefullyCrashRenderer();
    }, null);
    await died;
    await shell.kill();
  },
};

for (const [ending, end] of Object.entries(endings))
  test(`a stand-in that ${ending} leaves nothing to the next`, async ({ start }) => {
    const first = await start();
    // From here on it lets its windows have what they ask for.
    await first.evaluate(({ session }) => session.defaultSession.setPermissionCheckHandler(() => true), null);
    await chooseMenu(first, 'new');
    const second = await secondWindow(first);
    await leave(first.page);
    expect(await found(second)).toEqual(left);
    await end(first);
    expect([first.page, second].map((page) => page.isClosed())).toEqual([true, true]);

    const next = await start();
    expect(next.pages()).toEqual([next.page]);
    expect(await found(next.page)).toEqual(nothing);
    await leave(next.page);
    expect((await found(next.page)).stored).toEqual(['left']);
  });

test('a second stand-in does not start beside one that has windows', async ({ start }) => {
  const first = await start();
  await expect(start()).rejects.toThrow('another stand-in has windows');
  await first.kill();
  await start();
});
