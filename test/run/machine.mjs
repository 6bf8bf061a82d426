// What the tests need besides the packages: a browser, programs whose answers they compare with ours, and a reader of PDFs.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { stdin, stdout } from 'node:process';
import { createInterface } from 'node:readline/promises';
import { chromium } from 'playwright-core';
import { root } from '../../electron/start/set-up.mjs';
import { findChromium } from './chromium.mjs';
import { runCommand } from './command.mjs';

/** @typedef {{ aptPackages: string[], purpose: string, isThere: () => boolean }} Need the first package that can be had will do */

/** @type {Need[]} */
const needs = [
  {
    // The one without a window starts and draws in half the time.
    aptPackages: ['chromium-headless-shell', 'chromium'],
    purpose: 'a browser for the end-to-end tests',
    isThere: () => existsSync(findChromium()),
  },
  {
    aptPackages: ['ngspice'],
    purpose: 'solves the same circuits, to compare',
    isThere: () => succeeds('ngspice', ['--version']),
  },
  {
    aptPackages: ['python3-scikit-rf'],
    purpose: 'works out the same RF networks, to compare',
    isThere: () => succeeds('/usr/bin/python3', ['-c', 'import skrf']),
  },
  {
    aptPackages: ['poppler-utils'],
    purpose: 'pdftotext, which reads what was printed',
    isThere: () => succeeds('pdftotext', ['-v']),
  },
];

/** That somebody said no, and to which packages; goes when the packages of npm are installed anew. */
const refusalFile = path.join(root, 'node_modules/.not-by-apt');

/** Installs what is missing where that can and may be done here, and says in a sentence what stays missing. */
export async function provideMachine() {
  const missing = needs.filter((need) => !need.isThere());
  if (missing.length && (await mayUseApt(missing))) await installByApt(missing);
  if (!existsSync(findChromium())) await installPlaywrightBrowser();
  for (const { aptPackages, purpose } of needs.filter((need) => !need.isThere()))
    console.log(`${aptPackages[0]} (${purpose}) is not on this machine, so what needs it can't be tested here.`);
}

/** Says what is missing and why it is wanted; asks where somebody is there. @param {readonly Need[]} missing */
async function mayUseApt(missing) {
  if (!succeeds('apt-get', ['--version'])) return false;
  const command = `apt-get install ${missing.map(({ aptPackages }) => aptPackages[0]).join(' ')}`;
  if (process.getuid?.() !== 0) {
    console.log(`Not root, so this is left to you: sudo ${command}`);
    return false;
  }
  if (existsSync(refusalFile) && readFileSync(refusalFile, 'utf8') === command) {
    console.log(`Not wanted last time: ${command} (remove ${path.relative(root, refusalFile)} to be asked again)`);
    return false;
  }
  console.log('Some tests need what is not on this machine:');
  for (const { aptPackages, purpose } of missing) console.log(`  ${aptPackages[0]}: ${purpose}`);
  // Nobody is there to be asked: a machine of which this is the job.
  if (!stdin.isTTY || !stdout.isTTY) return true;
  const terminal = createInterface({ input: stdin, output: stdout });
  const answer = await terminal.question('Install it by apt-get now? [y/N] ');
  terminal.close();
  const yes = /^y(es)?$/i.test(answer.trim());
  if (!yes) writeFileSync(refusalFile, command);
  return yes;
}

/** @param {readonly Need[]} missing */
async function installByApt(missing) {
  console.log('Installing it by apt-get ...');
  const env = { DEBIAN_FRONTEND: 'noninteractive' };
  const update = await runCommand('apt-get', ['update', '-qq'], { env });
  if (update.status !== 0) console.log(`apt-get update failed: ${lastLine(update.output)}`);
  // One by one: a package that can't be had must not keep the others away.
  for (const { aptPackages, isThere } of missing)
    for (const name of aptPackages) {
      const install = await runCommand('apt-get', ['install', '-y', '-qq', '--no-install-recommends', name], { env });
      if (install.status !== 0) console.log(`apt-get install ${name} failed: ${lastLine(install.output)}`);
      if (isThere()) break;
    }
}

async function installPlaywrightBrowser() {
  console.log(`Installing Playwright's own browser to ${chromium.executablePath()} ...`);
  const install = await runCommand('npx', ['--no-install', 'playwright', 'install', 'chromium']);
  if (install.status !== 0) console.log(`It could not be had: ${lastLine(install.output)}`);
}

/** @param {string} command @param {string[]} args */
const succeeds = (command, args) => spawnSync(command, args, { stdio: 'ignore' }).status === 0;

/** @param {string} output */
const lastLine = (output) => output.trim().split('\n').at(-1) ?? '';
