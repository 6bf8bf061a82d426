import path from 'node:path';
import { BrowserWindow } from 'electron';
import type { FirstDocument } from '../../renderer/shell/bridge.ts';
import { safePreferences } from '../guards.ts';
import { pageAddress } from '../page.ts';
import { askBeforeClosing } from './closing.ts';
import { forgetOnClose } from './kept-work.ts';
import { offerReload } from './offer-reload.ts';
import { keepWindow, type StationWindow } from './station-window.ts';
import { tellWhenSilent } from './tell-when-silent.ts';

export function openWindow(first: FirstDocument): StationWindow {
  const frame = new BrowserWindow({
    width: 1440,
    height: 900,
    minWidth: 1024,
    minHeight: 700,
    title: 'Stationwright',
    // Shown when there is something to see.
    show: false,
    webPreferences: { preload: path.join(__dirname, 'preload.cjs'), ...safePreferences },
  });
  const window = keepWindow(frame, first);
  frame.once('ready-to-show', () => frame.show());
  // The title is the document's, not the page's.
  frame.on('page-title-updated', (event) => event.preventDefault());
  askBeforeClosing(window);
  forgetOnClose(window);
  offerReload(window);
  tellWhenSilent(window);
  void frame.loadURL(pageAddress);
  return window;
}
