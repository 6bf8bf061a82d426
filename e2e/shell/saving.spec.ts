import { chmodSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import type { Page } from '@playwright/test';
import type { FileStamp } from '../../renderer/shell/bridge.ts';
import {
  answerQuestions,
  answerSave,
  askedIn,
  chooseMenu,
  expect,
  onEachShell,
  secondWindow,
  stampOf,
  test,
} from './test.ts';

const text = '{ "format": "stationwright" }\n';

onEachShell(() => {
  test('asks once, then writes to the same file', async ({ start, folder }) => {
    const shell = await start();
    const file = path.join(folder, 'shack.station.json');
    await answerSave(shell, path.join(folder, 'shack'));
    const request = { text, path: null, stamp: null, suggestedName: 'shack.station.json' };
    const saved = await shell.page.evaluate((asked) => window.stationwright?.saveFile(asked), request);
    expect(saved).toEqual({ path: file, name: 'shack.station.json', stamp: stampOf(file) });
    await answerSave(shell, null);
    const again = { ...request, text: 'second', path: file };
    expect(await shell.page.evaluate((asked) => window.stationwright?.saveFile(asked), again)).toEqual({
      path: file,
      name: 'shack.station.json',
      stamp: stampOf(file),
    });
    expect(readFileSync(file, 'utf8')).toBe('second');
  });

  test('asks before it writes to a path that the window was not given', async ({ start, folder }) => {
    const shell = await start();
    const file = path.join(folder, 'foreign.json');
    writeFileSync(file, 'theirs');
    await answerSave(shell, null);
    const request = { text, path: file, stamp: null, suggestedName: 'x.station.json' };
    expect(await shell.page.evaluate((asked) => window.stationwright?.saveFile(asked), request)).toBeNull();
    expect(readFileSync(file, 'utf8')).toBe('theirs');
  });

  test('that fails at the last step leaves the old file and nothing beside it', async ({ start, folder }) => {
    const file = path.join(folder, 'kept.station.json');
    writeFileSync(file, text);
    const shell = await start(file);
    await shell.page.evaluate(() => window.stationwright?.firstDocument());
    await shell.evaluate(() => {
      const files = process.getBuiltinModule('node:fs/promises');
      files.rename = async () => {
        throw Object.assign(new Error('no space'), { code: 'ENOSPC' });
      };
    }, null);
    const request = { text: 'half', path: file, stamp: null, suggestedName: 'kept.station.json' };
    expect(await shell.page.evaluate((asked) => window.stationwright?.saveFile(asked), request)).toEqual({
      error: 'kept.station.json could not be saved: there is no space left. What was there before is as it was.',
    });
    expect(readFileSync(file, 'utf8')).toBe(text);
    expect(readdirSync(folder).filter((name) => name.includes('kept'))).toEqual(['kept.station.json']);
  });

  test('never over a file that another window shows', async ({ start, folder }) => {
    const file = path.join(folder, 'shown.station.json');
    writeFileSync(file, text);
    const shell = await start(file);
    await chooseMenu(shell, 'new');
    const second = await secondWindow(shell);
    await answerSave(shell, file);
    const request = { text: 'other', path: null, stamp: null, suggestedName: 'x.station.json' };
    expect(await second.evaluate((asked) => window.stationwright?.saveFile(asked), request)).toMatchObject({
      error: expect.stringContaining('open in another window'),
    });
    expect(readFileSync(file, 'utf8')).toBe(text);
  });

  test('tables, pictures and the page as PDF', async ({ start, folder }) => {
    const shell = await start();
    mkdirSync(path.join(folder, 'out'));
    const place = (name: string) => path.join(folder, 'out', name);
    await answerSave(shell, place('cables.csv'));
    const table = { suggestedName: 'cables.csv', content: 'a;b\n', encoding: 'utf8' } as const;
    await shell.page.evaluate((asked) => window.stationwright?.exportFile(asked), table);
    await answerSave(shell, place('drawing.png'));
    const picture = { suggestedName: 'drawing.png', content: 'iVBORw==', encoding: 'base64' } as const;
    await shell.page.evaluate((asked) => window.stationwright?.exportFile(asked), picture);
    await answerSave(shell, place('book.pdf'));
    await shell.page.evaluate(() => window.stationwright?.savePdf({ suggestedName: 'book.pdf' }));
    expect(readFileSync(place('cables.csv'), 'utf8')).toBe('a;b\n');
    expect([...readFileSync(place('drawing.png'))]).toEqual([0x89, 0x50, 0x4e, 0x47]);
    expect(readFileSync(place('book.pdf'), 'latin1')).toMatch(/^%PDF-/);
  });

  test('asks before it writes over a file that can only be read, and keeps it so', async ({ start, folder }) => {
    const file = path.join(folder, 'locked.station.json');
    writeFileSync(file, 'theirs');
    chmodSync(file, 0o444);
    const shell = await start(file);
    const save = () =>
      shell.page.evaluate((asked) => window.stationwright?.saveFile(asked), {
        text,
        path: file,
        stamp: null,
        suggestedName: 'x',
      });
    await answerQuestions(shell, 'Cancel');
    expect(await save()).toBeNull();
    expect(await askedIn(shell)).toEqual(['locked.station.json can only be read.']);
    expect(readFileSync(file, 'utf8')).toBe('theirs');
    await answerQuestions(shell, 'Save over it');
    expect(await save()).toMatchObject({ path: file });
    expect(readFileSync(file, 'utf8')).toBe(text);
    expect(statSync(file).mode & 0o222).toBe(0);
  });

  test('from two windows to one new place: the first has it', async ({ start, folder }) => {
    const shell = await start();
    await chooseMenu(shell, 'new');
    const second = await secondWindow(shell);
    await answerSave(shell, path.join(folder, 'both.station.json'));
    const save = (page: Page, said: string) =>
      page.evaluate((asked) => window.stationwright?.saveFile(asked), {
        text: said,
        path: null,
        stamp: null,
        suggestedName: 'x',
      });
    const answers = await Promise.all([save(shell.page, 'one'), save(second, 'two')]);
    const won = answers.findIndex((answer) => answer && 'path' in answer);
    expect(answers[1 - won]).toMatchObject({ error: expect.stringContaining('open in another window') });
    expect(readFileSync(path.join(folder, 'both.station.json'), 'utf8')).toBe(['one', 'two'][won]);
  });

  test('not over what somebody else has written; that is handed over', async ({ start, folder }) => {
    const file = path.join(folder, 'shared.station.json');
    writeFileSync(file, text);
    const shell = await start(file);
    const before = stampOf(file);
    const save = (stamp: FileStamp) =>
      shell.page.evaluate((asked) => window.stationwright?.saveFile(asked), {
        text: 'mine',
        path: file,
        stamp,
        suggestedName: 'x',
      });
    const look = (stamp: FileStamp) =>
      shell.page.evaluate((asked) => window.stationwright?.lookAtFile(asked), { path: file, stamp });
    expect(await look(before)).toBeNull();
    writeFileSync(file, 'their text');
    expect(await look(before)).toEqual({ changed: stampOf(file), text: 'their text' });
    expect(await save(before)).toEqual({ changed: stampOf(file), text: 'their text' });
    expect(readFileSync(file, 'utf8')).toBe('their text');
    expect(await save(stampOf(file))).toMatchObject({ path: file });
    expect(readFileSync(file, 'utf8')).toBe('mine');
    const saved = stampOf(file);
    rmSync(file);
    expect(await save(saved)).toEqual({ changed: null, text: null });
    const other = path.join(folder, 'other.json');
    expect(
      await shell.page.evaluate((asked) => window.stationwright?.lookAtFile(asked), { path: other, stamp: saved }),
    ).toBeNull();
  });

  test('to a folder that is gone gets one sentence', async ({ start, folder }) => {
    const place = path.join(folder, 'stick');
    mkdirSync(place);
    const file = path.join(place, 'hut.station.json');
    writeFileSync(file, text);
    const shell = await start(file);
    const stamp = stampOf(file);
    rmSync(place, { recursive: true });
    const request = { text: 'mine', path: file, stamp, suggestedName: 'x' };
    expect(await shell.page.evaluate((asked) => window.stationwright?.saveFile(asked), request)).toEqual({
      error: `hut.station.json could not be saved: the folder ${place} is not there any more. Save it in another place.`,
    });
  });

  test('suggests a name that a file can have, however long the title is', async ({ start, folder }) => {
    const shell = await start();
    await shell.evaluate(({ dialog }) => {
      dialog.showSaveDialog = (async (_window: unknown, { defaultPath }: { defaultPath: string }) => {
        (globalThis as unknown as { suggested: string }).suggested = defaultPath;
        return { canceled: true, filePath: '' };
      }) as typeof dialog.showSaveDialog;
    }, null);
    const request = { text, path: null, stamp: null, suggestedName: `${'é'.repeat(500)}.station.json` };
    expect(await shell.page.evaluate((asked) => window.stationwright?.saveFile(asked), request)).toBeNull();
    const suggested = await shell.evaluate(() => (globalThis as unknown as { suggested: string }).suggested, null);
    expect(suggested).toMatch(/^é+\.station\.json$/);
    writeFileSync(path.join(folder, suggested), 'a file can have it');
  });
});
