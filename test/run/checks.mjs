import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import path from 'node:path';
import { root } from '../../electron/start/set-up.mjs';
import { runCommand } from './command.mjs';

/**
 * @typedef {{ passed: number, failed: number, skipped: number }} Count
 * @typedef {{ name: string, script: string, report?: Report }} Check one script of package.json
 * @typedef {{ args: string[], env: NodeJS.ProcessEnv, file: string, count: (report: any) => Count }} Report
 * @typedef {Count & { name: string, seconds: number, output: string }} Outcome
 */

/** @type {Check[]} */
export const quickChecks = [
  // Some unit tests print with the built screen.
  { name: 'build', script: 'build' },
  { name: 'format', script: 'check:format' },
  // The longest first, so that the others run beside it.
  { name: 'unit tests', script: 'test:unit', report: vitestReport() },
  { name: 'lint', script: 'check:lint' },
  { name: 'types', script: 'check:types' },
  { name: 'boundaries', script: 'check:boundaries' },
  { name: 'dead code', script: 'check:dead-code' },
];

/** Needs the build, and both cores. @type {Check} */
export const endToEnd = { name: 'end-to-end tests', script: 'test:e2e', report: playwrightReport() };

/** A check with a report counts its tests; any other counts one. @param {Check} check @returns {Promise<Outcome>} */
export async function runCheck({ name, script, report }) {
  if (report) {
    mkdirSync(path.dirname(report.file), { recursive: true });
    rmSync(report.file, { force: true });
  }
  const { status, output, seconds } = await runCommand(
    'npm',
    ['run', '-s', script, ...(report ? ['--', ...report.args] : [])],
    report?.env,
  );
  const count = report ? readCount(report) : { passed: status === 0 ? 1 : 0, failed: 0, skipped: 0 };
  // A failure that no test owns (a file that can't be loaded, a crash, nothing found to run) is one failure too.
  const unowned = count.failed === 0 && (status !== 0 || count.passed === 0);
  return { name, seconds, output, ...count, failed: unowned ? 1 : count.failed };
}

/** @param {Report} report @returns {Count} */
function readCount(report) {
  try {
    return report.count(JSON.parse(readFileSync(report.file, 'utf8')));
  } catch {
    return { passed: 0, failed: 0, skipped: 0 };
  }
}

/** @returns {Report} */
function vitestReport() {
  const file = path.join(root, 'dist/test/unit.json');
  return {
    args: ['--reporter=default', '--reporter=json', `--outputFile.json=${file}`],
    env: {},
    file,
    count: (report) => ({
      passed: report.numPassedTests,
      failed: report.numFailedTests,
      skipped: report.numPendingTests,
    }),
  };
}

/** @returns {Report} */
function playwrightReport() {
  const file = path.join(root, 'dist/test/e2e.json');
  return {
    args: ['--reporter=list,json'],
    env: { PLAYWRIGHT_JSON_OUTPUT_FILE: file },
    file,
    // Flaky counts as failed: it failed at least once.
    count: ({ stats }) => ({ passed: stats.expected, failed: stats.unexpected + stats.flaky, skipped: stats.skipped }),
  };
}
