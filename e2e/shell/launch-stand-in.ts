import { type ChildProcess, fork } from 'node:child_process';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { BrowserContext, Page } from '@playwright/test';
import type { Launch, Shell } from './launch.ts';
import type { ShellBrowser } from './shell-browser.ts';

// Long enough for a machine that does much else.
const launchLimitMs = 30_000;
const standIn = path.join(import.meta.dirname, 'electron.cjs');

/** The built main process in Node, its windows in the browser. */
export async function launchStandIn({ app, home, args = [] }: Launch, browser: ShellBrowser): Promise<Shell> {
  const { address, context, pages } = browser;
  if (pages().length > 0)
    throw new Error('another stand-in has windows in this browser: theirs could not be told apart');
  const main = fork(mainFile(app), args, {
    execArgv: ['--require', standIn],
    stdio: ['ignore', 'pipe', 'pipe', 'ipc'],
    env: { ...process.env, SHELL_CDP: address, SHELL_HOME: home },
  });
  const said = collectOutput(main);
  const exited = new Promise<number | null>((resolve) => main.once('exit', resolve));
  // Its windows go with it, but not in the same moment.
  const ended = exited.then(async (code) => {
    await Promise.all(pages().map(isGone));
    return code;
  });
  const end = async (signal: NodeJS.Signals) => {
    if (main.exitCode === null) main.kill(signal);
    await ended;
  };
  const stop = () => end('SIGTERM');
  const kill = () => end('SIGKILL');
  try {
    const page = await firstWindow(context, exited, said);
    return { page, pages, ended, stop, kill, evaluate: evaluator(main, exited, said) };
  } catch (error) {
    await stop();
    throw error;
  }
}

/** A page that dies meanwhile is closed all the same, and later. */
async function isGone(page: Page): Promise<void> {
  if (!page.isClosed()) await new Promise((resolve) => page.once('close', resolve));
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
