const { CoveredEmitter, preventable, strict } = require('./strict.cjs');
const { toShell } = require('./protocol.cjs');

// The middle two never come: there are no webviews here, and a page closes without being asked.
const events = ['will-navigate', 'will-attach-webview', 'will-prevent-unload', 'render-process-gone'];

class WebContents extends CoveredEmitter {
  constructor(window) {
    super('webContents', events);
    this.window = window;
    this.openHandler = () => ({ action: 'allow' });
    // biome-ignore lint/correctness/noConstructorReturn: an instance that throws on what it does not have.
    return strict('webContents', this);
  }

  get mainFrame() {
    return strict('mainFrame', { url: toShell(this.window.page?.url() ?? ''), parent: null });
  }
  setWindowOpenHandler(handler) {
    this.openHandler = handler;
  }
  isCrashed() {
    return this.window.crashed;
  }
  send(channel, ...args) {
    void this.window.deliver({ type: 'event', channel, args });
  }
  reload() {
    void this.window.loadAgain();
  }
  forcefullyCrashRenderer() {
    // The page that is to answer is the one that dies.
    void this.window.cdp.send('Page.crash').catch(() => {});
  }
  print(_options, done) {
    done(false, 'no printer on this machine');
  }
  printToPDF({ printBackground, preferCSSPageSize, generateTaggedPDF, generateDocumentOutline, ...rest }) {
    if (Object.keys(rest).length) throw new Error(`electron stand-in: printToPDF ${Object.keys(rest)} is not covered`);
    return this.window.page.pdf({
      printBackground,
      preferCSSPageSize,
      tagged: generateTaggedPDF,
      outline: generateDocumentOutline,
    });
  }

  /** Whether a page may go where it wants to. */
  mayNavigate(url) {
    const event = preventable({ url });
    this.emit('will-navigate', event, url);
    return !event.defaultPrevented;
  }
}

module.exports = { WebContents };
