const fs = require('node:fs');
const path = require('node:path');
const { CoveredEmitter, preventable } = require('./strict.cjs');

const events = [
  'open-file',
  'second-instance',
  'activate',
  'web-contents-created',
  'before-quit',
  'will-quit',
  'window-all-closed',
];

class App extends CoveredEmitter {
  /** `context` is a promise of the browser's context: with it the app is ready. */
  constructor(context, home) {
    super('app', events);
    this.context = context;
    this.home = home;
    this.windows = new Set();
    this.ready = false;
    this.quitting = false;
    this.recentDocuments = [];
    context.then(() => {
      this.ready = true;
    });
  }

  setName() {}
  isReady() {
    return this.ready;
  }
  async whenReady() {
    await this.context;
  }
  requestSingleInstanceLock() {
    return true;
  }
  addRecentDocument(file) {
    this.recentDocuments.push(file);
  }
  clearRecentDocuments() {
    this.recentDocuments = [];
  }
  getPath(name) {
    const folder = path.join(this.home, name);
    fs.mkdirSync(folder, { recursive: true });
    return folder;
  }

  /** As Electron does it: every window is asked to close, and one that does not keeps the app alive. */
  quit() {
    if (this.quitting) return;
    const event = preventable();
    this.emit('before-quit', event);
    if (event.defaultPrevented) return;
    this.quitting = true;
    if (this.windows.size === 0) return this.leave();
    for (const window of [...this.windows]) window.close();
  }

  /** The last that a listener can do is to put the end off. */
  leave() {
    const event = preventable();
    this.emit('will-quit', event);
    if (event.defaultPrevented) this.quitting = false;
    else this.exit(0);
  }

  exit(code = 0) {
    // Let the messages that are on their way to the test leave first.
    setTimeout(() => process.exit(code), 20);
  }

  windowKept() {
    this.quitting = false;
  }

  windowGone(window) {
    this.windows.delete(window);
    if (this.windows.size > 0) return;
    if (this.quitting) this.leave();
    else if (!this.emit('window-all-closed')) this.quit();
  }
}

module.exports = { App };
