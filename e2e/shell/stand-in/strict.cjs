const { EventEmitter } = require('node:events');

/** The object, throwing when something is read from it that it does not have. */
function strict(name, object) {
  return new Proxy(object, {
    get(target, key, receiver) {
      // Symbols and `then` are what the language itself asks for.
      if (key in target || typeof key === 'symbol' || key === 'then') return Reflect.get(target, key, receiver);
      throw new Error(`electron stand-in: ${name}.${key} is not covered`);
    },
  });
}

/** An emitter that refuses listeners for events that it would never emit. */
class CoveredEmitter extends EventEmitter {
  constructor(name, events) {
    super();
    this.coveredName = name;
    this.coveredEvents = new Set(events);
  }

  on(event, listener) {
    checkEvent(this, event);
    return super.on(event, listener);
  }

  once(event, listener) {
    checkEvent(this, event);
    return super.once(event, listener);
  }
}

function checkEvent({ coveredName, coveredEvents }, event) {
  if (!coveredEvents.has(event)) throw new Error(`electron stand-in: ${coveredName} emits no '${event}'`);
}

/** Throws if the options have a key that is not covered. */
function checkKeys(name, options, covered) {
  const unknown = Object.keys(options).find((key) => !covered.includes(key));
  if (unknown) throw new Error(`electron stand-in: ${name} option '${unknown}' is not covered`);
}

/** What a listener gets first: an event that it can stop. */
function preventable(extra = {}) {
  return {
    ...extra,
    defaultPrevented: false,
    preventDefault() {
      this.defaultPrevented = true;
    },
  };
}

module.exports = { CoveredEmitter, checkKeys, preventable, strict };
