/*
 * What runs in Chromium: `pageWorld` in the page's own world, `preloadWorld` in an isolated one beside it, as in
 * Electron. They share the DOM but no objects, so the bridge crosses by DOM events whose details are copied.
 * Both are sent as source text: neither may use anything from outside itself.
 */

/** Builds in the page what the preload exposes: functions that call over, and frozen objects of them. */
function pageWorld() {
  const emit = (type, detail) => window.dispatchEvent(new CustomEvent(`shell-${type}`, { detail }));
  const listen = (type, receive) => window.addEventListener(`shell-${type}`, (event) => receive(event.detail));
  const callbacks = new Map();
  const waiting = new Map();
  let lastId = 0;
  let answer;

  const pack = (argument) => {
    if (typeof argument !== 'function') return { value: argument };
    lastId += 1;
    callbacks.set(lastId, argument);
    return { callback: lastId };
  };
  const call = (target, args) => {
    lastId += 1;
    const id = lastId;
    answer = undefined;
    emit('call', { id, target, args: args.map(pack) });
    if (answer === undefined) throw new Error('the preload did not answer');
    if (answer.error) throw new Error(answer.error);
    if (answer.promised) return new Promise((resolve, reject) => waiting.set(id, { resolve, reject }));
    return build(answer.shape);
  };
  const build = (shape) => {
    if (shape.target) return (...args) => call(shape.target, args);
    if (shape.members)
      return Object.freeze(Object.fromEntries(shape.members.map(([key, member]) => [key, build(member)])));
    return shape.value;
  };

  listen('answer', (detail) => {
    answer = detail;
  });
  listen('settled', ({ id, value, error }) => {
    const { resolve, reject } = waiting.get(id);
    waiting.delete(id);
    if (error) reject(new Error(error));
    else resolve(value);
  });
  listen('callback', ({ id, args }) => callbacks.get(id)(...args));
  listen('expose', ({ name, shape }) => Object.defineProperty(window, name, { value: build(shape), enumerable: true }));
}

/** Runs the built preload with what a sandboxed preload has: `electron` and a little of `process`. */
function preloadWorld(code, processFacts) {
  const emit = (type, detail) => window.dispatchEvent(new CustomEvent(`shell-${type}`, { detail }));
  const targets = new Map();
  const waiting = new Map();
  const listeners = new Map();
  let lastId = 0;

  const outline = (value) => {
    if (typeof value === 'function') {
      lastId += 1;
      targets.set(lastId, value);
      return { target: lastId };
    }
    const plain = value !== null && typeof value === 'object' && Object.getPrototypeOf(value) === Object.prototype;
    return plain ? { members: Object.entries(value).map(([key, member]) => [key, outline(member)]) } : { value };
  };
  const unpack = ({ value, callback }) =>
    callback ? (...args) => emit('callback', { id: callback, args: structuredClone(args) }) : value;
  window.addEventListener('shell-call', ({ detail: { id, target, args } }) => {
    try {
      const result = targets.get(target)(...args.map(unpack));
      if (typeof result?.then !== 'function') return emit('answer', { shape: outline(result) });
      emit('answer', { promised: true });
      result.then(
        (value) => emit('settled', { id, value }),
        (error) => emit('settled', { id, error: String(error?.message ?? error) }),
      );
    } catch (error) {
      emit('answer', { error: String(error?.message ?? error) });
    }
  });

  const post = (message) => {
    // Electron clones what goes between the processes, and refuses what can't be.
    structuredClone(message.args);
    globalThis.sendToShell(JSON.stringify(message));
  };
  const ipcRenderer = {
    invoke: (channel, ...args) =>
      new Promise((resolve, reject) => {
        lastId += 1;
        post({ type: 'invoke', id: lastId, channel, args });
        waiting.set(lastId, { resolve, reject });
      }),
    send: (channel, ...args) => post({ type: 'send', channel, args }),
    on: (channel, listener) => {
      listeners.set(channel, [...(listeners.get(channel) ?? []), listener]);
      return ipcRenderer;
    },
    off: (channel, listener) => {
      listeners.set(
        channel,
        (listeners.get(channel) ?? []).filter((other) => other !== listener),
      );
      return ipcRenderer;
    },
  };
  globalThis.receiveFromShell = ({ type, id, channel, args, value, error }) => {
    if (type === 'event') {
      for (const listener of listeners.get(channel) ?? []) listener({ sender: ipcRenderer }, ...args);
      return;
    }
    const { resolve, reject } = waiting.get(id);
    waiting.delete(id);
    if (error) reject(new Error(`Error invoking remote method '${channel}': ${error}`));
    else resolve(value);
  };

  const contextBridge = { exposeInMainWorld: (name, api) => emit('expose', { name, shape: outline(api) }) };
  const require = (name) => {
    if (name === 'electron') return { contextBridge, ipcRenderer };
    throw new Error(`module not found in a sandboxed preload: ${name}`);
  };
  const module = { exports: {} };
  new Function('require', 'module', 'exports', 'process', code)(require, module, module.exports, processFacts);
}

module.exports = { pageWorld, preloadWorld };
