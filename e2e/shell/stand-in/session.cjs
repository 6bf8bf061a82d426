const { strict } = require('./strict.cjs');

/** A choice of what a page can ask for, by the name that both Electron and Chromium have for it. */
const permissions = ['geolocation', 'notifications', 'midi', 'clipboard-read'];

function createSession() {
  let check = () => true;
  let filter = (_details, answer) => answer({});
  return {
    defaultSession: strict('session.defaultSession', {
      setPermissionRequestHandler() {},
      setPermissionCheckHandler(handler) {
        check = handler;
      },
      webRequest: strict('session.webRequest', {
        onBeforeRequest(handler) {
          filter = handler;
        },
      }),
    }),
    /** Whether the shell lets a page ask for this address. */
    mayRequest: (url) => new Promise((resolve) => filter({ url }, ({ cancel = false }) => resolve(!cancel))),
    /** Has the browser decide as the shell would when a page asks: what is not granted is denied. */
    applyPermissions: (context) => context.grantPermissions(permissions.filter((name) => check(null, name, '', {}))),
  };
}

module.exports = { createSession };
