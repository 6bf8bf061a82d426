import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { Page } from '@playwright/test';
import {
  answerQuestion,
  answerQuestions,
  answerSave,
  askedIn,
  chooseMenu,
  expect,
  heardBy,
  holdTimers,
  onEachShell,
  secondWindow,
  test,
  windowTitles,
} from './test.ts';

onEachShell(() => {
  // How long the shell waits for a sign of life before it says that a screen does not answer.
  const patienceMs = 5000;
  const edited = { name: 'shack', path: null, edited: true };

  test('the title says what is open and whether it is edited', async ({ start }) => {
    const shell = await start();
    expect(await windowTitles(shell)).toEqual(['Stationwright']);
    const report = (state: typeof edited) =>
      shell.page.evaluate((now) => window.stationwright?.setDocumentState(now), state);
    await report(edited);
    const mark = process.platform === 'darwin' ? '' : '• ';
    await expect.poll(() => windowTitles(shell)).toEqual([`${mark}shack - Stationwright`]);
    await report({ ...edited, edited: false });
    await expect.poll(() => windowTitles(shell)).toEqual(['shack - Stationwright']);
    await shell.page.evaluate(() => window.stationwright?.setDocumentState({ name: 'wrong' } as never));
    await report({ ...edited, name: 'right' });
    await expect.poll(() => windowTitles(shell)).toEqual([`${mark}right - Stationwright`]);
  });

  test('quitting without changes ends with 0', async ({ start }) => {
    const shell = await start();
    await chooseMenu(shell, 'quit');
    expect(await shell.ended).toBe(0);
  });

  test("unsaved changes: cancel keeps the window, don't save closes it", async ({ start }) => {
    const shell = await start();
    await shell.page.evaluate((now) => window.stationwright?.setDocumentState(now), edited);
    await expect.poll(() => windowTitles(shell)).not.toEqual(['Stationwright']);
    await answerQuestions(shell, 'Cancel');
    await chooseMenu(shell, 'quit');
    await expect.poll(() => askedIn(shell)).toHaveLength(1);
    // After the answer the window goes on as before: a report from its page still comes to its title.
    await shell.page.evaluate((now) => window.stationwright?.setDocumentState(now), { ...edited, name: 'attic' });
    await expect.poll(() => windowTitles(shell)).toEqual([expect.stringContaining('attic')]);
    expect(await Promise.race([shell.ended, 'still there'])).toBe('still there');
    expect(shell.page.isClosed()).toBe(false);
    await answerQuestion(shell, "Don't save");
    await chooseMenu(shell, 'quit');
    expect(await shell.ended).toBe(0);
  });

  test('unsaved changes: save closes after the save, a cancelled save does not', async ({ start, folder }) => {
    const shell = await start();
    const file = path.join(folder, 'last.station.json');
    await shell.page.evaluate((state) => {
      window.stationwright?.setDocumentState(state);
      window.stationwright?.onSaveToClose(async () => {
        const request = { text: 'last', path: null, stamp: null, suggestedName: 'last' };
        const answer = await window.stationwright?.saveFile(request);
        const saved = Boolean(answer && 'path' in answer);
        if (saved) window.stationwright?.setDocumentState({ ...state, edited: false });
        await window.stationwright?.saveEnded({ saved });
        document.body.dataset['saved'] = String(saved);
      });
    }, edited);
    await expect.poll(() => windowTitles(shell)).not.toEqual(['Stationwright']);
    await answerQuestion(shell, 'Save');
    await answerSave(shell, null);
    await chooseMenu(shell, 'quit');
    await expect.poll(() => heardBy(shell.page)).toEqual([['saveToClose', null]]);
    // The shell, too, has heard that it was cancelled: while it still waits, a quit would ask a second time.
    await expect(shell.page.locator('body')).toHaveAttribute('data-saved', 'false');
    expect(shell.page.isClosed()).toBe(false);
    await answerSave(shell, file);
    await chooseMenu(shell, 'quit');
    expect(await shell.ended).toBe(0);
    expect(readFileSync(file, 'utf8')).toBe('last');
  });

  test('a title without end is cut for the window, and the document is still asked about', async ({ start }) => {
    const shell = await start();
    const long = { ...edited, name: 'shack '.repeat(1000) };
    await shell.page.evaluate((now) => window.stationwright?.setDocumentState(now), long);
    await expect
      .poll(() => windowTitles(shell))
      .toEqual([expect.stringMatching(/shack (shack )+.*… - Stationwright$/)]);
    await answerQuestions(shell, 'Cancel');
    await chooseMenu(shell, 'quit');
    await expect.poll(() => askedIn(shell)).toHaveLength(1);
  });

  test('a report that makes no sense is asked about as if there were changes', async ({ start }) => {
    const shell = await start();
    await shell.page.evaluate(() => window.stationwright?.setDocumentState({ name: 7 } as never));
    // Answered after the report was heard.
    await shell.page.evaluate(() => window.stationwright?.saveEnded({ saved: false }));
    await answerQuestions(shell, 'Cancel');
    await chooseMenu(shell, 'quit');
    await expect.poll(() => askedIn(shell)).toEqual(['Save the changes to this station?']);
  });

  test('quitting asks in one window after the other, and a cancel leaves the rest unasked', async ({ start }) => {
    const shell = await start();
    await chooseMenu(shell, 'new');
    const second = await secondWindow(shell);
    const report = (page: Page, name: string) =>
      page.evaluate((state) => window.stationwright?.setDocumentState(state), { ...edited, name });
    await report(shell.page, 'one');
    await report(second, 'two');
    await expect.poll(async () => (await windowTitles(shell)).join()).toMatch(/one.*two|two.*one/);
    await answerQuestions(shell, 'Cancel');
    await chooseMenu(shell, 'quit');
    await expect.poll(() => askedIn(shell)).toHaveLength(1);
    await shell.page.evaluate(() => window.stationwright?.saveEnded({ saved: false }));
    expect(await askedIn(shell)).toHaveLength(1);
    expect(shell.pages().every((page) => !page.isClosed())).toBe(true);
    await answerQuestions(shell, "Don't save");
    await chooseMenu(shell, 'quit');
    expect(await shell.ended).toBe(0);
  });

  const hang = (page: Page) =>
    page.evaluate(() => {
      setTimeout(() => {
        for (;;);
      });
    });

  test('a screen that does not answer is told about: wait keeps the window, close ends it', async ({ start }) => {
    const shell = await start();
    await shell.page.evaluate((now) => window.stationwright?.setDocumentState(now), edited);
    await expect.poll(() => windowTitles(shell)).not.toEqual(['Stationwright']);
    await hang(shell.page);
    const wait = await holdTimers(shell, patienceMs);
    await answerQuestions(shell, 'Wait');
    await chooseMenu(shell, 'quit');
    await expect.poll(wait.held).toBe(1);
    expect(await askedIn(shell)).toEqual([]);
    await wait.pass();
    await expect.poll(() => askedIn(shell)).toEqual(['This window does not answer.']);
    expect(shell.page.isClosed()).toBe(false);
    await answerQuestions(shell, 'Close without saving');
    await chooseMenu(shell, 'quit');
    await expect.poll(wait.held).toBe(1);
    await wait.pass();
    expect(await shell.ended).toBe(0);
  });

  test('a screen that hangs while it saves is told about', async ({ start }) => {
    const shell = await start();
    await shell.page.evaluate((state) => {
      window.stationwright?.setDocumentState(state);
      window.stationwright?.onSaveToClose(() => {
        for (;;);
      });
    }, edited);
    await expect.poll(() => windowTitles(shell)).not.toEqual(['Stationwright']);
    const wait = await holdTimers(shell, patienceMs);
    await answerQuestions(shell, 'Save', 'Close without saving');
    await chooseMenu(shell, 'quit');
    await expect.poll(() => askedIn(shell)).toEqual(['Save the changes to shack?']);
    await expect.poll(wait.held).toBe(1);
    await wait.pass();
    expect(await shell.ended).toBe(0);
  });

  test('a screen that dies while it saves stops the closing, and a later save closes nothing', async ({ start }) => {
    const shell = await start();
    await shell.page.evaluate((now) => window.stationwright?.setDocumentState(now), edited);
    await expect.poll(() => windowTitles(shell)).not.toEqual(['Stationwright']);
    await answerQuestions(shell, 'Save', 'Load again');
    await chooseMenu(shell, 'quit');
    await expect.poll(() => heardBy(shell.page)).toEqual([['saveToClose', null]]);
    await shell.evaluate(
      ({ BrowserWindow }) => BrowserWindow.getAllWindows()[0]?.webContents.forcefullyCrashRenderer(),
      null,
    );
    await expect.poll(() => askedIn(shell)).toContain('This window has stopped working.');
    const ready = () =>
      shell
        .pages()
        .at(-1)
        ?.evaluate(() => document.body.dataset['ready']);
    await expect.poll(() => ready()?.catch(() => 'dead')).toBe('yes');
    const loadedAgain = shell.pages().at(-1) as Page;
    await loadedAgain.evaluate(() => window.stationwright?.saveEnded({ saved: true }));
    expect(loadedAgain.isClosed()).toBe(false);
  });

  test('a screen that stops answering while it is used is told about, until it comes back', async ({ start }) => {
    const shell = await start();
    const happens = (event: 'unresponsive' | 'responsive') =>
      shell.evaluate(({ BrowserWindow }, name) => {
        BrowserWindow.getAllWindows()[0]?.emit(name);
      }, event);
    await shell.evaluate(({ dialog }) => {
      const kept = globalThis as unknown as { asked: string[]; ended: boolean };
      Object.assign(kept, { asked: [], ended: false });
      // As Electron does it: a question taken back is answered as cancelled.
      dialog.showMessageBox = ((_window: unknown, { message, signal }: { message: string; signal: AbortSignal }) => {
        kept.asked.push(message);
        return new Promise((resolve) =>
          signal.addEventListener('abort', () => {
            kept.ended = true;
            resolve({ response: 0, checkboxChecked: false });
          }),
        );
      }) as never;
    }, null);
    await happens('unresponsive');
    await happens('unresponsive');
    expect(await askedIn(shell)).toEqual(['This window does not answer.']);
    await happens('responsive');
    expect(await shell.evaluate(() => (globalThis as unknown as { ended: boolean }).ended, null)).toBe(true);
    await answerQuestions(shell, 'End its work', 'Close');
    await happens('unresponsive');
    expect(await shell.ended).toBe(0);
  });
});
