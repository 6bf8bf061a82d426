import { Menu } from 'electron';
import { clearRecentFiles, recentFiles } from './files/recent-files.ts';
import { type MenuActions, menuTemplate } from './menu-template.ts';
import { samples } from './samples.ts';
import { openWindow } from './windows/open-window.ts';
import { openByDialog, showDocument, showFile } from './windows/show-document.ts';
import { frontWindow, sendCommand } from './windows/station-window.ts';

const actions: MenuActions = {
  newStation: () => openWindow({ kind: 'empty' }),
  open: () => void openByDialog(),
  openRecent: (file) => void showFile(file),
  clearRecent: () => void clearRecentFiles(),
  openSample: (sample) => showDocument({ kind: 'sample', sample }),
  command: (command) => {
    const window = frontWindow();
    if (window) sendCommand(window, command);
  },
};

/** Puts the menu up, anew whenever the recent files have changed: a menu's items can't be changed in place. */
export function showMenuBar(): void {
  const template = menuTemplate({ platform: process.platform, samples, recent: recentFiles(), actions });
  Menu.setApplicationMenu(Menu.buildFromTemplate(template));
}
