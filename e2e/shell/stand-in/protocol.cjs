/*
 * Chromium can't be taught a scheme from outside, so `app://bundle/x` is `https://bundle.app.test/x` in the browser,
 * answered by the handler that the shell has registered. The shell only ever sees its own address.
 */
function createProtocol(app) {
  const handlers = new Map();
  const privileged = new Set();
  return {
    registerSchemesAsPrivileged(schemes) {
      if (app.isReady()) throw new Error('registerSchemesAsPrivileged must be called before the app is ready');
      for (const { scheme, privileges } of schemes) {
        if (!privileges.standard || !privileges.secure)
          throw new Error(`electron stand-in: ${scheme} must be standard and secure`);
        privileged.add(scheme);
      }
    },
    handle(scheme, handler) {
      if (!privileged.has(scheme)) throw new Error(`electron stand-in: scheme ${scheme} has not been announced`);
      handlers.set(scheme, handler);
    },
    /** Answers the requests of a page: the app's own by its handler, every other one not at all. */
    async answer(route) {
      const address = toShell(route.request().url());
      const { protocol, hostname } = new URL(address);
      // A page that is printed comes from a server of this machine; nothing further away is ever asked.
      if (protocol === 'http:' && hostname === '127.0.0.1') return route.continue();
      const handler = handlers.get(protocol.slice(0, -1));
      if (!handler) return route.abort('blockedbyclient');
      const response = await handler(new Request(address));
      const body = Buffer.from(await response.arrayBuffer());
      await route.fulfill({ status: response.status, headers: Object.fromEntries(response.headers), body });
    },
  };
}

const toBrowser = (address) =>
  address.replace(/^([a-z]+):\/\/([^/]+)/, (whole, scheme, host) =>
    scheme === 'https' || scheme === 'http' ? whole : `https://${host}.${scheme}.test`,
  );
const toShell = (address) => address.replace(/^https:\/\/([^/]+)\.([a-z]+)\.test(?=\/|$)/, '$2://$1');

module.exports = { createProtocol, toBrowser, toShell };
