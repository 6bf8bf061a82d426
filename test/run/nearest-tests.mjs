// Which unit tests stand nearest to an edit. Not all that it could break: the whole run is for that.
import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { root } from '../../electron/start/set-up.mjs';

const isUnitTest = (/** @type {string} */ file) => /^test\/.*\.test\.ts$/.test(file);

/**
 * The tests near the files that differ from the last commit, or from the one before it where none does. All file names
 * are from the project's root. Throws where git can't be asked.
 */
export function findNearestTests() {
  const uncommitted = [
    ...askGit('diff', '--name-only', 'HEAD'),
    ...askGit('ls-files', '--others', '--exclude-standard'),
  ];
  const edited = uncommitted.length ? uncommitted : askGit('diff', '--name-only', 'HEAD~1', 'HEAD');
  const tests = [...askGit('ls-files', '--cached', '--others', '--exclude-standard', 'test')]
    .filter((file) => isUnitTest(file) && existsSync(path.join(root, file)))
    .map((file) => ({ file, text: readFileSync(path.join(root, file), 'utf8') }));
  return { edited, tests: nearestTests(edited, tests) };
}

/**
 * The tests themselves that were edited, those that import what was edited, and those in its folder's mirror in `test`
 * (or the nearest folder above that has some, but for `test` itself).
 * @param {readonly string[]} edited
 * @param {readonly { file: string, text: string }[]} tests
 */
export function nearestTests(edited, tests) {
  const near = new Set(edited.filter((file) => tests.some((test) => test.file === file)));
  for (const file of edited.filter((one) => !isUnitTest(one))) {
    for (const test of tests) if (imports(test, file)) near.add(test.file);
    for (const test of testsBeside(mirror(path.posix.dirname(file)), tests)) near.add(test.file);
  }
  return [...near].sort();
}

/** @param {{ file: string, text: string }} test @param {string} file */
function imports(test, file) {
  const relative = path.posix.relative(path.posix.dirname(test.file), file);
  return test.text.includes(`from '${relative.startsWith('.') ? relative : `./${relative}`}'`);
}

/** `core/rules/rf` is tested in `test/rules/rf`, `electron/start` in `test/electron/start`. @param {string} folder */
const mirror = (folder) => (folder.startsWith('test/') ? folder : `test/${folder.replace(/^core\//, '')}`);

/** @param {string} folder @param {readonly { file: string, text: string }[]} tests */
function testsBeside(folder, tests) {
  for (let place = folder; place.startsWith('test/'); place = path.posix.dirname(place)) {
    const beside = tests.filter(({ file }) => path.posix.dirname(file) === place);
    if (beside.length) return beside;
  }
  return [];
}

/** @param {string[]} args @returns {string[]} */
const askGit = (...args) => execFileSync('git', args, { cwd: root, encoding: 'utf8' }).split('\n').filter(Boolean);
