const { Page } = require('./page.cjs');

/**
 * A connection to the browser that the test has started, by its DevTools protocol. By hand, as a library for it takes
 * longer to load than all that a stand-in does. Each target that it is attached to is a session, with events of its own.
 */
class Connection {
  constructor(address) {
    this.socket = new WebSocket(address);
    this.lastId = 0;
    this.waiting = new Map();
    this.sessions = new Map();
    this.opened = new Promise((resolve, reject) => {
      this.socket.addEventListener('open', resolve);
      this.socket.addEventListener('error', () => reject(new Error(`no browser answers at ${address}`)));
    });
    this.socket.addEventListener('message', ({ data }) => this.hear(JSON.parse(data)));
  }

  /** Sends a command; rejects where it fails, or its session ends before there is an answer. */
  send(method, params = {}, sessionId = undefined) {
    this.lastId += 1;
    const id = this.lastId;
    return new Promise((resolve, reject) => {
      this.waiting.set(id, { resolve, reject, method, sessionId });
      this.socket.send(JSON.stringify({ id, method, params, sessionId }));
    });
  }

  /** Hears the events of a session, or without one of the browser, by their names; `ended` when the session is over. */
  listen(sessionId, listeners) {
    this.sessions.set(sessionId, listeners);
  }

  hear({ id, result, error, method, params, sessionId }) {
    if (id === undefined) {
      if (method === 'Target.detachedFromTarget') this.endSession(params.sessionId);
      this.sessions.get(sessionId)?.[method]?.(params);
      return;
    }
    const asked = this.waiting.get(id);
    this.waiting.delete(id);
    if (error) asked?.reject(new Error(`${asked.method}: ${error.message}`));
    else asked?.resolve(result);
  }

  endSession(ended) {
    const listeners = this.sessions.get(ended);
    this.sessions.delete(ended);
    listeners?.ended?.();
    for (const [id, { reject, method, sessionId }] of this.waiting) {
      if (sessionId !== ended) continue;
      this.waiting.delete(id);
      reject(new Error(`${method}: the page was closed`));
    }
  }
}

/** What the browser calls a permission, where it is not the name that a page asks by. */
const permissionTypes = { 'clipboard-read': 'clipboardReadWrite' };

/**
 * A context of this program's own, in the browser that the test has started. Windows become pages in it. It ends with
 * the connection, however this program ends: no window outlives it, and no other run finds what they have kept.
 */
class Context {
  constructor(connection, id) {
    this.connection = connection;
    this.id = id;
    this.pages = new Map();
    /** Ends when all pages that are asked for are there. */
    this.making = Promise.resolve();
    /** Pages that were opened by others, which have not been told yet. */
    this.popups = [];
  }

  newPage() {
    const page = this.makePage();
    this.making = Promise.allSettled([this.making, page]);
    return page;
  }

  async makePage() {
    const { connection, id } = this;
    const { targetId } = await connection.send('Target.createTarget', { url: 'about:blank', browserContextId: id });
    const { sessionId } = await connection.send('Target.attachToTarget', { targetId, flatten: true });
    const page = new Page(connection, targetId, sessionId);
    this.pages.set(targetId, page);
    page.once('close', () => this.pages.delete(targetId));
    page.on('opening', () => this.tellOpeners());
    await page.prepare();
    return page;
  }

  /** These are granted, and no others. */
  grantPermissions(names) {
    const permissions = names.map((name) => permissionTypes[name] ?? name);
    return this.connection.send('Browser.grantPermissions', { permissions, browserContextId: this.id });
  }

  listen() {
    this.connection.listen(undefined, {
      'Target.targetCreated': ({ targetInfo }) => void this.judgeTarget(targetInfo),
      'Target.targetCrashed': ({ targetId }) => this.pages.get(targetId)?.emit('crash'),
    });
    return this.connection.send('Target.setDiscoverTargets', { discover: true });
  }

  /** What is new in the context and was not asked for here was opened by one of its pages. */
  async judgeTarget({ targetId, type, browserContextId }) {
    if (type !== 'page' || browserContextId !== this.id) return;
    await this.making;
    if (this.pages.has(targetId)) return;
    this.popups.push(targetId);
    this.tellOpeners();
  }

  /** That a page opens something and that it is there are told apart, in any order. */
  tellOpeners() {
    const opener = [...this.pages.values()].find(({ openings }) => openings.length > 0);
    if (!opener || this.popups.length === 0) return;
    const [address, targetId] = [opener.openings.shift(), this.popups.shift()];
    opener.emit('popup', address, () => this.connection.send('Target.closeTarget', { targetId }));
    this.tellOpeners();
  }
}

async function connect(address) {
  const connection = new Connection(address);
  await connection.opened;
  const { browserContextId } = await connection.send('Target.createBrowserContext', { disposeOnDetach: true });
  const context = new Context(connection, browserContextId);
  await context.listen();
  return context;
}

module.exports = { connect };
