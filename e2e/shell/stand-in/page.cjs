const { EventEmitter } = require('node:events');

/**
 * A page of the browser. Emits `popup` with the address that it opens and a function that closes what was opened,
 * `crash`, `close`, `load`, `opening`, and the protocol's own events that `runtimeEvents` names.
 */
class Page extends EventEmitter {
  constructor(connection, targetId, sessionId) {
    super();
    this.connection = connection;
    this.targetId = targetId;
    this.sessionId = sessionId;
    this.address = 'about:blank';
    this.closed = false;
    /** Decides what a request gets. */
    this.answerRequest = (request) => request.abort('BlockedByClient');
    /** Addresses of what it opens and is not there yet. */
    this.openings = [];
  }

  send(method, params) {
    return this.connection.send(method, params, this.sessionId);
  }

  async prepare() {
    const forward = (method) => [method, (params) => this.emit(method, params)];
    this.connection.listen(this.sessionId, {
      ...Object.fromEntries(runtimeEvents.map(forward)),
      ...this.requestEvents(this.sessionId),
      'Page.frameNavigated': ({ frame }) => {
        if (frame.parentId === undefined) this.address = frame.url;
      },
      'Page.navigatedWithinDocument': ({ frameId, url }) => {
        // The main frame has the target's id.
        if (frameId === this.targetId) this.address = url;
      },
      'Page.loadEventFired': () => this.emit('load'),
      'Page.windowOpen': ({ url }) => {
        this.openings.push(url);
        this.emit('opening');
      },
      ended: () => {
        this.closed = true;
        this.emit('close');
      },
    });
    await Promise.all([this.send('Page.enable'), this.send('Runtime.enable'), this.answerRequests(this.sessionId)]);
  }

  /** Requests of a page, and of what runs beside it in targets of their own, wait for an answer from here. */
  async answerRequests(sessionId) {
    await this.connection.send('Fetch.enable', { patterns: [{ urlPattern: '*' }] }, sessionId);
    const attach = { autoAttach: true, waitForDebuggerOnStart: true, flatten: true };
    await this.connection.send('Target.setAutoAttach', attach, sessionId);
  }

  requestEvents(sessionId) {
    const send = (method, params) => this.connection.send(method, params, sessionId);
    return {
      'Fetch.requestPaused': (paused) => void this.answerRequest(new PausedRequest(paused, send)),
      'Target.attachedToTarget': async ({ sessionId: child }) => {
        this.connection.listen(child, this.requestEvents(child));
        await this.answerRequests(child).catch(() => {});
        await this.connection.send('Runtime.runIfWaitingForDebugger', {}, child).catch(() => {});
      },
    };
  }

  /** Goes there; resolves when all of the page has come. */
  async goto(address) {
    const loaded = this.loaded();
    const { errorText } = await this.send('Page.navigate', { url: address });
    if (errorText) throw new Error(`${errorText} at ${address}`);
    await loaded;
  }

  async reload() {
    const loaded = this.loaded();
    await this.send('Page.reload');
    await loaded;
  }

  loaded() {
    return new Promise((resolve) => {
      this.once('load', resolve);
      this.once('close', resolve);
    });
  }

  url() {
    return this.address;
  }

  async title() {
    const { result } = await this.send('Runtime.evaluate', { expression: 'document.title' });
    return result.value;
  }

  async pdf(options) {
    const margins = { marginTop: 0, marginBottom: 0, marginLeft: 0, marginRight: 0 };
    const { data } = await this.send('Page.printToPDF', { ...options, ...margins });
    return Buffer.from(data, 'base64');
  }

  setSize(width, height) {
    const metrics = { width, height, deviceScaleFactor: 1, mobile: false };
    return this.send('Emulation.setDeviceMetricsOverride', metrics);
  }

  async close() {
    if (!this.closed) await this.connection.send('Target.closeTarget', { targetId: this.targetId });
  }

  isClosed() {
    return this.closed;
  }
}

const runtimeEvents = ['Runtime.executionContextCreated', 'Runtime.bindingCalled'];

/** A request that waits in the browser. Where the page has gone meanwhile, nobody is there to hear an answer. */
class PausedRequest {
  constructor({ requestId, request, resourceType }, send) {
    this.url = request.url;
    this.isNavigation = resourceType === 'Document';
    this.answer = (method, params) => send(method, { requestId, ...params }).catch(() => {});
  }

  continue() {
    return this.answer('Fetch.continueRequest');
  }
  abort(errorReason) {
    return this.answer('Fetch.failRequest', { errorReason });
  }
  fulfill({ status, headers, body }) {
    const responseHeaders = Object.entries(headers).map(([name, value]) => ({ name, value }));
    return this.answer('Fetch.fulfillRequest', {
      responseCode: status,
      responseHeaders,
      body: body.toString('base64'),
    });
  }
}

module.exports = { Page };
