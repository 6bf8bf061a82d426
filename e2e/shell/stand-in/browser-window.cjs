const fs = require('node:fs');
const { pageWorld, preloadWorld } = require('./worlds.cjs');
const { CoveredEmitter, checkKeys, preventable, strict } = require('./strict.cjs');
const { toBrowser, toShell } = require('./protocol.cjs');
const { WebContents } = require('./web-contents.cjs');

// The last two are for a test to raise: nothing here finds out by itself.
const events = ['ready-to-show', 'close', 'closed', 'page-title-updated', 'unresponsive', 'responsive'];
const options = ['width', 'height', 'minWidth', 'minHeight', 'title', 'show', 'webPreferences'];
const safe = { sandbox: true, contextIsolation: true, nodeIntegration: false, webSecurity: true };
const world = 'preload';

function createBrowserWindow({ app, ipcMain, protocol, session }) {
  class BrowserWindow extends CoveredEmitter {
    constructor(given = {}) {
      super('BrowserWindow', events);
      checkOptions(given);
      this.given = given;
      this.title = given.title ?? '';
      this.crashed = false;
      this.edited = false;
      this.representedFilename = '';
      const self = strict('BrowserWindow', this);
      this.webContents = new WebContents(self);
      app.windows.add(self);
      app.emit('web-contents-created', {}, this.webContents);
      this.opened = openPage(self);
      // biome-ignore lint/correctness/noConstructorReturn: an instance that throws on what it does not have.
      return self;
    }

    static getAllWindows() {
      return [...app.windows];
    }
    static getFocusedWindow() {
      return [...app.windows].at(-1) ?? null;
    }

    async loadURL(address) {
      await this.opened;
      await this.page.goto(toBrowser(address));
      const event = preventable();
      const title = await this.page.title();
      this.emit('page-title-updated', event, title);
      if (!event.defaultPrevented) this.setTitle(title);
      this.emit('ready-to-show');
    }
    /** A page that has died can't be driven any more: another takes its place. */
    async loadAgain() {
      if (!this.crashed) return this.page.reload();
      const dead = this.page;
      this.crashed = false;
      this.opened = openPage(this.webContents.window);
      await this.loadURL(toShell(dead.url()));
      await dead.close();
    }
    /** Hands a message to the preload's world. Without one yet, or any more, it is lost, as in Electron. */
    async deliver(message) {
      await this.opened;
      if (this.world === undefined || this.page.isClosed()) return;
      const expression = `receiveFromShell(${JSON.stringify(message)})`;
      const result = await this.cdp.send('Runtime.evaluate', { contextId: this.world, expression }).catch((error) => {
        if (!this.page.isClosed()) throw error;
      });
      if (result?.exceptionDetails) throw new Error(result.exceptionDetails.exception.description);
    }

    close() {
      const event = preventable();
      this.emit('close', event);
      if (event.defaultPrevented) app.windowKept();
      else this.destroy();
    }
    destroy() {
      void this.opened.then(() => this.page.close());
    }
    isMinimized() {
      return false;
    }
    show() {}
    focus() {
      app.windows.delete(this);
      app.windows.add(this);
    }
    setTitle(title) {
      this.title = title;
    }
    getTitle() {
      return this.title;
    }
    setDocumentEdited(edited) {
      this.edited = edited;
    }
    setRepresentedFilename(file) {
      this.representedFilename = file;
    }
  }

  /** A page of the context, with the preload in a world of its own. */
  async function openPage(window) {
    const context = await app.context;
    const page = await context.newPage();
    const cdp = await context.newCDPSession(page);
    Object.assign(window, { page, cdp, world: undefined });
    const { width = 800, height = 600 } = window.given;
    await page.setViewportSize({ width, height });
    await session.applyPermissions(context);
    await cdp.send('Page.enable');
    if (window.given.webPreferences.preload) await runPreload(window, cdp);
    await page.route('**/*', (route) => answer(window, route));
    page.on('popup', (popup) => judgePopup(window, popup));
    page.on('crash', () => {
      if (window.page !== page) return;
      window.crashed = true;
      window.webContents.emit('render-process-gone', {}, { reason: 'crashed', exitCode: 1 });
    });
    page.on('close', () => {
      if (window.page !== page) return;
      window.emit('closed');
      app.windowGone(window);
    });
  }

  async function runPreload(window, cdp) {
    cdp.on('Runtime.executionContextCreated', ({ context }) => {
      if (context.name === world) window.world = context.id;
    });
    cdp.on('Runtime.bindingCalled', ({ name, payload }) => {
      if (name === 'sendToShell') void ipcMain.receive(window, JSON.parse(payload));
    });
    await cdp.send('Runtime.enable');
    // The binding is only in the preload's world: the page itself has no way to the shell but the bridge.
    await cdp.send('Runtime.addBinding', { name: 'sendToShell', executionContextName: world });
    await cdp.send('Page.addScriptToEvaluateOnNewDocument', { source: `(${pageWorld})()` });
    const code = JSON.stringify(fs.readFileSync(window.given.webPreferences.preload, 'utf8'));
    const source = `(${preloadWorld})(${code}, ${JSON.stringify({ platform: process.platform })})`;
    await cdp.send('Page.addScriptToEvaluateOnNewDocument', { worldName: world, source });
  }

  async function answer(window, route) {
    const request = route.request();
    const goesElsewhere = request.isNavigationRequest() && window.page.url() !== 'about:blank';
    if (goesElsewhere && !window.webContents.mayNavigate(toShell(request.url()))) return route.abort('aborted');
    if (!(await session.mayRequest(toShell(request.url())))) return route.abort('blockedbyclient');
    return protocol.answer(route);
  }

  async function judgePopup(window, popup) {
    const { action } = window.webContents.openHandler({ url: toShell(popup.url()) });
    if (action === 'deny') await popup.close();
  }

  return BrowserWindow;
}

function checkOptions({ webPreferences = {}, ...given }) {
  checkKeys('BrowserWindow', given, options);
  const { preload: _preload, spellcheck: _spellcheck, ...security } = webPreferences;
  checkKeys('webPreferences', security, Object.keys(safe));
  for (const [name, wanted] of Object.entries(safe))
    if (security[name] !== wanted) throw new Error(`electron stand-in: webPreferences.${name} must be ${wanted}`);
}

module.exports = { createBrowserWindow };
