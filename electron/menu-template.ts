import type { MenuItemConstructorOptions } from 'electron';
import type { ShellCommand } from '../renderer/shell/bridge.ts';

export interface SampleEntry {
  readonly name: string;
  readonly title: string;
}

/** What the menu can set off in the shell itself; everything else is a command to the screen. */
export interface MenuActions {
  newStation(): void;
  open(): void;
  openRecent(file: string): void;
  clearRecent(): void;
  openSample(name: string): void;
  command(command: ShellCommand): void;
}

export interface MenuContents {
  readonly platform: string;
  readonly samples: readonly SampleEntry[];
  readonly recent: readonly string[];
  readonly actions: MenuActions;
}

const separator: MenuItemConstructorOptions = { type: 'separator' };

/** The whole menu as data, with the places and keys that each system has them in. */
export function menuTemplate(contents: MenuContents): MenuItemConstructorOptions[] {
  const mac = contents.platform === 'darwin';
  return [
    ...(mac ? [{ role: 'appMenu' } as const] : []),
    { label: '&File', submenu: fileMenu(contents, mac) },
    { label: '&Edit', submenu: editMenu(contents, mac) },
    { label: '&View', submenu: viewMenu(contents) },
    ...(mac ? [{ role: 'windowMenu' } as const] : []),
    { role: 'help', label: '&Help', submenu: helpMenu(contents, mac) },
  ];
}

function fileMenu({ samples, recent, actions }: MenuContents, mac: boolean): MenuItemConstructorOptions[] {
  const command = commandItem(actions);
  return [
    { id: 'new', label: 'New', accelerator: 'CmdOrCtrl+N', click: () => actions.newStation() },
    { id: 'open', label: 'Open…', accelerator: 'CmdOrCtrl+O', click: () => actions.open() },
    { label: 'Open recent', submenu: recentMenu(recent, actions) },
    { label: 'Open sample', submenu: samples.map((sample) => sampleItem(sample, actions)) },
    separator,
    command('save', 'Save', 'CmdOrCtrl+S'),
    command('save-as', 'Save as…', 'CmdOrCtrl+Shift+S'),
    separator,
    command('station-book', 'Station book…', 'CmdOrCtrl+B'),
    command('print', 'Print…', 'CmdOrCtrl+P'),
    command('save-pdf', 'Save as PDF…', 'CmdOrCtrl+Shift+P'),
    separator,
    mac ? { role: 'close' } : { id: 'close', role: 'close', label: 'Close window' },
    ...(mac ? [] : [{ id: 'quit', role: 'quit' } as const]),
  ];
}

function recentMenu(recent: readonly string[], actions: MenuActions): MenuItemConstructorOptions[] {
  if (recent.length === 0) return [{ label: 'No files yet', enabled: false }];
  return [
    ...recent.map((file) => ({ id: `recent:${file}`, label: file, click: () => actions.openRecent(file) })),
    separator,
    { id: 'clear-recent', label: 'Clear this list', click: () => actions.clearRecent() },
  ];
}

function sampleItem({ name, title }: SampleEntry, actions: MenuActions): MenuItemConstructorOptions {
  return { id: `sample:${name}`, label: title, click: () => actions.openSample(name) };
}

function editMenu({ actions, platform }: MenuContents, mac: boolean): MenuItemConstructorOptions[] {
  const command = commandItem(actions);
  return [
    command('undo', 'Undo', 'CmdOrCtrl+Z'),
    command('redo', 'Redo', platform === 'win32' ? 'CmdOrCtrl+Y' : 'CmdOrCtrl+Shift+Z'),
    command('steps', 'Steps…', 'CmdOrCtrl+J'),
    separator,
    { role: 'cut' },
    { role: 'copy' },
    { role: 'paste' },
    command('duplicate', 'Duplicate', 'CmdOrCtrl+D'),
    // Shown only: a menu that took the key would take it from every text field. macOS can't show without taking.
    mac ? command('delete', 'Delete') : { ...command('delete', 'Delete', 'Delete'), registerAccelerator: false },
    command('select-all', 'Select all', 'CmdOrCtrl+A'),
    separator,
    command('add-note', 'Add note'),
    command('add-zone', 'Add zone'),
    command('tidy', 'Tidy up'),
    separator,
    command('find', 'Find…', 'CmdOrCtrl+F'),
  ];
}

function viewMenu({ actions }: MenuContents): MenuItemConstructorOptions[] {
  const command = commandItem(actions);
  return [
    command('stage-draw', 'Draw', 'CmdOrCtrl+1'),
    command('stage-check', 'Check', 'CmdOrCtrl+2'),
    command('stage-cables', 'Cables', 'CmdOrCtrl+3'),
    command('stage-budget', 'Budget', 'CmdOrCtrl+4'),
    command('stage-power-up', 'Power-up', 'CmdOrCtrl+5'),
    separator,
    command('zoom-to-fit', 'Zoom to fit', 'CmdOrCtrl+0'),
    command('zoom-to-selection', 'Zoom to selection', 'CmdOrCtrl+Shift+0'),
    command('zoom-in', 'Zoom in', 'CmdOrCtrl+='),
    command('zoom-out', 'Zoom out', 'CmdOrCtrl+-'),
    separator,
    {
      label: 'Theme',
      submenu: [
        command('theme-light', 'Light'),
        command('theme-dark', 'Dark'),
        command('theme-system', 'As the system'),
      ],
    },
    separator,
    { role: 'togglefullscreen' },
  ];
}

function helpMenu({ actions }: MenuContents, mac: boolean): MenuItemConstructorOptions[] {
  const cautions = commandItem(actions)('cautions', 'Cautions');
  return mac ? [cautions] : [cautions, separator, { role: 'about' }];
}

function commandItem(actions: MenuActions) {
  return (command: ShellCommand, label: string, accelerator?: string): MenuItemConstructorOptions => ({
    id: command,
    label,
    ...(accelerator ? { accelerator } : {}),
    click: () => actions.command(command),
  });
}
