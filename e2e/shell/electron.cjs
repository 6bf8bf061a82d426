/*
 * A stand-in for the `electron` module, for machines that can't have Electron's program. Loaded with --require into a
 * Node process that then runs the built main file as it is. Windows are pages of a Chromium that the test has started;
 * the built preload runs in a world of its own in them. What is not covered here throws: a test must not pass because
 * the stand-in smiled at something that Electron would refuse.
 *
 * Not shown by it: native menus and dialogs, the real sandbox, packaging, anything but JSON between the processes.
 */
const Module = require('node:module');
const vm = require('node:vm');
const { App } = require('./stand-in/app.cjs');
const { createBrowserWindow } = require('./stand-in/browser-window.cjs');
const { connect } = require('./stand-in/chromium.cjs');
const { IpcMain } = require('./stand-in/ipc-main.cjs');
const { createMenu } = require('./stand-in/menu.cjs');
const { createProtocol } = require('./stand-in/protocol.cjs');
const { createSession } = require('./stand-in/session.cjs');
const { strict } = require('./stand-in/strict.cjs');

const unprepared = (name) => async () => {
  throw new Error(`electron stand-in: dialog.${name} was opened, and the test has no answer for it`);
};

const app = new App(connect(process.env.SHELL_CDP), process.env.SHELL_HOME);
const ipcMain = new IpcMain();
const protocol = createProtocol(app);
const session = createSession();
const BrowserWindow = createBrowserWindow({ app, ipcMain, protocol, session });
const dialog = {
  showOpenDialog: unprepared('showOpenDialog'),
  showSaveDialog: unprepared('showSaveDialog'),
  showMessageBox: unprepared('showMessageBox'),
};

const electron = strict('electron', {
  app: strict('app', app),
  BrowserWindow,
  dialog: strict('dialog', dialog),
  ipcMain: strict('ipcMain', ipcMain),
  Menu: createMenu({ app, BrowserWindow }),
  protocol: strict('protocol', protocol),
  session: strict('session', session),
});

const load = Module._load;
Module._load = (request, ...rest) => (request === 'electron' ? electron : load.call(Module, request, ...rest));

// A promise that nobody waits for is a fault, in the shell as in the stand-in.
process.on('unhandledRejection', (error) => {
  console.error('unhandled rejection:', error);
  process.exit(70);
});
process.on('disconnect', () => process.exit(0));
process.on('message', async ({ id, source, argument }) => {
  try {
    // The test's own function, as Playwright hands it to a real Electron: (electron, argument) => answer.
    const value = await vm.runInThisContext(`(${source})`)(electron, argument);
    process.send({ id, value });
  } catch (error) {
    process.send({ id, error: String(error?.stack ?? error) });
  }
});
