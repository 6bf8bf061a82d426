// What the tests need besides the packages: a browser, and two programs whose answers they compare with ours.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { chromium } from 'playwright-core';
import { findChromium } from './chromium.mjs';
import { runCommand } from './command.mjs';

/** @type {{ aptPackage: string, purpose: string, isThere: () => boolean }[]} */
const needs = [
  { aptPackage: 'chromium', purpose: 'the end-to-end tests', isThere: () => existsSync(findChromium()) },
  { aptPackage: 'ngspice', purpose: 'comparing circuits', isThere: () => succeeds('ngspice', ['--version']) },
  {
    aptPackage: 'python3-scikit-rf',
    purpose: 'comparing RF networks',
    isThere: () => succeeds('/usr/bin/python3', ['-c', 'import skrf']),
  },
];

/** Installs what is missing where that can be done here, and says in a sentence what stays missing. */
export async function provideMachine() {
  const missing = needs.filter((need) => !need.isThere());
  if (missing.length && canUseApt()) await installByApt(missing.map((need) => need.aptPackage));
  if (!existsSync(findChromium())) await installPlaywrightBrowser();
  for (const need of needs.filter((one) => !one.isThere()))
    console.log(`${need.aptPackage} is not on this machine, so ${need.purpose} can't be done here.`);
}

const canUseApt = () => process.getuid?.() === 0 && succeeds('apt-get', ['--version']);

/** @param {string[]} packages */
async function installByApt(packages) {
  console.log(`Installing ${packages.join(', ')} by apt-get ...`);
  const env = { DEBIAN_FRONTEND: 'noninteractive' };
  const update = await runCommand('apt-get', ['update', '-qq'], env);
  if (update.status !== 0) console.log(`apt-get update failed: ${lastLine(update.output)}`);
  // One by one: a package that can't be had must not keep the others away.
  for (const name of packages) {
    const install = await runCommand('apt-get', ['install', '-y', '-qq', '--no-install-recommends', name], env);
    if (install.status !== 0) console.log(`apt-get install ${name} failed: ${lastLine(install.output)}`);
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
