import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { plainReason } from '../../files/plain-reason.ts';
import { quoted } from '../printable.ts';

/** Nobody waits longer for a book. */
const limitMs = 120_000;

/** Quiet, and without a window, a graphics card or anybody's settings. */
const quiet = [
  '--headless',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** A program that can print a page: a browser, or Electron with a script of ours. */
export interface Printer {
  readonly program: string;
  readonly script?: string;
}

/** What came of a run, or a sentence without its end. */
type Ran = { readonly bytes: Buffer } | { readonly problem: string };

/** An address as a PDF. */
export const printPage = ({ program, script }: Printer, url: string, withinMs = limitMs): Promise<Ran> =>
  inFolder(async (folder) => {
    const file = path.join(folder, 'page.pdf');
    const args = script ? [script, url, file] : [...browserArgs(folder), `--print-to-pdf=${file}`, url];
    const ran = await start(program, args, folder, withinMs);
    if ('problem' in ran) return ran;
    try {
      return { bytes: readFileSync(file) };
    } catch {
      return { problem: `${quoted(program)} ended as if all were well, and wrote nothing` };
    }
  });

/** The page at an address as it is once everything on it has come, as HTML. */
export const readPage = (browser: string, url: string, withinMs = limitMs): Promise<Ran> =>
  inFolder((folder) => start(browser, [...browserArgs(folder), '--dump-dom', url], folder, withinMs));

const browserArgs = (folder: string) => [
  ...quiet,
  '--no-pdf-header-footer',
  `--user-data-dir=${path.join(folder, 'profile')}`,
];

/** Does something in a folder of its own that only this user can look into, and takes it away again. */
async function inFolder(act: (folder: string) => Promise<Ran>): Promise<Ran> {
  let folder: string;
  try {
    folder = mkdtempSync(path.join(tmpdir(), 'stationwright-'));
  } catch (error) {
    return { problem: `no folder could be made in ${quoted(tmpdir())}: ${plainReason(error)}` };
  }
  try {
    return await act(folder);
  } finally {
    removeFolder(folder);
  }
}

function removeFolder(folder: string): void {
  try {
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  } catch {
    // What a browser still writes while it goes stays for the system to clear away.
  }
}

const stopSignals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

function start(program: string, args: readonly string[], folder: string, withinMs: number): Promise<Ran> {
  // Chromium's sandbox refuses to run for root on Linux.
  const sandbox = process.platform === 'linux' && process.getuid?.() === 0 ? ['--no-sandbox'] : [];
  const child = spawn(program, [...sandbox, ...args], { stdio: ['ignore', 'pipe', 'ignore'] });
  const chunks: Buffer[] = [];
  child.stdout.on('data', (chunk: Buffer) => chunks.push(chunk));
  return new Promise((resolve) => {
    const end = (ran: Ran) => {
      clearTimeout(timer);
      child.stdout.destroy();
      for (const signal of stopSignals) process.off(signal, stop);
      resolve(ran);
    };
    const fail = (what: string) => end({ problem: `${quoted(program)} ${what}` });
    const timer = setTimeout(() => {
      child.kill('SIGKILL');
      fail(`took longer than ${withinMs / 1000} s and was stopped`);
    }, withinMs);
    // Whoever stops us stops the browser too, and leaves nothing behind.
    const stop = (signal: NodeJS.Signals) => {
      child.kill('SIGKILL');
      removeFolder(folder);
      end({ problem: 'stopped' });
      process.kill(process.pid, signal);
    };
    for (const signal of stopSignals) process.once(signal, stop);
    child.on('error', (error) => fail(`could not be started: ${plainReason(error)}`));
    // Not `close`: what a dead browser has started may hold on to its output.
    child.on('exit', (code, signal) => {
      if (signal) fail(`was ended from outside (${signal}) before it was done`);
      else if (code !== 0) fail(`ended with ${code} before it was done`);
    });
    child.on('close', () => end({ bytes: Buffer.concat(chunks) }));
  });
}
