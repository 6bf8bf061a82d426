const { chromium } = require('playwright-core');

/** The context of the browser that the test has started, in which windows become pages. */
async function connect(address) {
  const browser = await chromium.connectOverCDP(address);
  return browser.contexts()[0];
}

module.exports = { connect };
