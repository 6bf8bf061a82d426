import type { MenuItemConstructorOptions } from 'electron';
import { describe, expect, it, vi } from 'vitest';
import { type MenuActions, menuTemplate } from '../../electron/menu-template.ts';
import type { ShellCommand } from '../../renderer/shell/bridge.ts';

/** Every command of the bridge: the compiler misses one that is not here. */
const commands = Object.keys({
  save: 1,
  'save-as': 1,
  print: 1,
  'station-book': 1,
  'save-pdf': 1,
  undo: 1,
  redo: 1,
  steps: 1,
  duplicate: 1,
  delete: 1,
  'select-all': 1,
  find: 1,
  'stage-draw': 1,
  'stage-check': 1,
  'stage-cables': 1,
  'stage-budget': 1,
  'stage-power-up': 1,
  'zoom-to-fit': 1,
  'zoom-to-selection': 1,
  'zoom-in': 1,
  'zoom-out': 1,
  tidy: 1,
  'add-note': 1,
  'add-zone': 1,
  'theme-light': 1,
  'theme-dark': 1,
  'theme-system': 1,
  cautions: 1,
} satisfies Record<Exclude<ShellCommand, `sample:${string}`>, 1>);

const silentActions = (): MenuActions => ({
  newStation: vi.fn(),
  open: vi.fn(),
  openRecent: vi.fn(),
  clearRecent: vi.fn(),
  openSample: vi.fn(),
  command: vi.fn(),
});

function allItems(items: MenuItemConstructorOptions[]): MenuItemConstructorOptions[] {
  return items.flatMap((item) => [item, ...(Array.isArray(item.submenu) ? allItems(item.submenu) : [])]);
}

function menuOn(platform: string, actions = silentActions(), recent = ['/a/one.station.json']) {
  return allItems(menuTemplate({ platform, samples: [{ name: 'hut', title: 'The hut' }], recent, actions }));
}

const choose = (items: MenuItemConstructorOptions[], id: string) =>
  items.find((item) => item.id === id)?.click?.({} as never, undefined, {} as never);

describe.each(['linux', 'win32', 'darwin'])('the menu on %s', (platform) => {
  it('has every command once', () => {
    const ids = menuOn(platform).flatMap(({ id }) => id ?? []);
    for (const command of commands)
      expect(
        ids.filter((id) => id === command),
        command,
      ).toHaveLength(1);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('has each shortcut once', () => {
    const keys = menuOn(platform).flatMap(({ accelerator }) => accelerator ?? []);
    expect(keys.length).toBeGreaterThan(15);
    expect(new Set(keys).size).toBe(keys.length);
  });

  it('leaves the Delete key to text fields', () => {
    const item = menuOn(platform).find(({ id }) => id === 'delete');
    expect(item?.accelerator === undefined || item.registerAccelerator === false).toBe(true);
  });

  it('gives each item something to do', () => {
    for (const item of menuOn(platform))
      expect(
        [item.click, item.role, item.submenu, item.type === 'separator', item.enabled === false].some(Boolean),
        item.label,
      ).toBe(true);
  });

  it('sends commands to the screen and files to the shell', () => {
    const actions = silentActions();
    const items = menuOn(platform, actions);
    for (const id of ['undo', 'new', 'open', 'sample:hut', 'recent:/a/one.station.json', 'clear-recent'])
      choose(items, id);
    expect(actions.command).toHaveBeenCalledExactlyOnceWith('undo');
    expect(actions.newStation).toHaveBeenCalledOnce();
    expect(actions.open).toHaveBeenCalledOnce();
    expect(actions.openSample).toHaveBeenCalledExactlyOnceWith('hut');
    expect(actions.openRecent).toHaveBeenCalledExactlyOnceWith('/a/one.station.json');
    expect(actions.clearRecent).toHaveBeenCalledOnce();
  });
});

describe('what each system has its own way', () => {
  it('quits from the File menu except on macOS, which has an application menu for it', () => {
    expect(menuOn('linux').some(({ role }) => role === 'quit')).toBe(true);
    expect(menuOn('darwin').some(({ role }) => role === 'quit')).toBe(false);
    expect(menuOn('darwin')[0]?.role).toBe('appMenu');
  });

  it('redoes by Ctrl+Y on Windows and by Shift+Ctrl+Z elsewhere', () => {
    const redo = (platform: string) => menuOn(platform).find(({ id }) => id === 'redo')?.accelerator;
    expect([redo('win32'), redo('linux'), redo('darwin')]).toEqual([
      'CmdOrCtrl+Y',
      'CmdOrCtrl+Shift+Z',
      'CmdOrCtrl+Shift+Z',
    ]);
  });

  it('says that there are no recent files when there are none', () => {
    expect(menuOn('linux', silentActions(), []).find(({ label }) => label === 'No files yet')?.enabled).toBe(false);
  });
});
