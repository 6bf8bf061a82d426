const { chromium } = require('playwright-core');

/**
 * A context of this program's own, in the browser that the test has started. Windows become pages in it. It ends with
 * the connection, however this program ends: no window outlives it, and no other run finds what they have kept.
 */
async function connect(address) {
  const browser = await chromium.connectOverCDP(address);
  return browser.newContext({ viewport: null });
}

module.exports = { connect };
