const { EventEmitter } = require('node:events');

/** Calls and reports from the preload's world. Its events are channels, so any name may be listened for. */
class IpcMain extends EventEmitter {
  constructor() {
    super();
    this.handlers = new Map();
  }

  handle(channel, handler) {
    if (this.handlers.has(channel)) throw new Error(`Attempted to register a second handler for '${channel}'`);
    this.handlers.set(channel, handler);
  }

  /** Answers one message of a window; the answer goes back to the world that asked. */
  async receive(window, { type, id, channel, args }) {
    const contents = window.webContents;
    const event = { sender: contents, senderFrame: contents.mainFrame };
    if (type === 'send') {
      if (!this.emit(channel, event, ...args)) throw new Error(`electron stand-in: nobody listens on '${channel}'`);
      return;
    }
    try {
      const handler = this.handlers.get(channel);
      if (!handler) throw new Error(`No handler registered for '${channel}'`);
      const value = await handler(event, ...args);
      await window.deliver({ type: 'reply', id, channel, value: structuredClone(value) });
    } catch (error) {
      await window.deliver({ type: 'reply', id, channel, error: String(error) });
    }
  }
}

module.exports = { IpcMain };
