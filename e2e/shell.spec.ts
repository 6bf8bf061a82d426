import { existsSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import {
  answerOpen,
  answerSave,
  chooseMenu,
  expect,
  heardBy,
  onEachShell,
  secondWindow,
  stampOf,
  test,
} from './shell/test.ts';

const text = '{ "format": "stationwright" }\n';

onEachShell(() => {
  test.describe('what the page can reach', () => {
    test('the bridge with just its functions, and nothing of Node', async ({ start }) => {
      const { page } = await start();
      expect(await page.evaluate(() => Object.keys(window.stationwright ?? {}).sort())).toEqual(
        [
          'bringBack',
          'exportFile',
          'firstDocument',
          'forgetWork',
          'keepWork',
          'listKept',
          'lookAtFile',
          'newWindow',
          'onCommand',
          'onOpened',
          'onProblem',
          'onSaveToClose',
          'openFile',
          'platform',
          'print',
          'saveEnded',
          'saveFile',
          'savePdf',
          'setDocumentState',
          'throwAway',
        ].sort(),
      );
      expect(await page.evaluate(() => window.stationwright?.platform)).toBe(process.platform);
      const node = [
        'require',
        'module',
        'process',
        'Buffer',
        'ipcRenderer',
        'global',
        'sendToShell',
        'receiveFromShell',
      ];
      expect(await page.evaluate((names) => names.filter((name) => name in window), node)).toEqual([]);
    });

    test('no file outside its own folder', async ({ start }) => {
      const { page } = await start();
      const statuses = await page.evaluate(async () => {
        const addresses = ['./heard.js', '../secret.txt', '/..%2fsecret.txt', '/%2e%2e/secret.txt', './none.js'];
        // The page policy lets the page fetch nothing; scripts it may load, and the browser keeps what came of it.
        const statusOf = (address: string) =>
          new Promise<number | undefined>((done) => {
            const script = document.createElement('script');
            const look = () => {
              const entry = performance.getEntriesByName(script.src).at(-1);
              done(entry instanceof PerformanceResourceTiming ? entry.responseStatus : undefined);
            };
            script.addEventListener('load', look);
            script.addEventListener('error', look);
            script.src = address;
            document.head.append(script);
          });
        return Promise.all(addresses.map(statusOf));
      });
      expect(statuses).toEqual([200, 404, 404, 404, 404]);
    });

    test('no further window, no other page, no device', async ({ start }) => {
      const shell = await start();
      const { page } = shell;
      const address = page.url();
      await page.evaluate(() => {
        window.open('https://example.invalid/');
        location.href = 'https://example.invalid/';
      });
      const states = await page.evaluate(() =>
        Promise.all(
          ['geolocation', 'notifications', 'midi'].map(
            async (name) => (await navigator.permissions.query({ name: name as PermissionName })).state,
          ),
        ),
      );
      expect(states).toEqual(['denied', 'denied', 'denied']);
      await expect.poll(() => shell.pages().length).toBe(1);
      expect(page.url()).toBe(address);
      await expect(page.getByRole('heading', { name: 'Bare page' })).toBeVisible();
    });

    test('nothing with arguments that a call does not take', async ({ start, folder }) => {
      const shell = await start();
      await answerSave(shell, path.join(folder, 'never.json'));
      const refusals = await shell.page.evaluate(async () => {
        const bridge = window.stationwright as unknown as Record<string, (...args: unknown[]) => Promise<unknown>>;
        const tries: [string, ...unknown[]][] = [
          ['saveFile', 5],
          ['saveFile', { text: 'x', path: null }],
          ['saveFile', { text: 'x', path: 7, stamp: null, suggestedName: 'a' }],
          ['saveFile', { text: 'x', path: null, stamp: null, suggestedName: 'a', mode: 0o777 }],
          ['exportFile', { suggestedName: 'a.csv', content: 'x', encoding: 'hex' }],
          ['saveFile', { text: 'x', path: null, stamp: 'any', suggestedName: 'a' }],
          ['lookAtFile', { path: '/etc/hostname' }],
          ['saveEnded', true],
          ['savePdf', { suggestedName: '' }],
          ['keepWork', { text: 'x', about: { title: 'x', units: 0, cables: 0, path: null } }],
          ['bringBack', { id: '../recent' }],
          ['throwAway', { id: '../../station' }],
        ];
        return Promise.all(
          tries.map(([name, ...args]) =>
            bridge[name]?.(...args).then(
              () => 'taken',
              (error: Error) => error.message,
            ),
          ),
        );
      });
      for (const refusal of refusals) expect(refusal).toContain('refused, not what it takes');
      expect(existsSync(path.join(folder, 'never.json'))).toBe(false);
    });

    test('no answer for a page that is not the app, nor for a frame in it', async ({ start }) => {
      const shell = await start();
      const refusals = await shell.evaluate(async ({ BrowserWindow, ipcMain }) => {
        const sender = BrowserWindow.getAllWindows()[0]?.webContents;
        const foreign = { url: 'https://example.invalid/index.html', parent: null };
        const framed = { url: 'app://bundle/index.html', parent: foreign };
        // Handlers can't be called from outside Electron: its own map of them is private, the stand-in's is not.
        const handlers = ipcMain as unknown as {
          handlers?: Map<string, unknown>;
          _invokeHandlers?: Map<string, unknown>;
        };
        const call = (handlers.handlers ?? handlers._invokeHandlers)?.get('openFile') as (event: unknown) => unknown;
        return [foreign, framed, null].map((senderFrame) => {
          try {
            call({ sender, senderFrame });
            return 'answered';
          } catch (error) {
            return String(error);
          }
        });
      }, null);
      for (const refusal of refusals) expect(refusal).toContain('refused, asked by something else');
    });
  });

  test.describe('opening', () => {
    test('by dialog, into the untouched window', async ({ start, folder }) => {
      const shell = await start();
      const file = path.join(folder, 'shack.station.json');
      writeFileSync(file, text);
      await answerOpen(shell, file);
      const opened = await shell.page.evaluate(() => window.stationwright?.openFile());
      expect(opened).toEqual({ path: file, name: 'shack.station.json', text, stamp: stampOf(file) });
      await answerOpen(shell, null);
      expect(await shell.page.evaluate(() => window.stationwright?.openFile())).toBeNull();
    });

    test('by menu, into the untouched window; then one window a file', async ({ start, folder }) => {
      const shell = await start();
      await shell.page.evaluate(() => window.stationwright?.firstDocument());
      const [first = '', second = ''] = ['one', 'two'].map((name) => path.join(folder, `${name}.station.json`));
      writeFileSync(first, text);
      writeFileSync(second, text);
      await answerOpen(shell, first);
      await chooseMenu(shell, 'open');
      await expect
        .poll(() => heardBy(shell.page))
        .toEqual([['opened', { path: first, name: 'one.station.json', text, stamp: stampOf(first) }]]);
      await answerOpen(shell, second);
      await chooseMenu(shell, 'open');
      const other = await secondWindow(shell);
      // Both are shown already: from either window the dialog leads to the one that has the file.
      for (const [page, file] of [
        [shell.page, second],
        [other, first],
      ] as const) {
        await answerOpen(shell, file);
        expect(await page.evaluate(() => window.stationwright?.openFile())).toBeNull();
      }
      expect(await shell.evaluate(({ BrowserWindow }) => BrowserWindow.getAllWindows().length, null)).toBe(2);
      expect((await heardBy(shell.page)).length).toBe(1);
    });

    test('from the command line, and by a second start', async ({ start, folder }) => {
      const file = path.join(folder, 'named.station.json');
      writeFileSync(file, text);
      const shell = await start(file);
      expect(await shell.page.evaluate(() => window.stationwright?.firstDocument())).toEqual({
        kind: 'file',
        file: { path: file, name: 'named.station.json', text, stamp: stampOf(file) },
      });
      const other = path.join(folder, 'other.station.json');
      writeFileSync(other, text);
      await shell.evaluate(
        ({ app }, [argument = '', place = '']) => {
          app.emit('second-instance', {}, ['program', '--flag', argument], place);
        },
        [path.basename(other), folder],
      );
      const second = await secondWindow(shell);
      expect(await second.evaluate(() => window.stationwright?.firstDocument())).toMatchObject({
        kind: 'file',
        file: { path: other },
      });
    });

    test('a file that is missing, too large or not text gets a sentence', async ({ start, folder }) => {
      const shell = await start();
      const large = path.join(folder, 'large.json');
      writeFileSync(large, Buffer.alloc(200_000_000, 32));
      const picture = path.join(folder, 'picture.json');
      writeFileSync(picture, Buffer.from([0x89, 0x50, 0xff, 0xfe]));
      const sentences: unknown[] = [];
      for (const file of [path.join(folder, 'gone.json'), large, picture, folder]) {
        await answerOpen(shell, file);
        sentences.push(await shell.page.evaluate(() => window.stationwright?.openFile()));
      }
      expect(sentences).toEqual([
        { error: 'gone.json could not be opened: it is not there any more.' },
        { error: 'large.json is not a station file: it has 200 MB, and no station comes near 50 MB.' },
        { error: 'picture.json is not a station file: it holds something other than text.' },
        { error: `${path.basename(folder)} is not a file.` },
      ]);
    });

    test('a sample, as a command', async ({ start }) => {
      const shell = await start();
      await shell.page.evaluate(() => window.stationwright?.firstDocument());
      const sample = await shell.evaluate(({ Menu }) => {
        const file = Menu.getApplicationMenu()?.items.find(({ label }) => label.includes('File'));
        const samples = file?.submenu?.items.find(({ label }) => label === 'Open sample')?.submenu?.items ?? [];
        samples[0]?.click();
        return samples[0]?.id;
      }, null);
      expect(sample).toMatch(/^sample:./);
      await expect.poll(() => heardBy(shell.page)).toEqual([['command', sample]]);
    });
  });

  test('printing that fails gets a sentence, and cancelling it none', async ({ start }) => {
    const shell = await start();
    const print = async (reason: string) => {
      await shell.evaluate(({ BrowserWindow }, why) => {
        const contents = BrowserWindow.getAllWindows()[0]?.webContents;
        if (contents) contents.print = (_options, done) => done?.(false, why);
      }, reason);
      return shell.page.evaluate(() => window.stationwright?.print());
    };
    expect(await print('Print job canceled')).toBeNull();
    expect(await print('No printer')).toEqual({ error: 'The page could not be printed: No printer.' });
  });
});
