/**
 * @typedef {{ test: string, reason: string }} Skip
 * @typedef {{ done: number, all: number } | { passed: number, failed: number, skips: Skip[] }} Told
 */

/** What a line begins with that is not for the eye. */
const mark = '##told ';

/** What such a line says; null for any other line. @param {string} line @returns {Told | null} */
export const toldBy = (line) => (line.startsWith(mark) ? JSON.parse(line.slice(mark.length)) : null);

/** Both test runners' reporter: tells whoever started them how far they are, and at the end what came of it. */
export default class Tell {
  #done = 0;
  #all = 0;
  #passed = 0;
  #failed = 0;
  /** @type {Skip[]} */
  #skips = [];

  // Vitest calls these. Its files are known beforehand, its tests are not.

  /** @param {readonly unknown[]} files */
  onTestRunStart(files) {
    this.#all = files.length;
  }

  /** @param {import('vitest/node').TestCase} test */
  onTestCaseResult(test) {
    const result = test.result();
    if (result.state === 'skipped') this.#skip(test.fullName, test.meta().skipped);
    else this.#count(result.state === 'passed');
  }

  onTestModuleEnd() {
    this.#step();
  }

  onTestRunEnd() {
    this.#end();
  }

  // Playwright calls these.

  /** @param {unknown} _config @param {import('@playwright/test/reporter').Suite} suite */
  onBegin(_config, suite) {
    this.#all = suite.allTests().length;
  }

  /** @param {import('@playwright/test/reporter').TestCase} test @param {import('@playwright/test/reporter').TestResult} result */
  onTestEnd(test, result) {
    const skipped = test.annotations.find(({ type }) => type === 'skip' || type === 'fixme');
    if (result.status === 'skipped') this.#skip(test.titlePath().filter(Boolean).join(' > '), skipped?.description);
    else this.#count(test.ok());
    this.#step();
  }

  onEnd() {
    this.#end();
  }

  // Playwright asks: it writes its own lines only where no other reporter does.
  printsToStdio() {
    return false;
  }

  /** @param {boolean} passed */
  #count(passed) {
    if (passed) this.#passed++;
    else this.#failed++;
  }

  /** @param {string} test @param {string | undefined} reason */
  #skip(test, reason) {
    this.#skips.push({ test, reason: reason || 'no reason is given' });
  }

  #step() {
    this.#done++;
    tell({ done: this.#done, all: this.#all });
  }

  #end() {
    tell({ passed: this.#passed, failed: this.#failed, skips: this.#skips });
  }
}

/** @param {Told} what */
const tell = (what) => process.stdout.write(`${mark}${JSON.stringify(what)}\n`);
