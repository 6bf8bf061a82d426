import { type ChildProcess, fork } from 'node:child_process';
import { mkdtempSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { type BrowserContext, chromium } from '@playwright/test';
import { chromiumArgs, findChromium } from '../browser.ts';
import type { Launch, Shell } from './launch.ts';

// Long enough for a machine that does much else.
const launchLimitMs = 30_000;
const standIn = path.join(import.meta.dirname, 'electron.cjs');

/** The built main process in Node, its windows in a Chromium of its own. */
export async function launchStandIn({ app, home, args = [] }: Launch): Promise<Shell> {
  // What the app keeps is in the home; a browser that was just ended may still hold its profile.
  const profile = mkdtempSync(path.join(home, 'profile-'));
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: findChromium(),
    args: [...chromiumArgs, '--remote-debugging-port=0'],
  });
  const blank = context.pages();
  const [port] = readFileSync(path.join(profile, 'DevToolsActivePort'), 'utf8').split('\n');
  const main = fork(mainFile(app), args, {
    execArgv: ['--require', standIn],
    stdio: ['ignore', 'pipe', 'pipe', 'ipc'],
    env: { ...process.env, SHELL_CDP: `http://127.0.0.1:${port}`, SHELL_HOME: home },
  });
  const said = collectOutput(main);
  const ended = new Promise<number | null>((resolve) => main.once('exit', resolve));
  const end = async (signal: NodeJS.Signals) => {
    if (main.exitCode === null) main.kill(signal);
    await ended;
    await context.close();
  };
  const stop = () => end('SIGTERM');
  const kill = () => end('SIGKILL');
  try {
    const page = await firstWindow(context, ended, said);
    const pages = () => context.pages().filter((other) => !blank.includes(other));
    return { page, pages, ended, stop, kill, evaluate: evaluator(main, ended, said) };
  } catch (error) {
    await stop();
    throw error;
  }
}

function mainFile(app: string): string {
  const { main } = JSON.parse(readFileSync(path.join(app, 'package.json'), 'utf8'));
  return path.join(app, main);
}

function collectOutput(main: ChildProcess): () => string {
  let said = '';
  for (const stream of [main.stdout, main.stderr]) stream?.on('data', (data) => (said += String(data)));
  return () => said;
}

async function firstWindow(context: BrowserContext, ended: Promise<number | null>, said: () => string) {
  const endedEarly = ended.then((code) => {
    throw new Error(`the main process ended (${code}) before it had a window:\n${said()}`);
  });
  const opened = context.waitForEvent('page', { timeout: launchLimitMs }).then(async (page) => {
    await page.waitForURL(/\/index\.html/, { timeout: launchLimitMs });
    return page;
  });
  return Promise.race([opened, endedEarly]);
}

function evaluator(main: ChildProcess, ended: Promise<number | null>, said: () => string): Shell['evaluate'] {
  let lastId = 0;
  const waiting = new Map<number, { resolve: (value: never) => void; reject: (error: Error) => void }>();
  main.on('message', ({ id, value, error }: { id: number; value: never; error?: string }) => {
    const call = waiting.get(id);
    waiting.delete(id);
    if (error) call?.reject(new Error(error));
    else call?.resolve(value);
  });
  void ended.then((code) => {
    for (const { reject } of waiting.values()) reject(new Error(`the main process ended (${code}):\n${said()}`));
  });
  return (inMain, argument) =>
    new Promise((resolve, reject) => {
      lastId += 1;
      waiting.set(lastId, { resolve, reject });
      main.send({ id: lastId, source: inMain.toString(), argument });
    });
}
